#include "support/program.hpp"

#include <array>
#include <cstdio>
#include <memory>
#include <stdexcept>
#include <string_view>
#include <utf8proc.h>

#include <sys/resource.h>
#include <sys/wait.h>
#include <unistd.h>

namespace lengthwise::support {
namespace {

using Stream = std::unique_ptr<FILE, int (*)(FILE*)>;

Stream scratch() {
    Stream stream{std::tmpfile(), std::fclose};
    if (stream == nullptr) {
        throw std::runtime_error{"no temporary file"};
    }
    return stream;
}

std::string content(FILE* stream) {
    std::string text;
    std::array<char, 65'536> block{};
    std::rewind(stream);
    for (std::size_t got = 0; (got = std::fread(block.data(), 1, block.size(), stream)) > 0;) {
        text.append(block.data(), got);
    }
    return text;
}

[[noreturn]] void become_program(Run const& run, FILE* in, FILE* out, FILE* err) {
    dup2(fileno(in), STDIN_FILENO);
    dup2(fileno(out), STDOUT_FILENO);
    dup2(fileno(err), STDERR_FILENO);
    std::vector<char*> words{const_cast<char*>(LENGTHWISE_BINARY)};
    for (auto const& argument : run.arguments) {
        words.push_back(const_cast<char*>(argument.c_str()));
    }
    words.push_back(nullptr);
    if (!run.folder.empty() && chdir(run.folder.c_str()) != 0) {
        _exit(126);
    }
    if (run.before) {
        run.before();
    }
    alarm(20); // outlives the exec
    execv(LENGTHWISE_BINARY, words.data());
    _exit(127);
}

double seconds_of(timeval const& time) {
    return static_cast<double>(time.tv_sec) + static_cast<double>(time.tv_usec) / 1e6;
}

bool is_unsafe(utf8proc_int32_t c) {
    bool const control = (c < 0x20 && c != '\n') || (c >= 0x7F && c <= 0x9F);
    bool const direction = (c >= 0x202A && c <= 0x202E) || (c >= 0x2066 && c <= 0x2069) || c == 0x200E ||
                           c == 0x200F || c == 0x061C;
    return control || direction;
}

} // namespace

Ending run(Run const& run) {
    auto const in = scratch();
    auto const out = scratch();
    auto const err = scratch();
    std::fwrite(run.input.data(), 1, run.input.size(), in.get());
    std::rewind(in.get());
    auto const child = fork();
    if (child < 0) {
        throw std::runtime_error{"no further process"};
    }
    if (child == 0) {
        become_program(run, in.get(), out.get(), err.get());
    }
    int status = 0;
    rusage used{};
    if (wait4(child, &status, 0, &used) != child) {
        throw std::runtime_error{"the program is gone"};
    }
    return {
        .code = WIFEXITED(status) ? WEXITSTATUS(status) : -WTERMSIG(status),
        .out = content(out.get()),
        .err = content(err.get()),
        .seconds = seconds_of(used.ru_utime) + seconds_of(used.ru_stime),
        .kib = used.ru_maxrss,
    };
}

std::string unsafe_in(std::string const& text) {
    auto const* at = reinterpret_cast<utf8proc_uint8_t const*>(text.data());
    auto left = static_cast<utf8proc_ssize_t>(text.size());
    while (left > 0) {
        utf8proc_int32_t character = 0;
        auto const size = utf8proc_iterate(at, left, &character);
        auto const place = std::to_string(static_cast<utf8proc_ssize_t>(text.size()) - left);
        if (size < 0) {
            return "no UTF-8 at byte " + place;
        }
        if (is_unsafe(character)) {
            return "character " + std::to_string(character) + " at byte " + place;
        }
        at += size;
        left -= size;
    }
    return {};
}

} // namespace lengthwise::support
