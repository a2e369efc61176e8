#include "cli/descriptor_output.hpp"

#include <cerrno>
#include <cstdlib>

#include <poll.h>
#include <sys/ioctl.h>
#include <unistd.h>

namespace lengthwise::cli {

namespace {

constexpr std::size_t enough = 64 << 10;

std::size_t columns_of(int fd) {
    winsize size{};
    return ioctl(fd, TIOCGWINSZ, &size) == 0 ? size.ws_col : 0;
}

bool is(char const* variable, std::string_view value) {
    auto const* const text = std::getenv(variable);
    return text != nullptr && text == value;
}

bool is_set(char const* variable) {
    auto const* const text = std::getenv(variable);
    return text != nullptr && *text != '\0';
}

} // namespace

void DescriptorOutput::write(std::string_view text) {
    kept_ += text;
    if (kept_.size() >= enough) {
        flush();
    }
}

void DescriptorOutput::flush() {
    put(kept_);
    kept_.clear();
}

void DescriptorOutput::put(std::string_view text) {
    while (!text.empty() && error_ == 0) {
        auto const written = ::write(fd_, text.data(), text.size());
        if (written >= 0) {
            text.remove_prefix(static_cast<std::size_t>(written));
        } else if (errno == EAGAIN) {
            pollfd waiting{fd_, POLLOUT, 0};
            poll(&waiting, 1, -1);
        } else if (errno != EINTR) {
            error_ = errno;
        }
    }
}

Surroundings surroundings() {
    return {
        .in_is_terminal = isatty(STDIN_FILENO) != 0,
        .out_is_terminal = isatty(STDOUT_FILENO) != 0,
        .err_is_terminal = isatty(STDERR_FILENO) != 0,
        .no_colour = is_set("NO_COLOR") || is("TERM", "dumb"),
        .columns = columns_of(STDOUT_FILENO),
    };
}

} // namespace lengthwise::cli
