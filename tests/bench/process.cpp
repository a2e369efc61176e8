#include "measure.hpp"

#include <array>
#include <stdexcept>
#include <system_error>

#include <fcntl.h>
#include <spawn.h>
#include <sys/resource.h>
#include <sys/wait.h>
#include <unistd.h>

extern char** environ;

namespace lengthwise::bench {

namespace {

void must(int error, std::string const& what) {
    if (error != 0) {
        throw std::system_error{error, std::generic_category(), what};
    }
}

/// The process, its standard output going into `out`.
pid_t start(std::vector<std::string> const& command, int out) {
    std::vector<char*> words;
    for (auto const& word : command) {
        words.push_back(const_cast<char*>(word.c_str())); // posix_spawn does not write to them
    }
    words.push_back(nullptr);
    posix_spawn_file_actions_t actions;
    must(posix_spawn_file_actions_init(&actions), "file actions");
    must(posix_spawn_file_actions_adddup2(&actions, out, STDOUT_FILENO), "file actions");
    pid_t process = 0;
    auto const error = posix_spawnp(&process, words.front(), &actions, nullptr, words.data(), environ);
    posix_spawn_file_actions_destroy(&actions);
    must(error, "cannot start " + command.front());
    return process;
}

std::string read_to_end(int in) {
    std::string text;
    std::array<char, 1 << 16> buffer{};
    for (ssize_t size = 0; (size = ::read(in, buffer.data(), buffer.size())) > 0;) {
        text.append(buffer.data(), static_cast<std::size_t>(size));
    }
    return text;
}

double seconds_of(timeval time) {
    return static_cast<double>(time.tv_sec) + static_cast<double>(time.tv_usec) * 1e-6;
}

/// Its end: exit code, the time of a core and the memory that it took.
void wait_for(pid_t process, Run& run) {
    int status = 0;
    rusage usage{};
    ::wait4(process, &status, 0, &usage);
    run.status = WIFEXITED(status) ? WEXITSTATUS(status) : 128 + WTERMSIG(status);
    run.took.core = seconds_of(usage.ru_utime) + seconds_of(usage.ru_stime);
    run.resident = std::int64_t{usage.ru_maxrss} * 1024;
}

} // namespace

Run run(std::vector<std::string> const& command) {
    std::array<int, 2> ends{};
    must(::pipe2(ends.data(), O_CLOEXEC) == 0 ? 0 : errno, "pipe");
    Run run;
    Watch const watch;
    auto const process = start(command, ends[1]);
    ::close(ends[1]);
    run.output = read_to_end(ends[0]);
    wait_for(process, run);
    run.took.wall = watch.took().wall;
    ::close(ends[0]);
    return run;
}

Run run_well(std::vector<std::string> const& command, int most) {
    auto result = run(command);
    if (result.status > most) {
        throw std::runtime_error{command.front() + " ended with " + std::to_string(result.status)};
    }
    return result;
}

} // namespace lengthwise::bench
