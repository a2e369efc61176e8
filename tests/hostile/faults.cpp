// A library to be loaded before the others (LD_PRELOAD) that lets one call of the system go wrong, for tests
// of what the program does then. It counts from the call of main's caller on: static initialisation is in,
// the loader is not.
//
//   FAULT=NAME:N:WHAT   the N-th call of NAME, one of malloc, read, write, fsync, close, mkostemp, fchmod,
//                       rename, realpath, opendir. WHAT is an errno; errno+ for this call and all behind it;
//                       "run" to run FAULT_RUN by the shell first; "short" to pass one byte at a time
//                       from this call on (read and write)
//   FAULT_CLOCK=SECONDS since 1970, which is what every clock says from then on
//   FAULT_MEANT=PROGRAM only in the program whose name ends so; without it in the first
#include <atomic>
#include <cerrno>
#include <cstddef>
#include <cstdio>
#include <cstdlib>
#include <cstring>
#include <ctime>

#include <dirent.h>
#include <dlfcn.h>
#include <malloc.h>
#include <sys/stat.h>
#include <sys/time.h>
#include <sys/types.h>
#include <unistd.h>

namespace {

constexpr std::size_t longest_name = 16;

char fault_name[longest_name] = "";
long fault_at = 0;
int fault_error = 0; ///< 0: no error
bool for_ever = false;
bool short_pieces = false;
char const* command = nullptr;
time_t fault_clock = -1;
std::atomic<bool> begun{false};
std::atomic<long> calls{0};

template <typename Function>
Function* next(char const* name) {
    return reinterpret_cast<Function*>(dlsym(RTLD_NEXT, name));
}

void read_wish() {
    if (char const* const clock = getenv("FAULT_CLOCK")) {
        fault_clock = atol(clock);
    }
    char const* const wish = getenv("FAULT");
    char const* const number = wish == nullptr ? nullptr : strchr(wish, ':');
    char const* const what = number == nullptr ? nullptr : strchr(number + 1, ':');
    if (what == nullptr || number - wish >= static_cast<std::ptrdiff_t>(longest_name)) {
        return;
    }
    memcpy(fault_name, wish, static_cast<std::size_t>(number - wish));
    fault_at = atol(number + 1);
    fault_error = atoi(what + 1);
    for_ever = what[strlen(what) - 1] == '+';
    short_pieces = strcmp(what + 1, "short") == 0;
    command = strcmp(what + 1, "run") == 0 ? getenv("FAULT_RUN") : nullptr;
}

/// What other programs would do meanwhile.
void run_command() {
    char const* const meanwhile = command;
    command = nullptr;
    begun = false;
    unsetenv("LD_PRELOAD");
    if (system(meanwhile) != 0) {
        _exit(99);
    }
    begun = true;
}

/// Is it this call's turn?
bool due(char const* name) {
    if (!begun || strcmp(name, fault_name) != 0) {
        return false;
    }
    auto const call = ++calls;
    return call == fault_at || (call > fault_at && (for_ever || short_pieces));
}

/// True if the call is to go wrong, with errno set.
bool fails(char const* name) {
    if (!due(name)) {
        return false;
    }
    if (command != nullptr) {
        run_command();
    }
    if (fault_error != 0) {
        errno = fault_error;
    }
    return fault_error != 0;
}

/// So many bytes are to be passed; 0 if the call is to go wrong.
std::size_t passed(char const* name, std::size_t size) {
    if (!due(name)) {
        return size;
    }
    if (short_pieces) {
        return size < 1 ? size : 1;
    }
    if (command != nullptr) {
        run_command();
    }
    if (fault_error != 0) {
        errno = fault_error;
        return 0;
    }
    return size;
}

/// A program may ask glibc beneath malloc, by __libc_malloc: what is beneath both is asked here.
extern "C" void* __libc_memalign(std::size_t alignment, std::size_t size);

void* given(std::size_t size) {
    return fails("malloc") ? nullptr : __libc_memalign(alignof(std::max_align_t), size);
}

void* given_zeros(std::size_t count, std::size_t size) {
    std::size_t bytes = 0;
    auto* const memory = __builtin_mul_overflow(count, size, &bytes) ? nullptr : given(bytes);
    return memory == nullptr ? nullptr : memset(memory, 0, bytes);
}

void* given_instead(void* memory, std::size_t size) {
    if (memory != nullptr && size == 0) {
        free(memory);
        return nullptr;
    }
    auto* const moved = given(size);
    if (moved != nullptr && memory != nullptr) {
        auto const usable = malloc_usable_size(memory);
        memcpy(moved, memory, usable < size ? usable : size);
        free(memory);
    }
    return moved;
}

using Main = int(int, char**, char**);

} // namespace

extern "C" {

int __libc_start_main(Main* main, int count, char** arguments, void (*init)(), void (*fini)(), void (*end)(),
                      void* stack) {
    using Start = int(Main*, int, char**, void (*)(), void (*)(), void (*)(), void*);
    auto* const start = next<Start>("__libc_start_main");
    read_wish();
    char const* const meant = getenv("FAULT_MEANT");
    auto const size = strlen(arguments[0]);
    begun = meant == nullptr ||
            (size >= strlen(meant) && strcmp(arguments[0] + size - strlen(meant), meant) == 0);
    return start(main, count, arguments, init, fini, end, stack);
}

void* malloc(std::size_t size) {
    return given(size);
}

void* calloc(std::size_t count, std::size_t size) {
    return given_zeros(count, size);
}

void* realloc(void* memory, std::size_t size) {
    return given_instead(memory, size);
}

void* __libc_malloc(std::size_t size) {
    return given(size);
}

void* __libc_calloc(std::size_t count, std::size_t size) {
    return given_zeros(count, size);
}

void* __libc_realloc(void* memory, std::size_t size) {
    return given_instead(memory, size);
}

ssize_t read(int fd, void* bytes, std::size_t size) {
    auto const some = passed("read", size);
    return some == 0 && size != 0 ? -1 : next<ssize_t(int, void*, std::size_t)>("read")(fd, bytes, some);
}

/// What `read` becomes where calls of the C library are checked.
ssize_t __read_chk(int fd, void* bytes, std::size_t size, std::size_t room) {
    return size > room ? (abort(), -1) : read(fd, bytes, size);
}

ssize_t write(int fd, void const* bytes, std::size_t size) {
    auto const some = passed("write", size);
    return some == 0 && size != 0 ? -1
                                  : next<ssize_t(int, void const*, std::size_t)>("write")(fd, bytes, some);
}

int fsync(int fd) {
    return fails("fsync") ? -1 : next<int(int)>("fsync")(fd);
}

/// The descriptor is gone even then, as on Linux.
int close(int fd) {
    auto const result = next<int(int)>("close")(fd);
    return fails("close") ? -1 : result;
}

int mkostemp(char* path, int flags) {
    return fails("mkostemp") ? -1 : next<int(char*, int)>("mkostemp")(path, flags);
}

int fchmod(int fd, mode_t mode) {
    return fails("fchmod") ? -1 : next<int(int, mode_t)>("fchmod")(fd, mode);
}

int rename(char const* from, char const* to) {
    return fails("rename") ? -1 : next<int(char const*, char const*)>("rename")(from, to);
}

int renameat2(int from_folder, char const* from, int to_folder, char const* to, unsigned flags) {
    using Rename = int(int, char const*, int, char const*, unsigned);
    return fails("rename") ? -1 : next<Rename>("renameat2")(from_folder, from, to_folder, to, flags);
}

char* realpath(char const* path, char* real) {
    return fails("realpath") ? nullptr : next<char*(char const*, char*)>("realpath")(path, real);
}

DIR* opendir(char const* path) {
    return fails("opendir") ? nullptr : next<DIR*(char const*)>("opendir")(path);
}

time_t time(time_t* at) {
    auto const now = fault_clock >= 0 ? fault_clock : next<time_t(time_t*)>("time")(nullptr);
    if (at != nullptr) {
        *at = now;
    }
    return now;
}

int clock_gettime(clockid_t clock, timespec* at) {
    if (fault_clock < 0 || clock != CLOCK_REALTIME) {
        return next<int(clockid_t, timespec*)>("clock_gettime")(clock, at);
    }
    *at = {fault_clock, 0};
    return 0;
}

} // extern "C"
