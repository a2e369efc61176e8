#include "cli/files.hpp"
#include "cli/process.hpp"
#include "support/child.hpp"
#include "support/temp_folder.hpp"

#include <catch2/catch.hpp>

#include <algorithm>
#include <csignal>
#include <filesystem>
#include <string>
#include <vector>

#include <sched.h>
#include <sys/mount.h>
#include <sys/resource.h>
#include <sys/stat.h>
#include <unistd.h>

using namespace lengthwise;
using cli::Disk;
using cli::Existing;
using support::bytes_of;
using support::in_child;
using support::TempFolder;

namespace {

/// The refusal's reason, or nothing.
std::string write(std::string const& path, std::string_view bytes, Existing existing = Existing::replace) {
    auto const refusal = Disk{}.write(path, bytes, existing);
    return refusal ? refusal->reason : "";
}

mode_t mode_of(std::string const& path) {
    struct stat info {};
    REQUIRE(stat(path.c_str(), &info) == 0);
    return info.st_mode & 07777;
}

bool is_draft(std::string const& name) {
    return name.starts_with(".lengthwise-");
}

using Names = std::vector<std::string>;

} // namespace

TEST_CASE("a file is written whole and nothing else stays", "[cli][disk]") {
    TempFolder const folder;
    auto const path = folder.path("a.swim");
    auto const bytes = GENERATE(as<std::string>{}, "", "pool 25m\n", std::string(3'000'000, 'a'));
    CHECK(write(path, bytes).empty());
    CHECK(bytes_of(path) == bytes);
    CHECK(folder.names() == Names{"a.swim"});
}

TEST_CASE("a file that is there is replaced only on demand", "[cli][disk]") {
    TempFolder const folder;
    auto const path = folder.file("a.swim", "old");
    CHECK(write(path, "new", Existing::keep) == "there already; --force replaces it");
    CHECK(bytes_of(path) == "old");
    CHECK(write(path, "new").empty());
    CHECK(bytes_of(path) == "new");
    CHECK(write(folder.path("b.swim"), "new", Existing::keep).empty());
    CHECK(bytes_of(folder.path("b.swim")) == "new");
}

TEST_CASE("a replaced file keeps its permissions, a new one has those of any new file", "[cli][disk]") {
    TempFolder const folder;
    auto const path = folder.file("a.swim", "old");
    for (mode_t const mode : {0600U, 0644U, 0666U, 0755U}) {
        chmod(path.c_str(), mode);
        CHECK(write(path, "new").empty());
        CHECK(mode_of(path) == mode);
    }
    auto const before = umask(027);
    CHECK(write(folder.path("b.swim"), "new").empty());
    umask(before);
    CHECK(mode_of(folder.path("b.swim")) == 0640);
}

TEST_CASE("a replaced file keeps its owner where the system allows it", "[cli][disk]") {
    if (geteuid() != 0) {
        WARN("skipped: only root can make a file another's");
        return;
    }
    TempFolder const folder;
    auto const path = folder.file("a.swim", "old");
    REQUIRE(chown(path.c_str(), 65534, 65534) == 0);
    CHECK(write(path, "new").empty());
    struct stat info {};
    REQUIRE(stat(path.c_str(), &info) == 0);
    CHECK(info.st_uid == 65534);
    CHECK(info.st_gid == 65534);
}

TEST_CASE("a link stays and the file it stands for is replaced", "[cli][disk]") {
    TempFolder const folder;
    auto const real = folder.file("sub/real.swim", "old");
    std::filesystem::create_symlink("sub/real.swim", folder.path("link.swim"));
    CHECK(write(folder.path("link.swim"), "new").empty());
    CHECK(bytes_of(real) == "new");
    CHECK(std::filesystem::is_symlink(folder.path("link.swim")));
    CHECK(folder.names() == Names{"link.swim", "sub"});
}

TEST_CASE("a link that leads nowhere is refused", "[cli][disk]") {
    TempFolder const folder;
    std::filesystem::create_symlink("gone.swim", folder.path("link.swim"));
    std::filesystem::create_symlink("loop", folder.path("loop"));
    CHECK(write(folder.path("link.swim"), "new") == "is a link to a file that is not there");
    CHECK(write(folder.path("loop"), "new") == "its links lead in a circle");
    CHECK(folder.names() == Names{"link.swim", "loop"});
}

TEST_CASE("what is no regular file is not replaced", "[cli][disk]") {
    TempFolder const folder;
    auto const pipe = folder.path("pipe");
    REQUIRE(mkfifo(pipe.c_str(), 0666) == 0);
    CHECK(write(pipe, "new") == "is a pipe, not a file");
    CHECK(write(folder.path(), "new") == "is a directory");
    CHECK(write("/dev/full", "new") == "is a device, not a file");
    CHECK(folder.names() == Names{"pipe"});
}

TEST_CASE("a place that is not there says so", "[cli][disk]") {
    TempFolder const folder;
    auto const file = folder.file("a.swim", "old");
    CHECK(write(folder.path("gone/b.swim"), "new") == "no such folder; nothing written");
    CHECK(write(file + "/b.swim", "new") == "a part of its path is a file, not a folder");
    CHECK(write(folder.path(std::string(300, 'b')), "new") == "the name is too long");
    CHECK_FALSE(write("", "new").empty());
    CHECK(folder.names() == Names{"a.swim"});
}

TEST_CASE("a name of the greatest length can be written", "[cli][disk]") {
    TempFolder const folder;
    CHECK(write(folder.path(std::string(255, 'b')), "new").empty());
}

TEST_CASE("a write-protected file stays as it is", "[cli][disk]") {
    TempFolder const folder;
    auto const path = folder.file("a.swim", "old");
    chmod(path.c_str(), 0444);
    CHECK(in_child([&] {
              return support::become_nobody() && write(path, "new") == "write-protected; old one kept" ? 0
                                                                                                       : 1;
          }) == 0);
    CHECK(bytes_of(path) == "old");
    CHECK(folder.names() == Names{"a.swim"});
}

TEST_CASE("a folder that takes no new file keeps the old one", "[cli][disk]") {
    TempFolder const folder;
    auto const path = folder.file("sub/a.swim", "old");
    chmod(path.c_str(), 0666);
    chmod(folder.path("sub").c_str(), 0555);
    CHECK(in_child([&] {
              auto const expected = "no permission to write in its folder; old one kept";
              return support::become_nobody() && write(path, "new") == expected ? 0 : 1;
          }) == 0);
    chmod(folder.path("sub").c_str(), 0755);
    CHECK(bytes_of(path) == "old");
}

TEST_CASE("a limit on the size of files keeps the old one", "[cli][disk]") {
    TempFolder const folder;
    auto const path = folder.file("a.swim", "old");
    CHECK(in_child([&] {
              cli::prepare_process();
              rlimit const limit{65'536, 65'536};
              setrlimit(RLIMIT_FSIZE, &limit);
              auto const expected = "larger than a file may be here; old one kept";
              return write(path, std::string(65'537, 'n')) == expected ? 0 : 1;
          }) == 0);
    CHECK(bytes_of(path) == "old");
    CHECK(folder.names() == Names{"a.swim"});
    CHECK(in_child([&] {
              rlimit const limit{65'536, 65'536};
              setrlimit(RLIMIT_FSIZE, &limit);
              return write(path, std::string(65'536, 'n')).empty() ? 0 : 1;
          }) == 0);
    CHECK(bytes_of(path).size() == 65'536);
}

TEST_CASE("a full disk keeps the old file and is left without a trace", "[cli][disk]") {
    TempFolder const folder;
    constexpr int no_disk = 77;
    auto const result = in_child([&] {
        // A disk of 64 KiB that only this process sees.
        auto const root = folder.path();
        if (unshare(CLONE_NEWNS) != 0 || mount("none", "/", nullptr, MS_REC | MS_PRIVATE, nullptr) != 0 ||
            mount("none", root.c_str(), "tmpfs", 0, "size=64k") != 0) {
            return no_disk;
        }
        auto const path = folder.file("a.swim", "old");
        if (write(path, std::string(200'000, 'n')) != "disk full; old one kept") {
            return 1;
        }
        if (write(folder.path("b.swim"), std::string(200'000, 'n')) != "disk full; nothing written") {
            return 2;
        }
        return bytes_of(path) == "old" && folder.names() == Names{"a.swim"} ? 0 : 3;
    });
    if (result == no_disk) {
        WARN("skipped: a small disk can be mounted by root only");
    } else {
        CHECK(result == 0);
    }
}

namespace {

/// A child that rewrites a file over and over, ended by `signal` after `microseconds`.
int end_while_writing(std::string const& path, std::string const& bytes, int signal, useconds_t microseconds,
                      bool prepared) {
    auto const child = support::start_child([&] {
        if (prepared) {
            cli::prepare_process();
        }
        for (;;) {
            (void)write(path, bytes);
        }
        return 0;
    });
    usleep(microseconds);
    kill(child, signal);
    return support::wait_for(child);
}

} // namespace

TEST_CASE("killed in the middle, the file is whole all the same", "[cli][disk]") {
    TempFolder const folder;
    auto const path = folder.file("a.swim", std::string(2'000'000, '0'));
    for (char fill = 'a'; fill <= 'z'; ++fill) {
        auto const result = end_while_writing(path, std::string(2'000'000, fill), SIGKILL,
                                              1'000U * static_cast<useconds_t>(fill - 'a'), false);
        CHECK(result == -SIGKILL);
        auto const bytes = bytes_of(path);
        REQUIRE(bytes.size() == 2'000'000);
        REQUIRE(bytes.find_first_not_of(bytes.front()) == std::string::npos);
    }
    // A draft left behind proves that a kill fell between the write and the rename.
    CHECK(std::ranges::any_of(folder.names(), is_draft));
}

TEST_CASE("ended by a signal, the unfinished file is removed", "[cli][disk]") {
    TempFolder const folder;
    auto const path = folder.file("a.swim", std::string(2'000'000, '0'));
    auto const signal = GENERATE(SIGINT, SIGTERM, SIGHUP);
    for (useconds_t i = 0; i < 10; ++i) {
        auto const result =
            end_while_writing(path, std::string(2'000'000, 'n'), signal, 20'000 + 1'000 * i, true);
        CHECK(result == -signal);
        CHECK(bytes_of(path).size() == 2'000'000);
        CHECK(folder.names() == Names{"a.swim"});
    }
}

TEST_CASE("a signal that was ignored stays ignored", "[cli][disk]") {
    CHECK(in_child([] {
              std::signal(SIGHUP, SIG_IGN);
              cli::prepare_process();
              raise(SIGHUP);
              return 5;
          }) == 5);
}

TEST_CASE("writers at once leave the whole text of one of them", "[cli][disk]") {
    TempFolder const folder;
    auto const path = folder.file("a.swim", std::string(300'000, '0'));
    std::vector<pid_t> writers;
    for (char fill = 'a'; fill < 'i'; ++fill) {
        writers.push_back(support::start_child([&, fill] {
            for (int i = 0; i < 10; ++i) {
                if (!write(path, std::string(300'000, fill)).empty()) {
                    return 1;
                }
            }
            return 0;
        }));
    }
    for (int i = 0; i < 100; ++i) {
        auto const bytes = bytes_of(path);
        REQUIRE(bytes.size() == 300'000);
        REQUIRE(bytes.find_first_not_of(bytes.front()) == std::string::npos);
    }
    for (auto const writer : writers) {
        CHECK(support::wait_for(writer) == 0);
    }
    CHECK(folder.names() == Names{"a.swim"});
}

TEST_CASE("of two that make a new file at once one is refused", "[cli][disk]") {
    TempFolder const folder;
    for (int i = 0; i < 20; ++i) {
        auto const path = folder.path(std::to_string(i) + ".swim");
        auto const make = [&] { return write(path, "pool 25m\n", Existing::keep).empty() ? 1 : 0; };
        auto const first = support::start_child(make);
        auto const second = support::start_child(make);
        CHECK(support::wait_for(first) + support::wait_for(second) == 1);
    }
}
