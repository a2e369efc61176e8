#include "support/child.hpp"
#include "support/faults.hpp"
#include "support/program.hpp"
#include "support/temp_folder.hpp"

#include <catch2/catch.hpp>

#include <filesystem>
#include <map>
#include <string>
#include <vector>

#include <unistd.h>

// Disks that give up in the middle, and files that others write meanwhile.
namespace {

using lengthwise::support::bytes_of;
using lengthwise::support::Ending;
using lengthwise::support::Fault;
using lengthwise::support::faults_can_be_made;
using lengthwise::support::making;
using lengthwise::support::run;
using lengthwise::support::TempFolder;

using Words = std::vector<std::string>;
using Disk = std::map<std::string, std::string>; ///< every file in the folder, by its name

constexpr char const* untidy = "pool   25m\nweek 1 from 2027-05-03\nsession Tue\nmain\n4x50 free\n";
constexpr char const* newer = "pool 25m\nsession\n  main\n    8 x 50 crawl # the editor's\n";

/// A folder with a plan, and one newer.
class Scene {
  public:
    Scene() {
        folder_.file("a.swim", untidy);
        folder_.file("newer.txt", newer);
    }

    Ending operator()(Words const& words, Fault const& fault) const {
        return run({.arguments = words, .before = making(fault), .folder = folder_.path()});
    }
    Ending operator()(Words const& words) const {
        return run({.arguments = words, .folder = folder_.path()});
    }
    [[nodiscard]] std::string plan() const { return bytes_of(folder_.path("a.swim")); }
    [[nodiscard]] TempFolder const& folder() const { return folder_; }

    [[nodiscard]] Disk disk() const { return folder_.files(); }

  private:
    TempFolder folder_;
};

bool skipped() {
    if (!faults_can_be_made()) {
        WARN("skipped: this build brings its own malloc");
    }
    return !faults_can_be_made();
}

bool says(Ending const& ending, std::string const& text) {
    return ending.err.find(text) != std::string::npos;
}

std::vector<Words> writers() {
    return {
        {"tidy", "a.swim"},
        {"pace", "400m 8:20", "200m 3:55", "--into", "a.swim"},
        {"new", "-o", "x.swim"},
        {"export", "a.swim", "--as", "html", "-o", "x.html"},
        {"export", "a.swim", "--as", "json", "-o", "a.json"},
        {"chart", "a.swim", "-o", "x.svg"},
        {"compose", "--race",    "sprint", "--on",      "2027-06-06", "--from", "2027-04-26",
         "--days",  "Tue,Fri",   "--slot", "45min",     "--pool",     "25m",    "--threshold",
         "2:05",    "--longest", "300m",   "--session", "1000m",      "-o",     "x.swim"},
    };
}

} // namespace

TEST_CASE("hostile: a disk that gives up at any step leaves all as it was", "[hostile][disk]") {
    if (skipped()) {
        return;
    }
    struct Step {
        char const* call;
        long at;
        char const* error;
        char const* says;
    };
    auto const step = GENERATE(Step{"mkostemp", 1, "28", "disk full"}, Step{"write", 1, "28", "disk full"},
                               Step{"write", 1, "5", "error"}, Step{"fchmod", 1, "5", "error"},
                               Step{"fsync", 1, "28", "disk full"}, Step{"fsync", 1, "122", "disk full"},
                               Step{"fsync", 1, "5", "error"}, Step{"rename", 1, "28", "disk full"},
                               Step{"rename", 1, "30", "read-only"});
    for (auto const& words : writers()) {
        Scene const scene;
        auto const before = scene.disk();
        auto const ending = scene(words, {.call = step.call, .at = step.at, .what = step.error});
        CAPTURE(words, step.call, step.error, ending.err);
        CHECK(ending.code == 2);
        CHECK(says(ending, "lengthwise: cannot write "));
        CHECK(says(ending, step.says));
        CHECK(says(ending, before.contains(words.back()) ? "; old one kept" : "; nothing written"));
        CHECK_FALSE(says(ending, "wrote "));
        CHECK(scene.disk() == before);
    }
}

TEST_CASE("hostile: an error that the system tells only on closing counts", "[hostile][disk]") {
    if (skipped()) {
        return;
    }
    for (auto const& words : writers()) {
        // Other files are closed too; the one that is written is among them.
        bool refused = false;
        for (long at = 1; at <= 8; ++at) {
            Scene const scene;
            auto const before = scene.disk();
            auto const ending = scene(words, {.call = "close", .at = at, .what = "28"});
            CAPTURE(words, at, ending.err);
            CHECK((ending.code == 0 || ending.code == 2));
            refused = refused || ending.code == 2;
            CHECK((ending.code == 0) == (scene.disk() != before));
        }
        CHECK(refused);
    }
}

TEST_CASE("hostile: a disk that takes and gives a byte at a time", "[hostile][disk]") {
    if (skipped()) {
        return;
    }
    for (auto const& words : writers()) {
        Scene const usual;
        Scene const slow;
        auto const fast = usual(words);
        CAPTURE(words, fast.err);
        REQUIRE(fast.code == 0);
        auto const ending = slow(words, {.call = "write", .what = "short"});
        CHECK(ending.code == 0);
        CHECK(ending.out == fast.out);
        CHECK(ending.err == fast.err);
        CHECK(slow.disk() == usual.disk());
        CHECK(Scene{}(words, {.call = "read", .what = "short"}).out == fast.out);
    }
}

TEST_CASE("hostile: a plan that cannot be read to its end is not read", "[hostile][disk]") {
    if (skipped()) {
        return;
    }
    Scene const scene;
    for (long at = 1; at <= 2; ++at) {
        for (auto const* const command : {"tally", "check", "tidy", "deck", "chart"}) {
            auto const ending = scene({command, "a.swim"}, {.call = "read", .at = at, .what = "5"});
            CAPTURE(command, at, ending.err);
            CHECK(ending.code == 2);
            CHECK(says(ending, "lengthwise: cannot read a.swim: "));
            CHECK(ending.out.empty());
        }
    }
    CHECK(scene.plan() == untidy);
}

TEST_CASE("hostile: a plan that changes while it is read is refused", "[hostile][disk]") {
    if (skipped()) {
        return;
    }
    std::string const changes[] = {
        "echo '    400' >> a.swim",        // grown
        ": > a.swim",                      // cut
        "sleep 0.02; printf P 1<> a.swim", // as long as before
    };
    for (auto const& change : changes) {
        for (auto const* const command : {"tally", "check", "tidy", "deck"}) {
            Scene const scene;
            auto const ending =
                scene({command, "a.swim"}, {.call = "read", .at = 2, .what = "run", .meanwhile = change});
            CAPTURE(command, change, ending.out, ending.err);
            CHECK(ending.code == 2);
            CHECK(ending.err == "lengthwise: cannot read a.swim: changed while it was read; try again\n");
            CHECK(ending.out.empty());
        }
    }
}

TEST_CASE("hostile: what somebody else has written meanwhile is not lost", "[hostile][disk]") {
    if (skipped()) {
        return;
    }
    std::vector<Words> const renewals{
        {"tidy", "a.swim"},
        {"tidy", "."},
        {"pace", "400m 8:20", "200m 3:55", "--into", "a.swim"},
    };
    // Editors rename a new file over the old one, or write into it.
    std::string const edits[] = {"cp newer.txt b; mv b a.swim", "cp newer.txt a.swim",
                                 "cat newer.txt >> a.swim", "rm a.swim", "sed -i s/50/75/ a.swim"};
    for (auto const& words : renewals) {
        for (auto const& edit : edits) {
            for (auto const* const call : {"mkostemp", "write", "fsync"}) {
                Scene const other;
                REQUIRE(lengthwise::support::in_child([&] {
                            return chdir(other.folder().path().c_str()) == 0 && system(edit.c_str()) == 0 ? 0
                                                                                                          : 1;
                        }) == 0);
                Scene const scene;
                auto const ending = scene(words, {.call = call, .what = "run", .meanwhile = edit});
                CAPTURE(words, edit, call, ending.err);
                CHECK(ending.code == 2);
                CHECK(says(ending, "a.swim: no longer what was read; left as it is, try again\n"));
                CHECK_FALSE(says(ending, "wrote "));
                CHECK(scene.disk() == other.disk());
            }
        }
    }
}

TEST_CASE("hostile: a plan that goes on is not put over a newer one", "[hostile][disk]") {
    if (skipped()) {
        return;
    }
    Scene const scene;
    auto composing = writers().back();
    composing.back() = "a.swim";
    composing.emplace_back("--force");
    REQUIRE(scene(composing).code == 0);
    auto const composed = scene.plan();
    Words const resuming{"compose", "--resume", "a.swim",     "--after", "week 4",      "--longest",
                         "600m",    "--from",   "2027-05-24", "-o",      "x/../a.swim", "--force"};
    std::filesystem::create_directory(scene.folder().path("x"));
    // the same file by another name
    auto const ending = scene(resuming, {.call = "fsync", .what = "run", .meanwhile = "cp newer.txt a.swim"});
    CAPTURE(ending.err);
    CHECK(ending.code == 2);
    CHECK(says(ending, "no longer what was read"));
    CHECK(scene.plan() == newer);

    scene.folder().file("a.swim", composed);
    CHECK(scene(resuming).code == 0);
    CHECK(scene.plan() != composed);
}

TEST_CASE("hostile: two that write a plan at once leave it whole", "[hostile][disk]") {
    for (int i = 0; i < 20; ++i) {
        Scene const scene;
        auto const start = [&](Words const& words) {
            return lengthwise::support::start_child([&] { return scene(words).code; });
        };
        auto const tidying = start({"tidy", "a.swim"});
        auto const pacing = start({"pace", "400m 8:20", "200m 3:55", "--into", "a.swim"});
        auto const tidied = lengthwise::support::wait_for(tidying);
        auto const paced = lengthwise::support::wait_for(pacing);
        CHECK((tidied == 0 || tidied == 2));
        CHECK((paced == 0 || paced == 2));
        CHECK((tidied == 0 || paced == 0)); // one of them is the first
        CHECK(scene({"check", "a.swim"}).code == 0);
        CHECK(scene.folder().names() == Words{"a.swim", "newer.txt"});
    }
}
