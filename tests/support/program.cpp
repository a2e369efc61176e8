#include "support/program.hpp"

#include <array>
#include <cstdio>
#include <memory>
#include <stdexcept>
#include <string_view>

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

} // namespace lengthwise::support
