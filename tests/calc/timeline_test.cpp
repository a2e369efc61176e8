#include "calc/timeline.hpp"
#include "support/plan_text.hpp"
#include "support/read_plan.hpp"

#include <catch2/catch.hpp>

#include <string>
#include <string_view>
#include <vector>

/// Slots, gaps, send-offs and pauses, rule by rule (docs/notation.md, "Time"). A hundred takes 100 s.
namespace lengthwise {
namespace {

using support::faults;
using support::read_plan;
using support::session_with;

constexpr std::string_view hundred_in_100s = "pool 25m\nthreshold 1:40\nfactor steady 100%\n";

/// A session of these lines in seconds: low, expected, high; all -1 where the time is unknown.
std::vector<double> band(std::string const& text, int lane = 0) {
    auto const read = read_plan(text);
    INFO(text);
    CHECK(read.error() == "");
    calc::Clock clock{read.plan()};
    auto const time = clock.session(0, lane).total();
    auto const seconds = [](Duration d) { return static_cast<double>(d.ms()) / 1000; };
    return time ? std::vector{seconds(time->low), seconds(time->expected), seconds(time->high)}
                : std::vector{-1., -1., -1.};
}

double expected(std::string const& text, int lane = 0) {
    return band(text, lane)[1];
}

std::string lines(std::string_view text, std::string_view head = hundred_in_100s) {
    return session_with(text, head);
}

/// When nothing follows, and up to the start of what follows.
std::vector<double> ends_and_followed(std::string const& text, std::string_view head = hundred_in_100s) {
    return {expected(lines(text, head)), expected(lines(text + "\n100", head)) - 100};
}

} // namespace

TEST_CASE("the table of sets and their times") {
    struct Row {
        std::string lines;
        std::vector<double> seconds; ///< at the session's end, and with a rep behind
    };
    std::vector<Row> const table{
        {"4 x 100 rest 20s", {460, 480}},
        {"3 x (100 rest 20s + 50 rest 10s) rest 1min", {630, 690}},
        {"2 x (2 x (100 rest 10s + 50 rest 10s) rest 30s) rest 1min", {760, 820}},
        {"4 x 100 on 2:00", {460, 480}},
        {"3 x (2 x 50 on 1:00) rest 1min", {470, 540}},
        {"3 x (100 rest 10s + 50) on 4:00", {640, 720}},
        {"4 x 100 on 1:30", {400, 400}},
        {"3 x 100 on 2:00, 1:55, 1:50", {335, 345}},
        {"2 x (3 x (100 rest 5s + 50) on 3:00) rest 2min",
         {540 + 120 + 2 * 180 + 155, 540 + 120 + 540 + 120}},
    };
    for (auto const& row : table) {
        INFO(row.lines);
        CHECK(ends_and_followed(row.lines) == row.seconds);
    }
    CHECK(ends_and_followed("4 x 50\npause 2min\n2 x 100 rest 30s",
                            "pool 25m\nthreshold 1:40\nfactor steady 100%\nrest 20s\n") ==
          std::vector<double>{610, 640});
    CHECK(faults(lines("5 x 100 on 2:00, 1:55")).size() == 1);
}

TEST_CASE("a rep counts its send-off where that is longer, but for the session's last") {
    CHECK(ends_and_followed("100 on 2:00") == std::vector<double>{100, 120});
    CHECK(ends_and_followed("100 on 1:30") == std::vector<double>{100, 100});
    CHECK(ends_and_followed("2 x 100 on 1:50, 3:00") == std::vector<double>{210, 290});
    CHECK(ends_and_followed("100, 200, 100 on 2:00, 3:00, 4:00") == std::vector<double>{420, 560});
    CHECK(ends_and_followed("100, 200, 100 on 2:30") == std::vector<double>{450, 500}); // 150, 200, 150
}

TEST_CASE("breaks are over before the send-off") {
    CHECK(ends_and_followed("100 broken at 50 for 10s on 2:00") == std::vector<double>{110, 120});
    CHECK(ends_and_followed("100 broken at 25 for 10s on 2:00") == std::vector<double>{130, 130});
    CHECK(ends_and_followed("1min broken at 20s for 5s on 1:30") == std::vector<double>{70, 90});
}

TEST_CASE("of a range of rest the midpoint is expected, rounded down") {
    auto const rests = [](std::string const& rest) { return band(lines("2 x 100 hold 1:40 " + rest)); };
    CHECK(rests("rest 20-40s") == std::vector<double>{220, 230, 240});
    CHECK(rests("rest 0:20-0:20.001") == std::vector<double>{220, 220, 220.001});
    CHECK(rests("rest as needed") == std::vector<double>{210, 235, 260});
    CHECK(rests("rest 3 breaths") == std::vector<double>{206, 209, 212});
}

TEST_CASE("the outermost group whose round ends decides the gap, if it has one of its own") {
    // Two groups end together: the outer's rest, the inner's where the outer is silent, else the rep's.
    CHECK(expected(lines("2 x (2 x (50 rest 1s) rest 10s) rest 1min")) == 4 * 50 + 10 + 60 + 10);
    CHECK(expected(lines("2 x (2 x (50 rest 1s) rest 10s)")) == 4 * 50 + 10 + 10 + 10);
    CHECK(expected(lines("2 x (2 x (50 rest 1s))")) == 4 * 50 + 3);
    CHECK(expected(lines("2 x (2 x (50 rest 1s) rest 0s)")) == 4 * 50);
    // Only the outer round ends with the inner's last.
    CHECK(expected(lines("2 x (2 x 50 rest 1s + 50 rest 2s) rest 10s")) == 6 * 50 + 2 * (1 + 1) + 10);
    CHECK(expected(lines("2 x (50 on 1:10 + 50) rest as needed")) == 2 * (70 + 50) + 35);
}

TEST_CASE("a group's last round leaves its rest too") {
    CHECK(ends_and_followed("2 x 50 rest 20s") == std::vector<double>{120, 140});
    CHECK(ends_and_followed("2 x (50 rest 20s) rest 1min") == std::vector<double>{160, 220});
}

TEST_CASE("a send-off of a group holds up its rounds, and nothing comes between") {
    CHECK(ends_and_followed("2 x (50 rest 20s) on 2:00") == std::vector<double>{120 + 50, 240});
    CHECK(ends_and_followed("2 x (2 x 50 rest 20s) on 1:30") == std::vector<double>{240, 240}); // 120 each
    CHECK(ends_and_followed("2 x (2 x (50 rest 5s) on 1:00) on 3:00") == std::vector<double>{180 + 110, 360});
    CHECK(ends_and_followed("2 x (2 x (50 rest 5s) on 1:40) on 3:00") == std::vector<double>{200 + 150, 400});
    CHECK(ends_and_followed("3 x (50 rest 20s) on 2:00, 1:30, 1:00") == std::vector<double>{260, 270});
    CHECK(ends_and_followed("2 x (50 on 2:00) on 1:00") == std::vector<double>{170, 240});
}

TEST_CASE("sets are groups") {
    std::string const head =
        std::string{hundred_in_100s} + "set \"A\" = 2 x 50 rest 10s\nset \"B\" = 2 x use \"A\" rest 20s\n";
    CHECK(ends_and_followed("use \"A\"", head) == std::vector<double>{110, 120});
    CHECK(ends_and_followed("3 x use \"B\" rest 1min", head) ==
          std::vector<double>{3 * (110 + 20 + 110) + 2 * 60, 3 * (110 + 20 + 110) + 3 * 60});
    CHECK(ends_and_followed("2 x use \"A\" on 3:00", head) == std::vector<double>{290, 360});
}

TEST_CASE("chosen reps and rounds take their own time, wherever they stand") {
    CHECK(ends_and_followed("4 x 50 rest 10s, odds hold 1:00") == std::vector<double>{220 + 30, 220 + 40});
    CHECK(ends_and_followed("4 x 50 on 1:10, last hold 1:30") ==
          std::vector<double>{3 * 70 + 90, 3 * 70 + 90});
    CHECK(ends_and_followed("4 x 50 on 1:10, last hold 1:05") == std::vector<double>{3 * 70 + 65, 4 * 70});
    CHECK(ends_and_followed("4 x 50 on 1:00, 1:10, 1:20, 1:30, first 2 hold 1:15") ==
          std::vector<double>{75 + 75 + 80 + 50, 75 + 75 + 80 + 90});
    CHECK(ends_and_followed("100, 50 rest 10s, last hold 0:40") == std::vector<double>{150, 160});
    CHECK(ends_and_followed("3 x (50 rest 5s + 50) on 2:00, last sprint") ==
          std::vector<double>{240 + 2 * 42.5 + 5, 360});
}

TEST_CASE("pauses take the place of the gap, and add up") {
    CHECK(expected(lines("100 rest 1min\npause 10s\n100")) == 210);
    CHECK(expected(lines("100 rest 1min\npause 10s\n\"look\"\npause 20s\n100")) == 230);
    CHECK(expected(lines("100 rest 1min\npause 0s\n100")) == 200);
    CHECK(expected(lines("100 on 2:00\npause 10s\n100")) == 230);
    CHECK(expected(lines("2 x (100 rest 5s) rest 1min\npause 10s\n100")) == 370);
}

TEST_CASE("pauses before the first rep and behind the last count nothing") {
    CHECK(expected(lines("pause 1min\n100\npause 2min")) == 100);
    CHECK(expected(lines("pause 1min")) == 0);
}

TEST_CASE("a session of nothing takes no time") {
    CHECK(band(lines("\"nobody swims\"")) == std::vector<double>{0, 0, 0});
}

TEST_CASE("optional lines are skipped, and timed as if they were the session") {
    auto const read = read_plan("pool 25m\nthreshold 1:40\nfactor steady 100%\nsession\nmain\n100 rest 1min\n"
                                "if time: 50 rest 7s\npause 10s\nif time: 50 on 2:00\n"
                                "cool-down\n100\nif time: 50 rest 3s\n");
    REQUIRE(read.error() == "");
    calc::Clock clock{read.plan()};
    auto const sections = clock.sections(0, 0);
    REQUIRE(sections.size() == 2);
    CHECK(clock.session(0, 0).time.expected == Duration::seconds(210));
    CHECK(sections[0].if_time.time.expected == Duration::seconds(50 + 7 + 120));
    CHECK(sections[1].if_time.time.expected == Duration::seconds(50));
}

TEST_CASE("a gap belongs to the section of the rep before it, pauses included") {
    auto const read =
        read_plan("pool 25m\nthreshold 1:40\nfactor steady 100%\nsession\nwarm-up\n2 x 50 rest 10s\n"
                  "drill\n50 on 1:30\nmain\npause 5s\n100 rest 7s\npause 20s\ncool-down\n50 rest 1min\n");
    REQUIRE(read.error() == "");
    std::vector<std::int64_t> seconds;
    for (auto const& section : calc::Clock{read.plan()}.sections(0, 0)) {
        seconds.push_back(section.swum.time.expected.ms() / 1000);
    }
    CHECK(seconds == std::vector<std::int64_t>{50 + 10 + 50 + 10, 90 + 5, 100 + 20, 50});
}

TEST_CASE("each lane has its own neighbours, and pauses for all") {
    std::string const text =
        lines("100 rest 10s\nlane 1: 50 rest 20s\npause 30s\nlane 2: 2 x 50 rest 5s\npause 1min\n100");
    CHECK(expected(text, 1) == 100 + 10 + 50 + 90 + 100);
    CHECK(expected(text, 2) == 100 + 30 + 105 + 60 + 100);
    CHECK(expected(text, 0) == 100 + 90 + 100);
}

TEST_CASE("lines say when they start, end, and let the next one go") {
    auto const read = read_plan(
        lines("4 x 50 rest 10s\npause 1min\nlane 2: 100\nif time: 25\n2 x 100 on 2:00\n50 rest 5s"));
    REQUIRE(read.error() == "");
    std::vector<std::vector<std::int64_t>> rows;
    for (auto const& line : calc::Clock{read.plan()}.lines(0, 1)) {
        REQUIRE(line.start);
        rows.push_back({line.start->expected.ms() / 1000, line.end->expected.ms() / 1000,
                        line.leave->expected.ms() / 1000});
    }
    CHECK(rows == std::vector<std::vector<std::int64_t>>{{0, 230, 290}, {290, 530, 530}, {530, 580, 580}});
}

TEST_CASE("one unknown time makes the totals around it unknown, and only those") {
    auto const read = read_plan("pool 25m\nsession\nwarm-up\n100 hold 1:40 rest 10s\nmain\n50 at 1:40 per "
                                "100\n4 x 50\n50 hold 1:00\n");
    REQUIRE(read.error() == "");
    auto const& plan = read.plan();
    calc::Clock clock{plan};
    auto const sections = clock.sections(0, 0);
    CHECK(sections[0].swum.total()->high == Duration::seconds(110));
    CHECK_FALSE(sections[1].swum.total());
    auto const session = clock.session(0, 0);
    CHECK_FALSE(session.total());
    CHECK_FALSE(session.resting());
    REQUIRE(session.untimed != plan::no_index);
    CHECK(plan.items[session.untimed].count == 4);
    CHECK_FALSE(clock.week(plan.weeks.front(), 0).known());
    auto const rows = clock.lines(0, 0);
    REQUIRE(rows.size() == 4);
    CHECK(rows[2].start->low == Duration::seconds(160));
    CHECK_FALSE(rows[2].end);
    CHECK_FALSE(rows[3].start);
}

TEST_CASE("timed reps go a distance that is known only with a pace") {
    auto const estimate = [](std::string_view head) {
        auto const read = read_plan(session_with("2 x (3 x 2min easy rest 10s + 1min tread)", head));
        CHECK(read.error() == "");
        return calc::Clock{read.plan()}.session(0, 0);
    };
    CHECK(estimate(hundred_in_100s).distance() == Distance::metres(600)); // 104.3 m each, so 100
    CHECK_FALSE(estimate("pool 25m\n").distance());
    CHECK(estimate("pool 25m\n").total()->expected == Duration::seconds(2 * (3 * 130 + 60)));
}

TEST_CASE("what is not swimming is rest") {
    auto const read = read_plan(lines("3 x 100 broken at 50 for 10s on 2:30\npause 1min\n2min tread"));
    REQUIRE(read.error() == "");
    auto const times = calc::Clock{read.plan()}.session(0, 0);
    CHECK(times.total()->expected == Duration::seconds(3 * 150 + 60 + 120));
    CHECK(times.swum()->expected == Duration::seconds(3 * 100 + 120));
    CHECK(times.resting()->expected == Duration::seconds(3 * 50 + 60));
}

TEST_CASE("weeks and plans add up their sessions, a lane at its own pace") {
    auto const read =
        read_plan("pool 25m\nthreshold 1:40\nfactor steady 100%\nswimmer \"Runa\" threshold 3:20 lane 2\n"
                  "week 1\nsession\nmain\nlane 1: 100\nlane 2: 50\nweek 2\nsession\nmain\n100\n");
    REQUIRE(read.error() == "");
    auto const& plan = read.plan();
    calc::Clock clock{plan};
    CHECK(clock.week(plan.weeks[0], 1).time.expected == Duration::seconds(100));
    CHECK(clock.whole_plan(1).time.expected == Duration::seconds(200));
    CHECK(clock.whole_plan(2).time.expected == Duration::seconds(100 + 200)); // unnamed in week 2
    CHECK(clock.session(1, 0).time.expected == Duration::seconds(100));
}

TEST_CASE("a session is timed with its own threshold, pool and factors, sets too") {
    auto const read =
        read_plan("pool 25m\nthreshold 1:40\nset \"A\" = 2 x 100m threshold\n"
                  "session\nmain\nuse \"A\"\nsession\nthreshold 2:00\nmain\nuse \"A\"\n"
                  "session\npool 50m\nmain\nuse \"A\"\nsession\nfactor threshold 110%\nmain\nuse \"A\"\n");
    REQUIRE(read.error() == "");
    calc::Clock clock{read.plan()};
    std::vector<std::int64_t> ms;
    for (plan::Index i = 0; i < 4; ++i) {
        ms.push_back(clock.session(i, 0).time.expected.ms());
    }
    CHECK(ms == std::vector<std::int64_t>{200000, 240000, 204166, 220000});
}

TEST_CASE("repeats of any size cost no time to time") {
    std::string text = "50 rest 10s";
    for (int depth = 0; depth < 2; ++depth) {
        text = "9999 x (" + text + ")";
    }
    auto const read = read_plan(lines("9 x (" + text + ")"));
    CHECK(read.error() == "with this line the session's distance comes to 44991001 km; 1000 km are read");
    auto const timed = read_plan(lines("9 x (9999 x (100 x 0:01.001 rest 0s))"));
    REQUIRE(timed.error() == "");
    CHECK(calc::Clock{timed.plan()}.session(0, 0).time.high == Duration::ms(9LL * 9999 * 100 * 1001));
}

TEST_CASE("a session that takes longer than any is found at the line that passes the limit") {
    auto const item_at_limit = [](std::string const& text) -> std::string {
        auto const read = read_plan(text);
        CHECK(read.error() == "");
        auto const at = calc::Clock{read.plan()}.passes_limit(0);
        return at ? std::string{read.bundle->root().source.slice(read.plan().items[*at].span)} : "";
    };
    // 1000 km at 35 s for a metre are 9722 h.
    std::string const head = "pool 25m\nthreshold 0:35 per 1m\nfactor steady 100%\nsession\nmain\n";
    CHECK(item_at_limit(head + "100 x 10000\n").empty());
    CHECK(item_at_limit(head + "90 x 10000\n10 x 10000 rest 1h\n").empty());
    CHECK(item_at_limit(head + "60 x 10000 rest 12h\n40 x 10000\n") == "40 x 10000");
    // Whatever lane it is.
    CHECK(item_at_limit("swimmer \"Old Tam\" threshold 0:40 per 1m lane 3\n" + head +
                        "lane 3: 95 x 10000\n") == "95 x 10000");
    CHECK(item_at_limit("swimmer \"Old Tam\" threshold 0:40 per 1m lane 3\n" + head + "lane 2: 95 x 10000\n")
              .empty());
    // What timed reps are thought to go is limited as the distances are.
    CHECK(item_at_limit("pool 25m\nthreshold 1s per 1000m\nsession\nmain\n10min\n1h\n") == "1h");
}

} // namespace lengthwise
