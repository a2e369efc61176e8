#include "plan/pace_of.hpp"
#include "support/plan_text.hpp"
#include "support/read_plan.hpp"
#include "units/spell.hpp"

#include <catch2/catch.hpp>

#include <string>
#include <vector>

/// Whose pace it is, and what may be taken from it.
namespace lengthwise::plan {
namespace {

using support::faults;
using support::read_plan;

/// The pace of a lane in a session, "1:40 per 100 m"; "none".
std::string pace(std::string const& text, std::size_t session, int lane) {
    auto const read = read_plan(text);
    CHECK(read.error() == "");
    LanePaces const lanes{read.plan()};
    auto const* const threshold = pace_of(read.plan(), lanes, read.plan().sessions[session], lane);
    return threshold == nullptr ? "none"
                                : spell::clock(threshold->time) + " per " +
                                      spell::distance(threshold->per, threshold->per_unit);
}

} // namespace

TEST_CASE("a lane goes by its slowest swimmer, the first of equals, whatever the settings say") {
    std::string const text =
        "pool 25m\nthreshold 1:40\n"
        "swimmer \"Oona\" threshold 1:50 lane 1\nswimmer \"Bram\" threshold 2:10 lane 1\n"
        "swimmer \"Liv\" threshold 1:05 per 50m lane 1\nswimmer \"Tore\" lane 2\n"
        "swimmer \"Ruth\" threshold 3:00\n"
        "session\nthreshold 2:00\nmain\nlane 1: 100\nlane 2: 50\nsession\nmain\n100\n";
    CHECK(pace(text, 0, 1) == "2:10 per 100 m"); // Liv is as slow, and named later
    CHECK(pace(text, 0, 2) == "2:00 per 100 m");
    CHECK(pace(text, 0, 0) == "2:00 per 100 m");
    CHECK(pace(text, 1, 1) == "2:10 per 100 m"); // unnamed there, it keeps its pace
    CHECK(pace(text, 1, 2) == "1:40 per 100 m");
}

TEST_CASE("who is slower is compared as if in one pool") {
    // 1:40 in a long pool is faster than 1:40 in a short one.
    std::string const text =
        "pool 25m\n"
        "swimmer \"Ane\" threshold 1:40 in 50m lane 1\nswimmer \"Joss\" threshold 1:39 lane 1\n"
        "session\nmain\nlane 1: 100\n";
    CHECK(pace(text, 0, 1) == "1:39 per 100 m");
}

TEST_CASE("a swimmer's pace has the unit of the plan's pool") {
    std::string const text =
        "pool 25yd\nswimmer \"Ane\" threshold 1:40 lane 1\nsession\npool 25m\nmain\nlane 1: 100\n";
    CHECK(pace(text, 0, 1) == "1:40 per 100 yd");
    CHECK(pace(text, 0, 0) == "none");
}

TEST_CASE("threshold minus leaves a pace, or is an error at the item") {
    auto const head = std::string{"pool 25m\nthreshold 1:40\n"};
    auto const wrong = [](std::string const& item, std::string const& minus, std::string const& threshold) {
        return "syntax-amount | " + item + " | threshold minus " + minus +
               " leaves no pace: the threshold is " + threshold;
    };
    using Faults = std::vector<std::string>;
    CHECK(faults(support::session_with("100 threshold minus 1:39.999", head)).empty());
    CHECK(faults(support::session_with("100 threshold minus 1:40", head)) ==
          Faults{wrong("100 threshold minus 1:40", "1:40", "1:40 per 100 m")});
    CHECK(faults(support::session_with("2 x (50 + 25 threshold minus 2min)", head)) ==
          Faults{wrong("25 threshold minus 2min", "2min", "1:40 per 100 m")});
    CHECK(faults(support::session_with("4 x 50, evens threshold minus 2min", head)).size() == 1);
    CHECK(faults(support::session_with("100 as 50 / 50 threshold minus 2min", head)).size() == 1);
    CHECK(faults(support::session_with("10min threshold minus 2min", head)).size() == 1);
    CHECK(faults(support::session_with("1min tread threshold minus 2min", head)).empty());
    CHECK(faults(support::session_with("100 threshold minus 2min", "pool 25m\n")).empty()); // no pace known
    // The seconds are for a hundred of the pool's unit, and the course counts.
    CHECK(faults(support::session_with("100 threshold minus 1:40", "pool 25yd\nthreshold 1:40 per 100m\n"))
              .size() == 1);
    CHECK(faults(support::session_with("100 threshold minus 1:42", "pool 50m\nthreshold 1:40 in 25m\n"))
              .empty());
    CHECK(faults(support::session_with("100 threshold minus 1:43", "pool 50m\nthreshold 1:40 in 25m\n"))
              .size() == 1);
}

TEST_CASE("threshold minus is judged for whoever swims the item, once") {
    std::string const head = "pool 25m\nthreshold 2:00\nswimmer \"Ane\" threshold 1:30 lane 1\n";
    CHECK(faults(support::session_with("lane 2: 100 threshold minus 95s", head)).empty());
    CHECK(faults(support::session_with("lane 1: 100 threshold minus 95s", head)).size() == 1);
    CHECK(faults(support::session_with("lane 1-2: 100 threshold minus 2:30", head)).size() == 1);
    CHECK(faults(support::session_with("100 threshold minus 95s", head)).size() == 1); // lane 1 swims it too
}

TEST_CASE("threshold minus in a set is told once, at the set's text") {
    std::string const text =
        "pool 25m\nset \"A\" = 100 threshold minus 1:45\n"
        "session\nthreshold 2:00\nmain\nuse \"A\"\n"
        "session\nthreshold 1:40\nmain\n2 x use \"A\"\nsession\nthreshold 1:30\nmain\nuse \"A\"\n";
    CHECK(faults(text) ==
          std::vector<std::string>{"syntax-amount | 100 threshold minus 1:45 | threshold minus "
                                   "1:45 leaves no pace: the threshold is 1:40 per 100 m"});
}

TEST_CASE("paces of any size are compared without wrapping") {
    std::string const text = "pool 1000m\nswimmer \"a\" threshold 24h per 7000000m lane 1\n"
                             "swimmer \"b\" threshold 24h per 6999999m lane 1\n"
                             "session\nmain\nlane 1: 100 threshold minus 24h\n";
    auto const found = faults(text);
    REQUIRE(found.size() == 1);
    CHECK(found.front().find("24:00:00 per 6999999 m") != std::string::npos);
}

TEST_CASE("a set that is timed at too many paces is too large a plan") {
    std::string text = "pool 25m\nset \"A\" = (25";
    for (int i = 0; i < 2'000; ++i) {
        text += " + 25";
    }
    text += ")\n";
    for (int session = 0; session < 600; ++session) {
        text += "session\nthreshold 1:" + std::to_string(10 + session % 50) + "\nmain\nuse \"A\"\n";
    }
    auto const found = faults(text);
    REQUIRE_FALSE(found.empty());
    CHECK(found.front().find("in more than 1048576 further ways") != std::string::npos);
}

} // namespace lengthwise::plan
