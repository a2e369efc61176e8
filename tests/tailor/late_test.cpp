#include "tailor/late.hpp"

#include "support/plan_text.hpp"
#include "support/read_plan.hpp"

#include <catch2/catch.hpp>

#include <optional>
#include <string>
#include <vector>

using namespace lengthwise;
using Problem = tailor::Late::Problem;

namespace {

/// At 100 s for 100 m, whatever is swum how: figures can be added by head.
std::string const head = "pool 25m\nthreshold 1:40\n";

struct Asked {
    int after = 0;
    Duration left;
    std::optional<int> lane{};
};

tailor::Late late(std::string const& text, Asked const& asked) {
    auto const read = support::read_plan(text);
    REQUIRE(read.error() == "");
    return tailor::late(read.plan(), {.after = asked.after, .left = asked.left, .lane = asked.lane});
}

/// "4 5 6": rows that stay in a lane, by number; "+" for an `if time` line, "." for a pause.
std::string stays(tailor::Late const& late, std::size_t place = 0) {
    std::string text;
    for (auto const& line : late.lines) {
        if (line.lanes[place].stays) {
            text += text.empty() ? "" : " ";
            text += line.number > 0 ? std::to_string(line.number) : line.lanes[place].start ? "+" : ".";
        }
    }
    return text;
}

constexpr Duration seconds(std::int64_t n) {
    return Duration::seconds(n);
}

std::string exact(std::string lines) {
    for (auto at = lines.find(" !"); at != std::string::npos; at = lines.find(" !")) {
        lines.replace(at, 2, " at 1:40 per 100");
    }
    return head + "session\n" + lines;
}

/// 200, 100 | 100 | 400, 100, 50, + 50 | 100 in seconds as in metres.
std::string const whole = exact(R"(  warm-up
    200 !
    100 !
  drill
    100 !
  main
    400 !
    100 !
    50 !
    if time: 50 !
  cool-down
    100 !
)");

} // namespace

TEST_CASE("rows go from the end of main, `if time` before all", "[late]") {
    CHECK(stays(late(whole, {3, seconds(700)})) == "4 5 6 + 7");
    CHECK(stays(late(whole, {3, seconds(699)})) == "4 5 6 7");
    CHECK(stays(late(whole, {3, seconds(650)})) == "4 5 6 7");
    CHECK(stays(late(whole, {3, seconds(649)})) == "4 5 7");
    CHECK(stays(late(whole, {3, seconds(600)})) == "4 5 7");
    CHECK(stays(late(whole, {3, seconds(599)})) == "4 7");
}

TEST_CASE("then drill and warm-up go, the long rep and the cool-down never", "[late]") {
    CHECK(stays(late(whole, {0, seconds(900)})) == "1 2 3 4 7");
    CHECK(stays(late(whole, {0, seconds(899)})) == "1 2 4 7");
    CHECK(stays(late(whole, {0, seconds(799)})) == "1 4 7");
    CHECK(stays(late(whole, {0, seconds(699)})) == "4 7");
    CHECK(stays(late(whole, {0, seconds(1)})) == "4 7");
    CHECK(stays(late(whole, {1, seconds(699)})) == "2 4 7");
}

TEST_CASE("a long rep that lies behind holds nothing", "[late]") {
    CHECK(stays(late(whole, {4, seconds(1)})) == "7");
    CHECK(late(whole, {4, seconds(1)}).lanes.front().shorter == std::nullopt);
}

TEST_CASE("of reps as long the one in main is the long rep", "[late]") {
    auto const text = exact("  warm-up\n    200 !\n  main\n    200 !\n    200 !\n  cool-down\n    100 !\n");
    CHECK(stays(late(text, {0, seconds(1)})) == "2 4");
    CHECK(stays(late(text, {1, seconds(1)})) == "2 4");
    CHECK(stays(late(text, {2, seconds(1)})) == "4");
}

TEST_CASE("times run from the first start that is left", "[late]") {
    auto const found = late(whole, {3, seconds(600)});
    REQUIRE(found.lines.size() == 5);
    CHECK(found.lines[0].lanes[0].start == Duration{});
    CHECK(found.lines[1].lanes[0].start == seconds(400));
    CHECK(found.lines[2].left_out);
    CHECK(found.lines[2].lanes[0].with_it == seconds(650));
    CHECK(found.lines[4].lanes[0].start == seconds(500));
    CHECK(found.lanes[0].end.high == seconds(600));
}

TEST_CASE("of many rows left out the eight that would go back first are timed with it", "[late]") {
    auto lines = std::string{"  main\n    400 !\n"};
    for (int i = 0; i < 12; ++i) {
        lines += "    50 !\n";
    }
    auto const found = late(exact(lines), {0, seconds(400)});
    REQUIRE(found.lines.size() == 13);
    for (std::size_t place = 1; place < found.lines.size(); ++place) {
        CAPTURE(place);
        CHECK(found.lines[place].left_out);
        CHECK(found.lines[place].lanes[0].with_it ==
              (place <= 8 ? std::optional{seconds(450)} : std::nullopt));
    }
}

TEST_CASE("the rest behind the last row counts nothing, nor that of a row left out", "[late]") {
    auto const text = exact("  main\n    400 ! rest 1min\n    50 ! rest 2min\n    50 ! rest 3min\n");
    CHECK(late(text, {0, seconds(680)}).lanes[0].end.high == seconds(680));
    CHECK(late(text, {0, seconds(679)}).lanes[0].end.high == seconds(510));
    CHECK(late(text, {0, seconds(509)}).lanes[0].end.high == seconds(400));
}

TEST_CASE("a pause goes with the row before it", "[late]") {
    auto const text = exact("  main\n    400 !\n    pause 1min\n    50 !\n    pause 5min\n    50 !\n"
                            "  cool-down\n    100 !\n");
    CHECK(stays(late(text, {0, seconds(960)})) == "1 . 2 . 3 4");
    CHECK(late(text, {0, seconds(960)}).lanes[0].end.high == seconds(960));
    CHECK(stays(late(text, {0, seconds(959)})) == "1 . 2 . 4");
    CHECK(stays(late(text, {0, seconds(909)})) == "1 . 4");
    CHECK(late(text, {0, seconds(909)}).lanes[0].end.high == seconds(560));
}

TEST_CASE("pauses at either end are none", "[late]") {
    auto const text = exact("  main\n    50 !\n    pause 1min\n    400 !\n    pause 5min\n");
    CHECK(stays(late(text, {1, seconds(400)})) == "2");
    CHECK(late(text, {1, seconds(400)}).lanes[0].end.high == seconds(400));
}

TEST_CASE("a row goes for all lanes that swim it when one of them needs it", "[late]") {
    auto const text = exact(R"(  main
    300 !
    lane 1: 100 !
    lane 2: 200 !
    50 !
    lane 1: 30 !
  cool-down
    100 !
)");
    auto const fits = late(text, {0, seconds(650)});
    CHECK(stays(fits, 0) == "1 2 4 5 6");
    CHECK(stays(fits, 1) == "1 3 4 6");
    auto const shared = late(text, {0, seconds(649)});
    CHECK(stays(shared, 0) == "1 2 5 6");
    CHECK(stays(shared, 1) == "1 3 6");
    auto const own = late(text, {0, seconds(599)});
    CHECK(stays(own, 0) == "1 2 5 6");
    CHECK(stays(own, 1) == "1 6");
    CHECK(stays(late(text, {0, seconds(580), 1})) == "1 2 4 5 6");
}

TEST_CASE("each lane keeps its own long rep", "[late]") {
    auto const text = exact("  main\n    200 !\n    lane 1: 400 !\n    lane 2: 2 x 50 !\n    50 !\n");
    auto const found = late(text, {0, seconds(1)});
    CHECK(stays(found, 0) == "1 2");
    CHECK(stays(found, 1) == "1");
    CHECK(found.lanes[0].end.high == seconds(600));
    CHECK(found.lanes[1].end.high == seconds(200));
}

TEST_CASE("a session without lane lines is timed for each lane that has a pace", "[late]") {
    auto const text = R"(swimmer "Ida" threshold 1:30 lane 2
pool 25m
threshold 1:40
session
  main
    lane 1: 100
    lane 2: 100
session
  main
    100 threshold
)";
    auto const read = support::read_plan(text);
    REQUIRE(read.error() == "");
    auto const found = tailor::late(read.plan(), {.session = 1, .left = seconds(600)});
    REQUIRE(found.lanes.size() == 2);
    CHECK(found.lanes[0].lane == 1);
    CHECK(found.lanes[0].end.high == seconds(103));
    CHECK(found.lanes[1].lane == 2);
    CHECK(found.lanes[1].end.high == Duration::ms(92'700));
}

TEST_CASE("a long rep too long is cut to whole laps", "[late]") {
    auto const cut = late(whole, {3, seconds(460)}).lanes[0].shorter;
    REQUIRE(cut);
    CHECK(cut->written == Distance::metres(400));
    CHECK(cut->rep == Distance::metres(350));
    CHECK(cut->end == seconds(450));
    CHECK(late(whole, {3, seconds(450)}).lanes[0].shorter->rep == Distance::metres(350));
    CHECK(late(whole, {3, seconds(449)}).lanes[0].shorter->rep == Distance::metres(300));
    CHECK(late(whole, {3, seconds(150)}).lanes[0].shorter->rep == Distance::metres(50));
    CHECK(late(whole, {3, seconds(149)}).lanes[0].shorter == std::nullopt);
    CHECK(late(whole, {3, seconds(500)}).lanes[0].shorter == std::nullopt);
}

TEST_CASE("of several reps, splits and holds nothing is cut", "[late]") {
    for (auto const* const line : {"2 x 400 !", "400 as 100 easy / 100 hard", "400 hold 6:40"}) {
        INFO(line);
        auto const found = late(exact(std::string{"  main\n    "} + line + "\n"), {0, seconds(60)});
        CHECK(found.lanes[0].end.high > seconds(60));
        CHECK(found.lanes[0].shorter == std::nullopt);
    }
}

TEST_CASE("what cannot be answered is said", "[late]") {
    CHECK(late(whole, {8, seconds(60)}).problem == Problem::no_such_row);
    CHECK(late(whole, {8, seconds(60)}).rows == 7);
    CHECK(late(whole, {7, seconds(60)}).problem == Problem::nothing_left);
    CHECK(late("session\n", {0, seconds(60)}).problem == Problem::nothing_left);

    auto const lanes = exact("  main\n    100 !\n    lane 1: 50 !\n");
    CHECK(late(lanes, {1, seconds(60), 2}).problem == Problem::nothing_left);
    CHECK(late(lanes, {1, seconds(60), 1}).problem == Problem::none);

    auto const unknown =
        late("pool 25m\nsession\n  main\n    100\n    50 at 2:00 per 100\n", {0, seconds(60)});
    CHECK(unknown.problem == Problem::no_pace);
    CHECK(late("pool 25m\nsession\n  main\n    100\n    50 at 2:00 per 100\n", {1, seconds(60)}).problem ==
          Problem::none);
}

TEST_CASE("the lanes of unknown pace are named", "[late]") {
    auto const text = "swimmer \"Ida\" threshold 1:30 per 100m lane 2\npool 25m\nsession\n  main\n"
                      "    lane 1: 100\n    lane 2: 100\n";
    auto const found = late(text, {0, seconds(60)});
    CHECK(found.problem == Problem::no_pace);
    REQUIRE(found.lanes.size() == 1);
    CHECK(found.lanes[0].lane == 1);
    CHECK(late(text, {0, seconds(60), 2}).problem == Problem::none);
}

TEST_CASE("only what is left is swum of the plan", "[late]") {
    auto const read = support::read_plan(whole);
    auto const left = tailor::left_to_swim(read.plan(), {.after = 5, .left = seconds(60)});
    std::vector<Distance> main;
    for (std::size_t section = 0; section < 3; ++section) {
        for (auto const& item : plan::items_from(left, left.sections[section].body)) {
            if (item.is_swum()) {
                CHECK(section == 2);
                main.push_back(item.distance());
            }
        }
    }
    CHECK(main == std::vector{Distance::metres(50), Distance::metres(50)});
}

TEST_CASE("a session of very many lines ends", "[late]") {
    std::string text = exact("  main\n");
    for (int i = 0; i < 20'000; ++i) {
        text += "    50 rest 10s\n";
    }
    auto const found = late(text, {0, Duration::hours(20)});
    CHECK(found.lanes[0].end.high <= Duration::hours(20));
    CHECK(found.lanes[0].end.high > Duration::hours(20) - seconds(65));
}
