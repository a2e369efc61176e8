#include "cli/process.hpp"

#include <array>
#include <atomic>
#include <climits>
#include <new>
#include <string_view>

#include <fcntl.h>
#include <unistd.h>

namespace lengthwise::cli {
namespace {

constexpr std::array ends_us{SIGINT, SIGTERM, SIGHUP};

/// The path of the unfinished file, of meaning while there is one. Changed only while the
/// signals that read it are held, and while no other thread takes it for whole.
std::array<char, PATH_MAX> unfinished{};
std::atomic<bool> is_unfinished{false};

void remove_unfinished() {
    if (is_unfinished) {
        unlink(unfinished.data());
    }
}

void end_by(int signal) {
    remove_unfinished();
    // The handler is gone by SA_RESETHAND: raised again, the signal ends us as it always does.
    raise(signal);
}

void handle(int signal) {
    struct sigaction before {};
    sigaction(signal, nullptr, &before);
    if (before.sa_handler == SIG_IGN) {
        return;
    }
    struct sigaction action {};
    action.sa_handler = end_by;
    action.sa_flags = static_cast<int>(SA_RESETHAND);
    sigemptyset(&action.sa_mask);
    sigaction(signal, &action, nullptr);
}

void fill_standard_descriptors() {
    // The wrong way round on purpose: reading from 0 and writing to 1 and 2 must not succeed.
    for (int fd = 0; fd <= 2; ++fd) {
        if (fcntl(fd, F_GETFD) == -1) {
            open("/dev/null", fd == 0 ? O_WRONLY : O_RDONLY); // takes the lowest free number: fd
        }
    }
}

} // namespace

void end_without_memory() {
    constexpr std::string_view said = "lengthwise: out of memory\n";
    constexpr int cannot = 2;
    static std::atomic_flag ending = ATOMIC_FLAG_INIT;
    if (ending.test_and_set()) {
        for (;;) {
            pause(); // another thread is about to end us all
        }
    }
    remove_unfinished();
    [[maybe_unused]] auto const written = ::write(STDERR_FILENO, said.data(), said.size());
    _exit(cannot);
}

EndsWithoutMemory::EndsWithoutMemory() {
    std::set_new_handler(end_without_memory);
}

void prepare_process() {
    fill_standard_descriptors();
    for (int const signal : ends_us) {
        handle(signal);
    }
    std::signal(SIGXFSZ, SIG_IGN);
}

SignalsHeld::SignalsHeld() {
    sigset_t held{};
    sigemptyset(&held);
    for (int const signal : ends_us) {
        sigaddset(&held, signal);
    }
    pthread_sigmask(SIG_BLOCK, &held, &before_);
}

SignalsHeld::~SignalsHeld() {
    pthread_sigmask(SIG_SETMASK, &before_, nullptr);
}

Unfinished::Unfinished(std::string_view path) {
    SignalsHeld const held;
    if (path.size() < unfinished.size()) {
        unfinished[path.copy(unfinished.data(), path.size())] = '\0';
        is_unfinished = !path.empty();
    }
}

Unfinished::~Unfinished() {
    SignalsHeld const held;
    is_unfinished = false;
}

} // namespace lengthwise::cli
