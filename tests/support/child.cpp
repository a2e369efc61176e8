#include "support/child.hpp"

#include <csignal>
#include <stdexcept>

#include <sys/wait.h>
#include <unistd.h>

namespace lengthwise::support {

namespace {

/// The child shall end by a signal at once, wherever it comes: Catch's handlers would report a failed test.
void take_signals_as_usual() {
    for (int const signal : {SIGINT, SIGTERM, SIGHUP}) {
        std::signal(signal, SIG_DFL);
    }
}

} // namespace

pid_t start_child(std::function<int()> const& work) {
    sigset_t all{};
    sigset_t before{};
    sigfillset(&all);
    sigprocmask(SIG_SETMASK, &all, &before);
    auto const child = fork();
    if (child == 0) {
        take_signals_as_usual();
    }
    sigprocmask(SIG_SETMASK, &before, nullptr);
    if (child < 0) {
        throw std::runtime_error{"no further process"};
    }
    if (child == 0) {
        _exit(work()); // nothing of the test's own is to run in the child
    }
    return child;
}

int wait_for(pid_t child) {
    int status = 0;
    if (waitpid(child, &status, 0) != child) {
        throw std::runtime_error{"the child is gone"};
    }
    return WIFEXITED(status) ? WEXITSTATUS(status) : -WTERMSIG(status);
}

int in_child(std::function<int()> const& work) {
    return wait_for(start_child(work));
}

bool become_nobody() {
    constexpr uid_t nobody = 65534;
    return geteuid() != 0 || (setgid(nobody) == 0 && setuid(nobody) == 0);
}

} // namespace lengthwise::support
