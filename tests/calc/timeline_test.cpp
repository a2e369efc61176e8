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
        {"2 x (3 x (100 rest 5s + 50) on 3:00) rest 2min", {540 + 120 + 2 * 180 + 155, 540 + 120 + 540 + 120}},
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

} // namespace lengthwise
