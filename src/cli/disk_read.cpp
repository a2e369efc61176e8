#include "cli/descriptor.hpp"
#include "cli/disk_words.hpp"
#include "cli/files.hpp"
#include "grammar/limits.hpp"

#include <algorithm>
#include <array>
#include <cerrno>
#include <cstdlib>
#include <cstring>
#include <filesystem>
#include <fmt/core.h>
#include <memory>
#include <system_error>

#include <fcntl.h>
#include <poll.h>
#include <sys/stat.h>
#include <unistd.h>

namespace lengthwise::cli {
namespace {

using Text = grammar::Reader::Text;
using Refusal = grammar::Reader::Refusal;

/// Not longer than a line may be: then only the first and the last line end of a block
/// have to be looked for.
constexpr std::size_t block_bytes = limits::line_bytes;

/// A CR before the line end does not count, so one byte more may stand before it.
constexpr std::size_t longest_line = limits::line_bytes + 1;

/// Counts the bytes of the line in hand over blocks.
class LineWatch {
  public:
    /// True as long as no line has passed the limit.
    [[nodiscard]] bool passes(char const* block, std::size_t size) {
        auto const* const first = static_cast<char const*>(std::memchr(block, '\n', size));
        if (first == nullptr) {
            line_ += size;
            return line_ <= longest_line;
        }
        if (line_ + static_cast<std::size_t>(first - block) > longest_line) {
            line_ += size; // the place of the line's end does not matter any more
            return false;
        }
        auto const* last = block + size;
        while (last[-1] != '\n') {
            --last;
        }
        line_ = static_cast<std::size_t>(block + size - last);
        return true;
    }

    /// Bytes since the last line end before the limit was passed.
    [[nodiscard]] std::size_t line() const { return line_; }

  private:
    std::size_t line_ = 0;
};

/// Cuts a line that is too long shortly behind the limit, between two characters.
void cut(std::string& text, std::size_t line) {
    auto const start = text.size() - line;
    text.resize(std::min(text.size(), start + longest_line + 8));
    auto const last = [&] { return static_cast<unsigned char>(text.back()); };
    for (int i = 0; i < 3 && (last() & 0xC0U) == 0x80U; ++i) {
        text.pop_back();
    }
    if (last() >= 0xC0U) {
        text.pop_back();
    }
}

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

/// `expected` bytes lie ahead, as far as the system knows.
std::variant<Text, Refusal> read_all(int fd, std::uint64_t expected, std::uint64_t limit) {
    Text text;
    LineWatch watch;
    auto const block = std::make_unique<std::array<char, block_bytes>>();
    for (;;) {
        auto const got = read_block(fd, block->data(), block->size());
        if (got < 0) {
            return Refusal{words_of(errno)};
        }
        if (got == 0) {
            return text;
        }
        auto const size = static_cast<std::size_t>(got);
        text.bytes.append(block->data(), size);
        if (!watch.passes(block->data(), size)) {
            cut(text.bytes, watch.line());
            return text;
        }
        if (text.bytes.size() > limit) {
            return Refusal{fmt::format("has more than {} bytes, the most there may be", limit)};
        }
        text.bytes.reserve(expected); // only now: what has no line ends has been left by here
    }
}

/// A socket cannot be opened at all: say what it is, not what the system calls that.
Refusal not_opened(std::string const& path, int error) {
    struct stat info {};
    if (error == ENXIO && stat(path.c_str(), &info) == 0) {
        return Refusal{kind_of(info.st_mode)};
    }
    return Refusal{words_of(error)};
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
    return read_all(file.number(), static_cast<std::uint64_t>(info.st_size), limit);
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
        return Refusal{words_of(errno)};
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
        return Refusal{words_of(error.value())};
    }
    if (plans.empty()) {
        return Refusal{"holds no .swim file"};
    }
    std::ranges::sort(plans);
    return plans;
}

} // namespace lengthwise::cli
