#include "support/plan_text.hpp"
#include "units/spell.hpp"

#include <catch2/catch.hpp>

#include <string>
#include <vector>

/// What lines mean, by the rule that says so (docs/notation.md). The right column spells what is in force.
namespace lengthwise {
namespace {

using support::meanings;
using support::read_plan;
using support::session_with;

std::vector<std::string> in_session(std::string_view lines, std::string_view head = "pool 25m\n") {
    auto const read = read_plan(session_with(lines, head));
    CHECK(read.error() == "");
    return meanings(read.plan());
}

std::string in_line(std::string_view line, std::string_view head = "pool 25m\n") {
    auto const all = in_session(std::string{"    "} + std::string{line}, head);
    REQUIRE(all.size() == 1);
    return all.front();
}

} // namespace

TEST_CASE("a bare number has the unit of the pool in force") {
    CHECK(in_line("200") == "1 x 200 m");
    CHECK(in_line("200", "pool 25yd\n") == "1 x 182.88 m");
    CHECK(in_line("200m", "pool 25yd\n") == "1 x 200 m");
    CHECK(in_line("200yd") == "1 x 182.88 m");
    CHECK(in_line("200", "") == "1 x 200 m");
    CHECK(in_line("200", "pool open water\n") == "1 x 200 m");
    CHECK(in_line("4 lengths") == "1 x 100 m");
    CHECK(in_line("4 lengths", "pool 25yd\n") == "1 x 91.44 m");
    CHECK(in_line("33 1/3 m", "") == "1 x 33⅓ m");
    CHECK(in_line("12.25m") == "1 x 12.25 m");
}

TEST_CASE("in a pool of 33 1/3 m a rounded count of lengths means those lengths") {
    auto const head = "pool 33 1/3 m\n";
    CHECK(in_line("33", head) == "1 x 33⅓ m");
    CHECK(in_line("66", head) == "1 x 66⅔ m");
    CHECK(in_line("67", head) == "1 x 66⅔ m");
    CHECK(in_line("100", head) == "1 x 100 m");
    CHECK(in_line("133", head) == "1 x 133⅓ m");
    CHECK(in_line("166", head) == "1 x 166⅔ m");
    CHECK(in_line("167", head) == "1 x 166⅔ m");
    CHECK(in_line("50", head) == "1 x 50 m");  // no count of lengths: 50 m as written
    CHECK(in_line("34", head) == "1 x 34 m");  // 33.33 rounds to 33, not to 34
    CHECK(in_line("67m", head) == "1 x 67 m"); // a unit stands: no counting
    CHECK(in_line("67, 133", head) == "66⅔ m, 133⅓ m");
    CHECK(in_line("67, 133m", head) == "67 m, 133 m"); // the last unit governs
    CHECK(in_line("133 as 67 kick / 67 crawl", head) == "1 x 133⅓ m as 66⅔ m kick / 66⅔ m crawl");
    CHECK(in_line("200 broken at 67 for 10s", head) == "1 x 200 m broken at 66⅔ m for 10s");
    CHECK(in_line("100 at 1:00 per 33", head) == "1 x 100 m at 1min per 33⅓ m");
    CHECK(in_line("33", "pool 33 1/3 yd\n") == "1 x 30.48 m"); // 33 1/3 yd
    CHECK(in_line("37", "pool 36 2/3 yd\n") == "1 x 33.5 m");  // 36 2/3 yd, 33.528 m
}

TEST_CASE("counts, ladders, times and groups") {
    CHECK(in_line("4x100 crawl") == "4 x 100 m crawl");
    CHECK(in_line("100, 200, 100 crawl") == "100 m, 200 m, 100 m crawl");
    CHECK(in_line("4, 8, 4 lengths") == "100 m, 200 m, 100 m");
    CHECK(in_line("2 x 10min easy") == "2 x 10min easy");
    CHECK(in_line("1:30, 90s") == "1:30, 1:30");
    CHECK(in_line("3 x (200 crawl + 50 back) rest 1min") ==
          "3 x {1 x 200 m crawl + 1 x 50 m back} rest 1min");
    CHECK(in_session("    (\n      100\n      50 kick\n    ) easy") ==
          std::vector<std::string>{"1 x {1 x 100 m easy + 1 x 50 m kick easy}"});
}

TEST_CASE("the nearest wins, class by class and whole") {
    auto const head = "pool 25m\nrest 20-40s\n";
    CHECK(in_line("100", head) == "1 x 100 m rest 20-40s");
    CHECK(in_line("100 rest 10s", head) == "1 x 100 m rest 10s");
    CHECK(in_line("100 rest 0s", head) == "1 x 100 m rest 0s");
    CHECK(in_line("100 on 2:00", head) == "1 x 100 m on 2:00");
    CHECK(in_line("2 x (100 + 50) rest 1min", head) ==
          "2 x {1 x 100 m rest 20-40s + 1 x 50 m rest 20-40s} rest 1min");
    CHECK(in_line("2 x (100 back + 50) crawl easy") == "2 x {1 x 100 m back easy + 1 x 50 m crawl easy}");
    CHECK(in_line("(100 with fins + 50) with paddles, buoy") ==
          "1 x {1 x 100 m fins + 1 x 50 m paddles buoy}");
    CHECK(in_line("(100 with nothing + 50) with fins") == "1 x {1 x 100 m + 1 x 50 m fins}");
    CHECK(in_line("(100 swim + 50) kick") == "1 x {1 x 100 m swim + 1 x 50 m kick}");
    CHECK(in_line("(100 drill + 50) drill \"fist\"") == "1 x {1 x 100 m drill + 1 x 50 m drill \"fist\"}");
    // shapes, stops and notes stay where they stand
    CHECK(in_line("2 x (100 build + 50) \"smooth\"") == "2 x {1 x 100 m build + 1 x 50 m} \"smooth\"");
    CHECK(in_line("2 x (100 + 50) build") == "2 x {1 x 100 m + 1 x 50 m} build");
}

TEST_CASE("heading modifiers are defaults until the next heading") {
    auto const read = read_plan("pool 25m\nrest 30s\nsession\n"
                                "  warm-up \"Wake\" choice easy rest 10s\n    100\n    50 crawl\n"
                                "  main\n    100\n");
    CHECK(meanings(read.plan()) ==
          std::vector<std::string>{"1 x 100 m choice easy rest 10s", "1 x 50 m crawl easy rest 10s"});
    auto const& plan = read.plan();
    CHECK(plan.heading_of(plan.sections[0]).name == "Wake");
    auto const& main_item = plan.items[plan.sections[1].body];
    CHECK(plan.terms[main_item.terms].manner == plan::Manner{});
    CHECK(plan.terms[main_item.terms].recovery.rest ==
          Range<Duration>{Duration::seconds(30), Duration::seconds(30)});
}

TEST_CASE("a drill section is a place, not a mode") {
    auto const read = read_plan("pool 25m\nsession\n  drill\n    100 crawl\n");
    CHECK(meanings(read.plan()) == std::vector<std::string>{"1 x 100 m crawl"});
}

TEST_CASE("splits: what stands before `as` is the parts' default, what ends them binds to the rep") {
    CHECK(in_line("200 as 25 kick / 25 crawl") == "1 x 200 m as 25 m kick / 25 m crawl");
    CHECK(in_line("100 easy as 50 back / 50 hard") == "1 x 100 m easy as 50 m back easy / 50 m hard");
    CHECK(in_line("4 x 100 as 50 kick / 50 crawl easy rest 20s") ==
          "4 x 100 m as 50 m kick / 50 m crawl easy rest 20s");
    CHECK(in_line("100 as 50 drill \"fist\" / 50 crawl build with fins \"long\"") ==
          "1 x 100 m fins as 50 m drill \"fist\" fins / 50 m crawl fins build \"long\"");
    CHECK(in_line("4 x 50 as 25 kick / 25, odds easy, evens hard") ==
          "4 x 50 m as 25 m kick / 25 m"
          " [1+2k x2: easy as 25 m kick easy / 25 m easy]"
          " [2+2k x2: hard as 25 m kick hard / 25 m hard]");
    CHECK(in_line("2min as 30s kick / 30s easy") == "1 x 2min as 30s kick / 30s easy");
}

TEST_CASE("selectors lay modifiers over the item's own, a class whole") {
    CHECK(in_line("6 x 100 crawl easy, odds hard with fins, every 6th \"last\"") ==
          "6 x 100 m crawl easy [1+2k x3: crawl hard fins] [6+6k x1: crawl easy \"last\"]");
    CHECK(in_line("5 x 100 first easy, next 2 steady, next hard, last sprint") ==
          "5 x 100 m [1+1k x1: easy] [2+1k x2: steady] [4+1k x1: hard] [5+1k x1: sprint]");
    CHECK(in_line("4 x 50 with stops, odds with nothing") == "4 x 50 m with stops [1+2k x2:]");
    CHECK(in_line("4 x 50 build, evens build") == "4 x 50 m build [2+2k x2: build]");
    // over a group they come down like the group's own; what an inner item says stays
    CHECK(in_line("2 x (100 + 50 back easy) steady, last hard") ==
          "2 x {1 x 100 m steady + 1 x 50 m back easy} [2+1k x1: {1 x 100 m hard + 1 x 50 m back easy}]");
}

TEST_CASE("a range's bare low end takes the high end's unit") {
    CHECK(in_line("4 x 50 rest 20-40s") == "4 x 50 m rest 20-40s");
    CHECK(in_line("4 x 50 rest 1-2min") == "4 x 50 m rest 1-2min");
    CHECK(in_line("4 x 50 rest 30s-1min") == "4 x 50 m rest 30s-1min");
}

TEST_CASE("lane labels and `if time` in either order, pauses and notes") {
    CHECK(in_session("    lane 1-3: if time: 100\n    if time: lane 2: 50\n    pause 2min \"drink\"\n    "
                     "\"calm\"\n") == std::vector<std::string>{"lane 1-3: if time: 1 x 100 m",
                                                               "lane 2-2: if time: 1 x 50 m",
                                                               "pause 2min \"drink\"", "note \"calm\""});
}

TEST_CASE("effort, its ways") {
    CHECK(in_line("100 threshold plus 5s") == "1 x 100 m threshold +5000ms");
    CHECK(in_line("100 threshold minus 2s") == "1 x 100 m threshold -2000ms");
    CHECK(in_line("100 at 95%") == "1 x 100 m at 95%");
    CHECK(in_line("100 at 1:55 per 100") == "1 x 100 m at 1:55 per 100 m");
    CHECK(in_line("100 at 1:45 per 100yd") == "1 x 100 m at 1:45 per 91.44 m");
    CHECK(in_line("50 hold 0:52") == "1 x 50 m hold 52s");
    CHECK(in_line("50 rpe 7") == "1 x 50 m rpe 7");
}

TEST_CASE("escapes in names and notes") {
    CHECK(in_line(R"(100 "say \"go\" \\ now")") == "1 x 100 m \"say \"go\" \\ now\"");
}

} // namespace lengthwise
