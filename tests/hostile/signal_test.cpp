#include "support/child.hpp"
#include "support/faults.hpp"
#include "support/program.hpp"
#include "support/temp_folder.hpp"

#include <catch2/catch.hpp>

#include <csignal>
#include <string>
#include <vector>

#include <fcntl.h>
#include <sys/wait.h>
#include <unistd.h>

// Signals and descriptors that are not as they should be, while files are written.
namespace {

using lengthwise::support::bytes_of;
using lengthwise::support::faults_can_be_made;
using lengthwise::support::making;
using lengthwise::support::run;
using lengthwise::support::TempFolder;

using Words = std::vector<std::string>;

constexpr char const* untidy = "pool   25m\nsession\nmain\n4x50 free\n";
constexpr char const* tidied = "pool 25m\nsession\n  main\n    4 x 50 crawl\n";

/// Some 2 MB, so that there is time for a signal.
std::string long_plan() {
    std::string text = "pool 25m\n";
    for (int i = 0; i < 200; ++i) {
        text += "session\nmain\n";
        for (int line = 0; line < 1000; ++line) {
            text += "4x50 free\n";
        }
    }
    return text;
}

pid_t start(TempFolder const& folder, Words const& words) {
    return lengthwise::support::start_child([&] {
        std::vector<char*> arguments{const_cast<char*>("lengthwise")};
        for (auto const& word : words) {
            arguments.push_back(const_cast<char*>(word.c_str()));
        }
        arguments.push_back(nullptr);
        dup2(open("/dev/null", O_WRONLY), STDERR_FILENO);
        alarm(20);
        if (chdir(folder.path().c_str()) == 0) {
            execv(LENGTHWISE_BINARY, arguments.data());
        }
        return 127;
    });
}

} // namespace

TEST_CASE("hostile: a signal at any step of writing leaves no litter", "[hostile][signal]") {
    if (!faults_can_be_made()) {
        WARN("skipped: this build brings its own malloc");
        return;
    }
    struct Signal {
        char const* name;
        int number;
    };
    std::vector<Words> const writers{{"tidy", "a.swim"},
                                     {"export", "a.swim", "--as", "html", "-o", "x.html"}};
    for (auto const signal : {Signal{"TERM", SIGTERM}, Signal{"HUP", SIGHUP}}) {
        for (auto const* const call : {"read", "mkostemp", "write", "fchmod", "fsync", "rename"}) {
            for (auto const& words : writers) {
                TempFolder const folder;
                folder.file("a.swim", untidy);
                // Twice: the second comes while the first is at work, or finds nobody.
                auto const kill = std::string{"kill -"} + signal.name + " $PPID; kill -" + signal.name +
                                  " $PPID 2>&-; true";
                auto const ending = run({.arguments = words,
                                         .before = making({.call = call, .what = "run", .meanwhile = kill}),
                                         .folder = folder.path()});
                CAPTURE(signal.name, call, words, ending.err);
                CHECK(ending.code == -signal.number);
                CHECK(folder.names() == Words{"a.swim"});
                CHECK(bytes_of(folder.path("a.swim")) == untidy);
            }
        }
    }
}

TEST_CASE("hostile: signals at any moment leave all of the old or all of the new", "[hostile][signal]") {
    TempFolder const folder;
    folder.file("a.swim", long_plan());
    Words const words{"export", "a.swim", "--as", "csv", "-o", "x.csv", "--force"};
    auto const whole = run({.arguments = {"export", "a.swim", "--as", "csv"}, .folder = folder.path()}).out;
    REQUIRE(whole.size() > 10'000);
    int ended = 0;
    for (int i = 0; i < 30; ++i) {
        auto const signal = i % 3 == 0 ? SIGINT : i % 3 == 1 ? SIGTERM : SIGHUP;
        bool const old = i % 2 == 0;
        auto const path = folder.path("x.csv");
        if (old) {
            folder.file("x.csv", "old");
        }
        auto const child = start(folder, words);
        usleep(static_cast<useconds_t>(4'000 * i));
        kill(child, signal);
        kill(child, signal);
        auto const code = lengthwise::support::wait_for(child);
        CAPTURE(i, code);
        CHECK((code == 0 || code == -signal));
        ended += code == 0 ? 0 : 1;
        auto const names = folder.names();
        bool const there = names == Words{"a.swim", "x.csv"};
        CHECK((there || (!old && names == Words{"a.swim"})));
        if (there) {
            auto const bytes = bytes_of(path);
            bool const one_of_both = bytes == whole || (old && bytes == "old");
            CHECK(one_of_both);
            unlink(path.c_str());
        }
    }
    CHECK(ended > 0);
}

TEST_CASE("hostile: stopped and sent on, it ends as always", "[hostile][signal]") {
    TempFolder const folder;
    auto const plan = long_plan();
    folder.file("a.swim", plan);
    auto const expected = run({.arguments = {"tidy", "--stdout", "a.swim"}, .folder = folder.path()}).out;
    auto const child = start(folder, {"tidy", "a.swim"});
    for (int i = 0; i < 10; ++i) {
        usleep(10'000);
        kill(child, SIGSTOP);
        usleep(1'000);
        kill(child, SIGCONT);
    }
    CHECK(lengthwise::support::wait_for(child) == 0);
    bool const as_always = bytes_of(folder.path("a.swim")) == expected;
    CHECK(as_always);
    CHECK(folder.names() == Words{"a.swim"});
}

TEST_CASE("hostile: with standard descriptors closed nothing is written in a file that is not its own",
          "[hostile][signal]") {
    for (unsigned closed = 1; closed < 8; ++closed) {
        TempFolder const folder;
        folder.file("a.swim", untidy);
        folder.file("b.swim", tidied);
        auto const csv = run({.arguments = {"export", "a.swim", "--as", "csv"}, .folder = folder.path()}).out;
        auto const close_some = [closed] {
            for (int fd = 0; fd <= 2; ++fd) {
                if ((closed >> static_cast<unsigned>(fd) & 1U) != 0) {
                    close(fd);
                }
            }
        };
        CAPTURE(closed);
        auto const ended = [&](Words const& words) {
            return run({.arguments = words, .before = close_some, .folder = folder.path()}).code;
        };
        CHECK(ended({"tidy", "a.swim", "b.swim", "gone.swim"}) == 2);
        CHECK(ended({"tidy", "a.swim", "b.swim"}) == 0);
        CHECK(ended({"export", "a.swim", "--as", "csv", "-o", "x.csv"}) == 0);
        CHECK(ended({"new", "-o", "new.swim"}) == 0);
        CHECK(ended({"tally", "a.swim"}) == ((closed & 2U) != 0 ? 2 : 0));
        CHECK(ended({"tally", "-"}) == ((closed & 3U) != 0 ? 2 : 0));
        CHECK(bytes_of(folder.path("a.swim")) == tidied);
        CHECK(bytes_of(folder.path("b.swim")) == tidied);
        CHECK(bytes_of(folder.path("x.csv")) == csv);
        CHECK(bytes_of(folder.path("new.swim")).find("lengthwise: ") == std::string::npos);
    }
}
