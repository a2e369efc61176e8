#include "support/child.hpp"
#include "support/faults.hpp"
#include "support/program.hpp"
#include "support/temp_folder.hpp"

#include <catch2/catch.hpp>

#include <algorithm>
#include <cstdlib>
#include <filesystem>
#include <functional>
#include <string>
#include <utility>
#include <vector>

#include <sys/resource.h>
#include <unistd.h>

// Languages, clocks and limits of a machine that is not like ours.
namespace {

using lengthwise::support::Ending;
using lengthwise::support::faults_can_be_made;
using lengthwise::support::making;
using lengthwise::support::run;
using lengthwise::support::TempFolder;

using Words = std::vector<std::string>;
using Before = std::function<void()>;

std::string const sample = LENGTHWISE_ROOT "/sets/six-weeks-750.swim";

std::vector<Words> commands() {
    return {
        {"tally", sample},
        {"check", sample},
        {"deck", sample, "--week", "3", "--session", "Tue"},
        {"deck", sample, "--today", "2026-11-26"},
        {"chart", sample},
        {"export", sample, "--as", "json"},
        {"export", sample, "--as", "csv"},
        {"export", sample, "--as", "ics"},
        {"export", sample, "--as", "html"},
        {"export", sample, "--as", "md"},
        {"tidy", "--stdout", sample},
        {"new", "-o", "-", "--today", "2026-11-26"},
        {"pace", "400m 8:20", "200m 3:55"},
        {"explain", "rest"},
        {"--help"},
        {"compose", "--race", "sprint", "--on", "2027-06-06", "--from", "2027-04-26", "--days", "Tue,Fri",
         "--slot", "45min", "--pool", "25m", "--threshold", "2:05", "--longest", "300m", "--session",
         "1000m"},
        {"cards", sample, "--week", "1", "-o", "-"},
    };
}

/// Says the same as always, byte for byte.
void same_in(Before const& before, std::string const& what) {
    for (auto const& words : commands()) {
        auto const usual = run({.arguments = words});
        auto const there = run({.arguments = words, .before = before});
        CAPTURE(what, words);
        CHECK(there.code == usual.code);
        bool const same = there.out == usual.out && there.err == usual.err;
        CHECK(same);
    }
}

void limit(int resource, rlim_t most) {
    rlimit const value{most, most};
    setrlimit(static_cast<__rlimit_resource>(resource), &value);
}

Before set(std::vector<std::pair<std::string, std::string>> const& variables) {
    return [variables] {
        for (auto const& [name, value] : variables) {
            setenv(name.c_str(), value.c_str(), 1);
        }
    };
}

/// Two hundred plans, and one that includes a thousand files.
TempFolder const& many() {
    static TempFolder const folder;
    if (folder.names().empty()) {
        std::string top = "pool 25m\n";
        for (int i = 0; i < 999; ++i) {
            auto const name = std::to_string(i);
            folder.file("sets/" + name + ".swim", "set \"" + name + "\" = 4 x 50 crawl\n");
            top += "include \"sets/" + name + ".swim\"\n";
        }
        folder.file("top.swim", top + "session\n  main\n    use \"998\"\n");
        for (int i = 0; i < 200; ++i) {
            folder.file("plans/" + std::to_string(i) + ".swim",
                        "pool 25m\nsession\n  main\n    " + std::to_string(i + 1) + " x 25 crawl\n");
        }
    }
    return folder;
}

/// As deep as may be: 16 files one in the other, and in the last 31 groups and the `use` of them.
TempFolder const& deep() {
    static TempFolder const folder;
    if (folder.names().empty()) {
        folder.file("top.swim", "include \"1.swim\"\npool 25m\nsession\n  main\n    use \"deep\"\n");
        for (int i = 1; i < 16; ++i) {
            folder.file(std::to_string(i) + ".swim", "include \"" + std::to_string(i + 1) + ".swim\"\n");
        }
        folder.file("16.swim",
                    "set \"deep\" = " + std::string(31, '(') + "50 crawl" + std::string(31, ')') + "\n");
    }
    return folder;
}

} // namespace

TEST_CASE("hostile: no language of the machine changes a byte", "[hostile][surroundings]") {
    TempFolder const locales;
    std::vector<std::string> names{"C", "POSIX", "C.UTF-8", "xx_XX.nonsense"};
    for (std::string const name : {"tr_TR", "de_DE", "ar_SA"}) {
        auto const path = locales.path(name + ".UTF-8");
        auto const made = "localedef -i " + name + " -f UTF-8 " + path + " > /dev/null 2>&1";
        if (std::system(made.c_str()) >= 0 && std::filesystem::exists(path)) {
            names.push_back(name + ".UTF-8");
        }
    }
    if (names.size() == 4) {
        WARN("without localedef or its sources only the languages of every machine are tried");
    }
    for (auto const& name : names) {
        same_in(set({{"LOCPATH", locales.path()}, {"LC_ALL", name}, {"LANG", name}, {"LANGUAGE", name}}),
                name);
    }
}

TEST_CASE("hostile: no time zone changes a byte", "[hostile][surroundings]") {
    for (auto const* const zone :
         {"Pacific/Kiritimati", "Etc/GMT+12", "garbage", "", ":/dev/zero", "A99B-99"}) {
        same_in(set({{"TZ", zone}}), zone);
    }
    same_in([] { unsetenv("TZ"); }, "none");
}

TEST_CASE("hostile: no clock changes a byte", "[hostile][surroundings]") {
    if (!faults_can_be_made()) {
        WARN("skipped: this build brings its own malloc");
        return;
    }
    for (auto const* const clock : {"0", "2147483648", "4102444800", "253402300800"}) {
        same_in(making({.clock = clock}), clock);
    }
}

TEST_CASE("hostile: no home, no terminal, no sensible width", "[hostile][surroundings]") {
    same_in([] { clearenv(); }, "no environment");
    same_in(set({{"HOME", ""}, {"XDG_CONFIG_HOME", "relative"}, {"PATH", ""}}), "no home");
    for (auto const* const columns : {"0", "-5", "99999", "abc", ""}) {
        same_in(set({{"COLUMNS", columns}, {"LINES", columns}, {"TERM", columns}}), columns);
    }
}

TEST_CASE("hostile: few files may be open", "[hostile][surroundings]") {
    for (rlim_t const most : {rlim_t{8}, rlim_t{32}}) {
        for (auto const& words : std::vector<Words>{{"tally"},
                                                    {"check"},
                                                    {"tidy", "--check"},
                                                    {"export", "--as", "csv"},
                                                    {"check", "--format", "sarif"}}) {
            for (auto const* const plans : {"plans", "top.swim"}) {
                auto arguments = words;
                arguments.emplace_back(plans);
                auto const usual = run({.arguments = arguments, .folder = many().path()});
                auto const few = run({.arguments = arguments,
                                      .before = [most] { limit(RLIMIT_NOFILE, most); },
                                      .folder = many().path()});
                CAPTURE(arguments, most, few.err);
                REQUIRE(usual.code == 0);
                CHECK(few.code == 0);
                CHECK(few.out == usual.out);
            }
        }
    }
    // Not even one beside the standard ones.
    auto const none = run({.arguments = {"tally", "top.swim"},
                           .before = [] { limit(RLIMIT_NOFILE, 3); },
                           .folder = many().path()});
    CHECK(none.code != 0);
    CHECK(none.code <= 127); // 127: not even its libraries could be opened
    CHECK(none.out.empty());
}

TEST_CASE("hostile: the deepest plan on a small stack", "[hostile][surroundings]") {
    auto const folder = deep().path();
    for (auto const& name : {"a.swim", "b.swim", "c.swim"}) { // so that threads have a look at some of them
        std::filesystem::copy_file(deep().path("top.swim"), deep().path(name),
                                   std::filesystem::copy_options::overwrite_existing);
    }
    for (auto const& words : std::vector<Words>{{"tally", "top.swim"},
                                                {"tally", "top.swim", "a.swim", "b.swim", "c.swim"},
                                                {"check", "top.swim", "a.swim", "b.swim", "c.swim"},
                                                {"tidy", "--check", "top.swim", "a.swim", "b.swim", "c.swim"},
                                                {"deck", "top.swim"},
                                                {"chart", "top.swim"},
                                                {"export", "top.swim", "--as", "json"},
                                                {"export", "top.swim", "--as", "csv"},
                                                {"export", "top.swim", "--as", "html"},
                                                {"export", "top.swim", "--as", "md"},
                                                {"pace", "400m 8:20", "200m 3:55"},
                                                {"cards", "top.swim", "-o", "-"}}) {
        auto const usual = run({.arguments = words, .folder = folder});
        auto const small =
            run({.arguments = words, .before = [] { limit(RLIMIT_STACK, 256U << 10U); }, .folder = folder});
        CAPTURE(words, small.err);
        CHECK(usual.code != 1); // 2: no cards here
        CHECK(small.code == usual.code);
        CHECK(small.out == usual.out);
    }
    for (auto const& words : commands()) {
        auto const usual = run({.arguments = words});
        auto const small = run({.arguments = words, .before = [] { limit(RLIMIT_STACK, 256U << 10U); }});
        CAPTURE(words, small.err);
        CHECK(small.code == usual.code);
        CHECK(small.out == usual.out);
    }
}

TEST_CASE("hostile: no further thread may be started", "[hostile][surroundings]") {
    auto const alone = [] {
        if (lengthwise::support::become_nobody()) {
            limit(RLIMIT_NPROC, 1);
        }
    };
    std::filesystem::permissions(many().path("plans"), std::filesystem::perms{0755});
    for (auto const* const command : {"tally", "check"}) {
        auto const usual = run({.arguments = {command, "plans"}, .folder = many().path()});
        auto const one = run({.arguments = {command, "plans"}, .before = alone, .folder = many().path()});
        CAPTURE(command, one.err);
        REQUIRE(usual.code == 0);
        CHECK(one.code == 0);
        CHECK(one.out == usual.out);
    }
    // Pango looks for fonts in a thread of its own.
    auto const painted =
        run({.arguments = {"cards", "top.swim", "-o", "-"}, .before = alone, .folder = many().path()});
    CAPTURE(painted.err);
    CHECK((painted.code == 0 || painted.code == 2));
    CHECK(painted.out.empty() == (painted.code == 2));
    CHECK((painted.code == 0 || painted.err.starts_with("lengthwise: ")));
}
