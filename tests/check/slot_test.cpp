#include "support/found.hpp"

#include <catch2/catch.hpp>

#include <string>
#include <vector>

using lengthwise::support::first_hint;
using lengthwise::support::found;
using Found = std::vector<std::string>;

namespace {

// At a threshold of 1:40 steady takes 104, 107, 110 %: 400 m are 6:56, 7:08 and 7:20.
std::string const pace = "pool 25m\nthreshold 1:40\n";

std::string plan(std::string const& slot, std::string const& lines = "400", std::string const& head = pace) {
    return head + "session Tue 07:00 for " + slot + "\nmain\n" + lines + "\n";
}

} // namespace

TEST_CASE("slot: a warning where the slow end does not fit, an error where the expected time does not") {
    CHECK(found("slot", plan("441s")).empty());
    CHECK(found("slot", plan("440s")).empty());
    CHECK(found("slot", plan("439s")) == Found{"3: warning: 6–8 min, the slot is 7:19"});
    CHECK(first_hint("slot", plan("439s")) == "at the slow end 0:01 over");
    CHECK(found("slot", plan("428s")).size() == 1);
    CHECK(found("slot", plan("428s")).front().find("warning") != std::string::npos);
    CHECK(found("slot", plan("427s")).front().find("error") != std::string::npos);
    CHECK(first_hint("slot", plan("7min")) == "expected 0:08 over, at the slow end 0:20");
}

TEST_CASE("slot: what has to stay free is taken off") {
    auto const head = pace + "limit slot 2min\n";
    CHECK(found("slot", plan("560s", "400", head)).empty());
    CHECK(found("slot", plan("559s", "400", head)).size() == 1);
    CHECK(found("slot", plan("9min", "400", head)) ==
          Found{"4: error: 6–8 min, the slot is 9 min with 2 min kept free"});
    CHECK(found("slot", plan("9min", "400", pace + "allow slot \"the lifeguard stays\"\n")).empty());
    CHECK(found("slot", plan("5min", "400", pace + "allow slot \"the lifeguard stays\"\n")).empty());
}

TEST_CASE("slot: every lane, with its pace") {
    auto const two = pace + "swimmer \"Ada\" lane 1\nswimmer \"Bo\" threshold 2:05 lane 2\n";
    auto const labelled = "lane 1: 400\nlane 2: 400";
    CHECK(found("slot", plan("9min", labelled, two)) ==
          Found{"5: warning: 8–10 min in lane 2, the slot is 9 min"});
    CHECK(found("slot", plan("9min", "lane 1: 400\nlane 2: 300", two)).empty());
    // A lane keeps its pace in a session that names none.
    CHECK(found("slot", plan("9min", "400", two)) ==
          Found{"5: warning: 8–10 min in lane 2, the slot is 9 min"});
    // Where both swim alike no lane is named.
    CHECK(found("slot", plan("6min", labelled)) == Found{"3: error: 6–8 min, the slot is 6 min"});
    CHECK(found("slot", plan("6min", "lane 1: 400\nlane 2: 400\nlane 3: 200")) ==
          Found{"3: error: 6–8 min in lanes 1 and 2, the slot is 6 min"});
}

TEST_CASE("slot: hours are said in the minutes of the times beside them") {
    CHECK(found("slot", plan("1h", "3400")) == Found{"3: error: 58–63 min, the slot is 60 min"});
}

TEST_CASE("slot: without a pace only where no threshold would do") {
    // At 30 s for 100 m steady 400 m are 2:12 at the slow end, and the rests 3:00.
    std::string const lines = "4 x 100 rest 1min";
    CHECK(found("slot", plan("312s", lines, "pool 25m\n")).empty());
    CHECK(found("slot", plan("311s", lines, "pool 25m\n")) == Found{"2: error: 5–6 min, the slot is 5:11"});
    CHECK(first_hint("slot", plan("311s", lines, "pool 25m\n")) ==
          "at no threshold it fits: even at 0:30 per 100 m it takes 5:12, 0:01 over");
    CHECK(found("slot", plan("312s", lines, "pool 25yd\n")).empty());
    CHECK(found("slot", plan("311s", lines, "pool 25yd\n")).size() == 1);
    CHECK(found("slot", plan("5min", "10min", "pool 25m\n")).size() == 1);
}
