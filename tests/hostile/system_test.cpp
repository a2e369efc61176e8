#include "support/child.hpp"
#include "support/hostile.hpp"
#include "support/program.hpp"
#include "support/temp_folder.hpp"

#include <catch2/catch.hpp>

#include <csignal>
#include <cstdlib>
#include <string>

#include <fcntl.h>
#include <sched.h>
#include <sys/mount.h>
#include <sys/resource.h>
#include <sys/stat.h>
#include <unistd.h>

using lengthwise::support::Ending;
using lengthwise::support::run;
using lengthwise::support::TempFolder;

namespace {

constexpr char const* untidy = "pool   25m\nsession\nmain\n4x50 free\n";

void limit(int resource, rlim_t most) {
    rlimit const value{most, most};
    setrlimit(static_cast<__rlimit_resource>(resource), &value);
}

/// So many untidy sessions, of about 10 KB each.
std::string long_plan(std::size_t sessions) {
    return "pool 25m\n" + hostile::times(sessions, "session\nmain\n" + hostile::times(1000, "4x50 free\n"));
}

/// A plan and the program's ways with it under some adversity.
class Scene {
  public:
    explicit Scene(std::string const& bytes = untidy) { folder_.file("a.swim", bytes); }

    [[nodiscard]] Ending operator()(std::string const& command, std::function<void()> before) const {
        return run({.arguments = {command, "a.swim"}, .before = std::move(before), .folder = folder_.path()});
    }
    [[nodiscard]] std::string plan() const { return lengthwise::support::bytes_of(folder_.path("a.swim")); }
    [[nodiscard]] TempFolder const& folder() const { return folder_; }

  private:
    TempFolder folder_;
};

} // namespace

TEST_CASE("hostile: results that cannot be written are never a success", "[hostile]") {
    Scene const scene;
    for (auto const* const command : {"tally", "deck", "check"}) {
        CAPTURE(command);
        CHECK(scene(command, [] { dup2(open("/dev/full", O_WRONLY), STDOUT_FILENO); }).code == 2);
        CHECK(scene(command, [] { close(STDOUT_FILENO); }).code == 2);
        CHECK(scene(command, [] { dup2(open("/dev/null", O_RDONLY), STDOUT_FILENO); }).code == 2);
        CHECK(scene(command, [] {
                  close(STDIN_FILENO);
                  close(STDOUT_FILENO);
                  close(STDERR_FILENO);
              }).code == 2);
    }
    CHECK(scene("tally", [] { close(STDERR_FILENO); }).code == 0);
    CHECK(scene.plan() == untidy);
}

TEST_CASE("hostile: a reader that leaves ends us quietly", "[hostile]") {
    Scene const scene;
    auto const ending = scene("tally", [] {
        int ends[2];
        if (pipe(ends) == 0) {
            dup2(ends[1], STDOUT_FILENO);
            close(ends[0]);
            close(ends[1]);
        }
    });
    CHECK(ending.code == -SIGPIPE);
    CHECK(ending.err.empty());
}

TEST_CASE("hostile: strange surroundings", "[hostile]") {
    Scene const scene;
    auto const usual = scene("tally", {});
    REQUIRE(usual.code == 0);
    auto const same = [&](std::function<void()> before) {
        auto const ending = scene("tally", std::move(before));
        CAPTURE(ending.err);
        CHECK(ending.code == 0);
        CHECK(ending.out == usual.out);
    };
    same([] { clearenv(); });
    same([] { setenv("LC_ALL", "de_DE.UTF-8", 1); });
    same([] { setenv("LC_ALL", "\x1B[31m", 1); });
    same([] { setenv("TZ", "garbage/../../etc/passwd", 1); });
    same([] { setenv("TERM", "", 1); });
    same([] { setenv("HOME", "/nonexistent", 1); });
    for (auto const* const columns : {"0", "-5", "99999999999", "wide", "1"}) {
        same([=] { setenv("COLUMNS", columns, 1); });
    }
    same([] { limit(RLIMIT_NOFILE, 8); });
    same([] { limit(RLIMIT_CORE, 0); });
}

TEST_CASE("hostile: nesting on a small stack", "[hostile]") {
    Scene const scene{hostile::main_set(hostile::times(30'000, "("))};
    for (auto const* const command : {"tally", "check", "deck", "tidy"}) {
        auto const ending = scene(command, [] { limit(RLIMIT_STACK, 256U << 10U); });
        CAPTURE(command, ending.err.substr(0, 300));
        CHECK(ending.code == 1);
    }
}

TEST_CASE("tidy on a file that cannot be written leaves it whole", "[hostile][tidy]") {
    auto const bytes = long_plan(10);
    Scene const scene{bytes};
    auto const plan = scene.folder().path("a.swim");
    auto const kept = [&](Ending const& ending) {
        CAPTURE(ending.err);
        CHECK(ending.code == 2);
        CHECK(ending.err.find("a.swim") != std::string::npos);
        CHECK(ending.err.find("old one kept") != std::string::npos);
        CHECK(scene.plan() == bytes);
        CHECK(scene.folder().names() == std::vector<std::string>{"a.swim"});
    };
    chmod(plan.c_str(), 0444);
    kept(scene("tidy", [] { lengthwise::support::become_nobody(); }));
    chmod(plan.c_str(), 0666);
    chmod(scene.folder().path().c_str(), 0555);
    kept(scene("tidy", [] { lengthwise::support::become_nobody(); }));
    chmod(scene.folder().path().c_str(), 0777);
    kept(scene("tidy", [] { limit(RLIMIT_FSIZE, 4096); }));
}

TEST_CASE("tidy on a full disk leaves the file whole", "[hostile][tidy]") {
    // A disk of 64 KiB that only the child sees; more than half of it is the plan.
    constexpr int no_disk = 77;
    auto const plan = long_plan(4);
    TempFolder const folder;
    auto const root = folder.path();
    auto const result = lengthwise::support::in_child([&] {
        if (unshare(CLONE_NEWNS) != 0 || mount("none", "/", nullptr, MS_REC | MS_PRIVATE, nullptr) != 0 ||
            mount("none", root.c_str(), "tmpfs", 0, "size=64k") != 0) {
            return no_disk;
        }
        folder.file("a.swim", plan);
        auto const ending = run({.arguments = {"tidy", "a.swim"}, .folder = root});
        if (ending.code != 2 || ending.err.find("disk full; old one kept") == std::string::npos) {
            return 1;
        }
        bool const whole = lengthwise::support::bytes_of(folder.path("a.swim")) == plan;
        return whole && folder.names() == std::vector<std::string>{"a.swim"} ? 0 : 2;
    });
    if (result == no_disk) {
        WARN("skipped: a small disk can be mounted by root only");
    } else {
        CHECK(result == 0);
    }
}

TEST_CASE("tidy killed in the middle leaves the file whole", "[hostile][tidy]") {
    auto const plan = long_plan(100);
    Scene const scene{plan};
    auto const tidied =
        run({.arguments = {"tidy", "--stdout", "a.swim"}, .folder = scene.folder().path()}).out;
    REQUIRE(tidied != plan);
    for (int i = 0; i < 40; ++i) {
        auto const signal = i % 2 == 0 ? SIGKILL : SIGTERM;
        scene.folder().file("a.swim", plan);
        auto const child = lengthwise::support::start_child([&] {
            auto const path = scene.folder().path("a.swim");
            execl(LENGTHWISE_BINARY, LENGTHWISE_BINARY, "tidy", path.c_str(), nullptr);
            return 127;
        });
        usleep(static_cast<useconds_t>(2'000 * i));
        kill(child, signal);
        auto const code = lengthwise::support::wait_for(child);
        CHECK((code == 0 || code == -signal));
        auto const bytes = scene.plan();
        CHECK((bytes == plan || bytes == tidied));
    }
}

TEST_CASE("tidy of many files told to stop leaves each of them whole", "[hostile][tidy]") {
    auto const plan = long_plan(2);
    TempFolder const folder;
    std::vector<std::string> names;
    for (char name = 'a'; name <= 'p'; ++name) {
        names.push_back(std::string{name} + ".swim");
        folder.file(names.back(), plan);
    }
    auto const tidied = run({.arguments = {"tidy", "--stdout", "a.swim"}, .folder = folder.path()}).out;
    for (int i = 0; i < 20; ++i) {
        for (auto const& name : names) {
            folder.file(name, plan);
        }
        auto const child = lengthwise::support::start_child([&] {
            dup2(open("/dev/null", O_WRONLY), STDERR_FILENO);
            execl(LENGTHWISE_BINARY, LENGTHWISE_BINARY, "tidy", folder.path().c_str(), nullptr);
            return 127;
        });
        usleep(static_cast<useconds_t>(2'000 * i));
        kill(child, SIGTERM);
        auto const code = lengthwise::support::wait_for(child);
        CHECK((code == 0 || code == -SIGTERM));
        CHECK(folder.names() == names);
        for (auto const& name : names) {
            auto const bytes = lengthwise::support::bytes_of(folder.path(name));
            CHECK((bytes == plan || bytes == tidied));
        }
    }
}
