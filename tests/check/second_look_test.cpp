#include "support/found.hpp"

#include <catch2/catch.hpp>

#include <string>
#include <vector>

using lengthwise::support::first_hint;
using lengthwise::support::found;
using Found = std::vector<std::string>;

namespace {

/// Lines of a main section, from line 4 on.
Found look(std::string const& lines) {
    return found("second-look", "pool 25m\nsession Tue\nmain\n" + lines);
}

} // namespace

TEST_CASE("second-look: no pool, once a file") {
    CHECK(found("second-look", "session Tue\nmain\n100\nsession Wed\nmain\n100\n") ==
          Found{"3: warning: no pool is named, so a bare number is metres and lengths are unknown"});
    CHECK(found("second-look", "session Tue\nmain\n10min\n").empty());
    CHECK(found("second-look", "pool open water\nsession Tue\nmain\n100\n").empty());
    CHECK(found("second-look", "session Tue\npool 25m\nmain\n100\n").empty());
}

TEST_CASE("second-look: an empty section, a drill that became a heading") {
    CHECK(look("100\ncool-down\n") == Found{"5: warning: this cool-down is empty"});
    CHECK(look("  100\n  drill \"fist\"\n  100 drill\n").empty());
    CHECK(look("  100\n    drill\n  100 drill\n") == Found{"5: warning: this drill begins a new section"});
}

TEST_CASE("second-look: a threshold that no swimmer has") {
    auto const threshold = [](std::string const& text) {
        return found("second-look", "pool 25m\nthreshold " + text + "\nsession Tue\nmain\n100\n");
    };
    CHECK(threshold("0:50").empty());
    CHECK(threshold("0:49").size() == 1);
    CHECK(threshold("5:00").empty());
    CHECK(threshold("5:01").size() == 1);
    CHECK(threshold("1:15 per 25m").empty());
    CHECK(threshold("1:16 per 25m") ==
          Found{"2: warning: a threshold of 5:04 per 100 m, swimmers have 0:50 to 5:00"});
    CHECK(found("second-look", "swimmer \"Bo\" threshold 20:00 per 100m\npool 25m\nsession Tue\nmain\n100\n")
              .size() == 1);
}

TEST_CASE("second-look: a selector that changes no rep") {
    CHECK(look("4 x 50 crawl, evens back\n").empty());
    CHECK(look("4 x 50 crawl easy, evens easy\n") == Found{"4: warning: this changes no rep"});
    CHECK(look("4 x 50 crawl, evens \"count strokes\"\n").empty());
    CHECK(look("4 x 50 build, evens build\n").size() == 1);
    CHECK(look("4 x 100 as 50 kick easy / 50 crawl easy, evens easy\n").size() == 1);
    CHECK(look("4 x 100 as 50 kick easy / 50 crawl, evens hard\n").empty());
    CHECK(look("3 x (100 easy rest 20s + 50), last hard\n").empty());
    CHECK(look("3 x (100 easy rest 20s + 50 easy), last hard\n").front() ==
          "4: warning: this changes no round");
}

TEST_CASE("second-look: a modifier that changes nothing inside") {
    CHECK(look("2 x (100 rest 20s + 50 back) crawl\n").empty());
    CHECK(look("2 x (100 crawl rest 20s + 50 back) breast\n") ==
          Found{"4: note: breast behind the group changes nothing"});
    CHECK(look("2 x (100 with fins rest 20s + 50 with buoy) with paddles\n") ==
          Found{"4: note: the gear behind the group changes nothing"});
    CHECK(look("2 x (100 as 50 easy / 50 hard rest 20s + 50 easy) steady\n").size() == 1);
    CHECK(look("2 x (100 as 50 easy / 50 rest 20s + 50 easy) steady\n").empty());
    CHECK(found("second-look", "set \"A\" = 4 x 50 easy\npool 25m\nsession Tue\nmain\nuse \"A\" hard\n") ==
          Found{"5: note: hard behind the set changes nothing"});
}

TEST_CASE("second-look: an effort behind the last part of a split") {
    CHECK(look("4 x 100 as 50 kick / 50 crawl easy\n") == Found{"4: note: only this last part is easy"});
    CHECK(look("4 x 100 easy as 50 kick / 50 crawl\n").empty());
    CHECK(look("4 x 100 as 50 kick hard / 50 crawl easy\n").empty());
    CHECK(look("4 x 100 as 50 kick / 50 crawl\n").empty());
}

TEST_CASE("second-look: a drill's name that is a note, a section's that is no drill") {
    CHECK(look("100 drill \"fist\" crawl\n").empty());
    CHECK(look("100 drill crawl \"fist\"\n") ==
          Found{"4: note: \"fist\" is a note here, not the drill's name"});
    auto const section = [](std::string const& lines) {
        return found("second-look", "pool 25m\nsession Tue\ndrill \"fist\"\n" + lines);
    };
    CHECK(section("4 x 50\n") ==
          Found{"3: note: \"fist\" names the section, no line below it is swum as a drill"});
    CHECK(section("4 x 50 drill\n").empty());
    CHECK(section("4 x 50 as 25 drill / 25 crawl\n100\n").empty());
    CHECK(found("second-look", "pool 25m\nsession Tue\ndrill\n4 x 50\n").empty());
}

TEST_CASE("second-look: hold over reps of different distances") {
    CHECK(look("4 x 100 hold 1:40\n").empty());
    CHECK(look("100, 200 hold 1:40\n").size() == 1);
    CHECK(look("100, 100 hold 1:40\n").empty());
    CHECK(look("2 x (100 rest 20s + 50) hold 1:40\n").size() == 1);
    CHECK(look("2 x (100 rest 20s + 100) hold 1:40\n").empty());
    CHECK(look("2 x (100 rest 20s + 50 easy) hold 1:40\n").empty());
    CHECK(found("second-look", "pool 25m\nsession Tue\nmain hold 1:40\n100\n50\n").size() == 1);
}

TEST_CASE("second-look: a percent that reads like a heart rate") {
    CHECK(look("4 x 100 at 85%\n").empty());
    CHECK(look("4 x 100 at 84%\n") == Found{"4: note: at 84% is a share of threshold speed, very slow"});
    CHECK(look("4 x 100, evens at 70%\n").size() == 1);
    CHECK(look("100 as 50 at 70% / 50 easy\n").size() == 1);
    CHECK(found("second-look", "pool 25m\nsession Tue\nmain at 70%\n100\n").size() == 1);
}

TEST_CASE("second-look: a group without any rest inside") {
    CHECK(look("3 x (100 + 50) rest 1min\n") ==
          Found{"4: note: no rest inside the group, its reps are swum in one go"});
    CHECK(look("3 x (100 rest 10s + 50) rest 1min\n").empty());
    CHECK(look("3 x (2 x 50 on 1:00) rest 1min\n").empty());
    CHECK(look("3 x (4 x 50) rest 1min\n").size() == 1);
    CHECK(look("3 x (100) rest 1min\n").empty());
    CHECK(found("second-look", "pool 25m\nrest 20s\nsession Tue\nmain\n3 x (100 + 50)\n").empty());
}

TEST_CASE("second-look: a pause shorter than the rest it replaces") {
    CHECK(look("4 x 100 rest 30s\npause 10s\n100\n") ==
          Found{"5: note: a pause of 10 s in the place of 30 s rest"});
    CHECK(look("4 x 100 rest 30s\npause 30s\n100\n").empty());
    CHECK(look("4 x 100 rest 20-40s\npause 20s\n100\n").empty());
    CHECK(look("4 x 100 rest 20-40s\npause 19s\n100\n").size() == 1);
    CHECK(look("4 x 100 rest 30s\npause 10s\npause 20s\n100\n").empty());
    CHECK(look("4 x 100 on 2:00\npause 10s\n100\n").empty());
    CHECK(look("4 x 100 rest 30s\npause 0s\n100\n").empty()); // said so on purpose
    CHECK(look("2 x (100 rest 10s + 50 rest 10s) rest 1min\npause 30s\n100\n").size() == 1);
    CHECK(look("2 x (100 rest 20s + 50 rest 10s) on 3:00\npause 5s\n100\n").empty());
    CHECK(look("4 x 100 rest 30s\npause 10s\n").empty()); // the session's end: no rest, no pause
}

TEST_CASE("second-look: once for a set, and allowed") {
    std::string const set = "set \"A\" = 4 x 100 as 50 kick / 50 crawl easy\npool 25m\n";
    std::string const session = "session Tue\nmain\nuse \"A\"\nuse \"A\"\n";
    CHECK(found("second-look", set + session).size() == 1);
    CHECK(found("second-look", set + "allow second-look\n" + session).empty());
    CHECK(found("second-look",
                "pool 25m\nsession Tue\nallow second-look \"on purpose\"\nmain\n3 x (100 + 50)\n")
              .empty());
}
