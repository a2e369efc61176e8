#include "cli/process.hpp"

#include <array>
#include <climits>
#include <cstring>

#include <fcntl.h>
#include <unistd.h>

namespace lengthwise::cli {
namespace {

constexpr std::array ends_us{SIGINT, SIGTERM, SIGHUP};

/// The path of the unfinished file, empty when there is none. Changed only while the
/// signals that read it are held.
std::array<char, PATH_MAX> unfinished{};

void remove_unfinished(int signal) {
    if (unfinished[0] != '\0') {
        unlink(unfinished.data());
    }
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
    action.sa_handler = remove_unfinished;
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

Unfinished::Unfinished(std::string const& path) {
    SignalsHeld const held;
    if (path.size() < unfinished.size()) {
        std::memcpy(unfinished.data(), path.c_str(), path.size() + 1);
    }
}

Unfinished::~Unfinished() {
    SignalsHeld const held;
    unfinished[0] = '\0';
}

} // namespace lengthwise::cli
