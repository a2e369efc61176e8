#include "cli/descriptor.hpp"
#include "cli/disk_words.hpp"
#include "cli/files.hpp"
#include "grammar/limits.hpp"

#include <algorithm>
#include <array>
#include <cerrno>
#include <cstdlib>
#include <filesystem>
#include <fmt/core.h>
#include <memory>
#include <new>
#include <system_error>
#include <utility>

#include <fcntl.h>
#include <poll.h>
#include <sys/stat.h>
#include <unistd.h>

namespace lengthwise::cli {
namespace {

using Text = grammar::Reader::Text;
using Refusal = grammar::Reader::Refusal;

/// Want of memory is no fault of the file's: an include would show it as an error of the plan.
Refusal refusal_of(int error) {
    if (error == ENOMEM) {
        throw std::bad_alloc{};
    }
    return {words_of(error)};
}

/// Not longer than a line may be: then only the first line end of a block can end a line
/// that is too long.
constexpr std::size_t block_bytes = limits::line_bytes;

/// Watches a growing text for a line over the limit.
class LineWatch {
  public:
    /// True as long as there is none. `text` has grown from `grown` on, by a block at most.
    [[nodiscard]] bool passes(std::string_view text, std::size_t grown) {
        auto const end = text.find('\n', grown);
        if (end == std::string_view::npos) {
            return text.size() - start_ <= limits::line_bytes + 1; // the last may be the CR of CR LF
        }
        if (!fits(text.substr(start_, end - start_))) {
            return false;
        }
        start_ = text.rfind('\n') + 1;
        return true;
    }

    /// The same for the last line of the whole text.
    [[nodiscard]] bool passes_at_end(std::string_view text) const {
        return text.size() - start_ <= limits::line_bytes;
    }

    /// Number of the line in hand.
    [[nodiscard]] std::ptrdiff_t line(std::string_view text) const {
        return std::ranges::count(text.substr(0, start_), '\n') + 1;
    }

  private:
    [[nodiscard]] static bool fits(std::string_view line) {
        return line.size() - (line.ends_with('\r') ? 1 : 0) <= limits::line_bytes;
    }

    std::size_t start_ = 0; ///< of the line in hand
};

/// One read; waits where standard input would rather have us come back later.
ssize_t read_block(int fd, char* block, std::size_t size) {
    for (;;) {
        auto const got = ::read(fd, block, size);
        if (got >= 0 || (errno != EINTR && errno != EAGAIN)) {
            return got;
        }
        if (errno == EAGAIN) {
            pollfd waiting{fd, POLLIN, 0};
            poll(&waiting, 1, -1);
        }
    }
}

Refusal too_long(LineWatch const& watch, std::string_view text) {
    return {fmt::format("line {} has more than {} bytes, the most there may be", watch.line(text),
                        limits::line_bytes)};
}

/// `expected` bytes lie ahead, as far as the system knows.
std::variant<Text, Refusal> read_all(int fd, std::uint64_t expected, std::uint64_t limit) {
    std::string text;
    LineWatch watch;
    auto const block = std::make_unique<std::array<char, block_bytes>>();
    for (;;) {
        auto const got = read_block(fd, block->data(), block->size());
        if (got < 0) {
            return refusal_of(errno);
        }
        if (got == 0) {
            break;
        }
        auto const grown = text.size();
        text.append(block->data(), static_cast<std::size_t>(got));
        if (!watch.passes(text, grown)) {
            return too_long(watch, text);
        }
        if (text.size() > limit) {
            return Refusal{fmt::format("has more than {} bytes, the most there may be", limit)};
        }
        text.reserve(expected); // only now: what has no line ends has been left by here
    }
    if (!watch.passes_at_end(text)) {
        return too_long(watch, text);
    }
    return Text{std::move(text)};
}

/// A socket cannot be opened at all: say what it is, not what the system calls that.
Refusal not_opened(std::string const& path, int error) {
    struct stat info {};
    if (error == ENXIO && stat(path.c_str(), &info) == 0) {
        return Refusal{kind_of(info.st_mode)};
    }
    return refusal_of(error);
}

/// Nobody has written to it or cut it meanwhile.
bool is_as_before(int fd, struct stat const& before) {
    struct stat now {};
    return fstat(fd, &now) == 0 && now.st_size == before.st_size &&
           now.st_mtim.tv_sec == before.st_mtim.tv_sec && now.st_mtim.tv_nsec == before.st_mtim.tv_nsec;
}

bool is_directory(std::string const& path) {
    struct stat info {};
    return stat(path.c_str(), &info) == 0 && S_ISDIR(info.st_mode);
}

bool is_plan(std::filesystem::path const& path) {
    auto const name = path.filename().native();
    return name.ends_with(".swim") && !name.starts_with('.') && !is_directory(path.native());
}

} // namespace

std::variant<Text, Refusal> Disk::read(std::string const& path, std::uint64_t limit) {
    if (path.find('\0') != std::string::npos) {
        return Refusal{words_of(ENOENT)};
    }
    std::scoped_lock const one_at_a_time{reading_};
    Descriptor const file{::open(path.c_str(), O_RDONLY | O_NONBLOCK | O_CLOEXEC | O_NOCTTY)};
    if (!file.open()) {
        return not_opened(path, errno);
    }
    struct stat info {};
    if (fstat(file.number(), &info) != 0) {
        return Refusal{words_of(errno)};
    }
    if (!S_ISREG(info.st_mode)) {
        return Refusal{kind_of(info.st_mode)};
    }
    if (auto const size = static_cast<std::uint64_t>(info.st_size); size > limit) {
        return Refusal{fmt::format("has {} bytes, at most {} may be", size, limit)};
    }
    auto text = read_all(file.number(), static_cast<std::uint64_t>(info.st_size), limit);
    if (std::holds_alternative<Text>(text) && !is_as_before(file.number(), info)) {
        return Refusal{"changed while it was read; try again"};
    }
    return text;
}

std::variant<Text, Refusal> Disk::read_standard_input(std::uint64_t limit) {
    return read_all(STDIN_FILENO, 0, limit);
}

std::variant<grammar::Reader::Path, Refusal> Disk::resolve_links(std::string const& path) {
    if (path.find('\0') != std::string::npos) {
        return Refusal{words_of(ENOENT)};
    }
    std::unique_ptr<char, decltype(&std::free)> const real{realpath(path.c_str(), nullptr), &std::free};
    if (real == nullptr) {
        return refusal_of(errno);
    }
    return Path{real.get()};
}

std::variant<std::vector<std::string>, Refusal> Disk::expand(std::string const& path) {
    if (!is_directory(path)) {
        return std::vector{path};
    }
    std::vector<std::string> plans;
    std::error_code error;
    for (std::filesystem::directory_iterator entry{path, error}, end; !error && entry != end;
         entry.increment(error)) {
        if (is_plan(entry->path())) {
            plans.push_back(entry->path().native());
        }
    }
    if (error) {
        return refusal_of(error.value());
    }
    if (plans.empty()) {
        return Refusal{"holds no .swim file"};
    }
    std::ranges::sort(plans);
    return plans;
}

} // namespace lengthwise::cli
