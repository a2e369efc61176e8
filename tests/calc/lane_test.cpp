#include "calc/lane.hpp"
#include "calc/lane_hand.hpp"
#include "calc/lane_swimmers.hpp"
#include "support/plan_text.hpp"
#include "support/read_plan.hpp"

#include <catch2/catch.hpp>

#include <algorithm>
#include <cmath>
#include <numeric>
#include <optional>
#include <random>
#include <string>
#include <vector>

/// Swimmers one behind the other: formulas against swims that are followed length by length.
namespace lengthwise {
namespace {

using calc::Exact;
using calc::LaneSwim;
using support::read_plan;
using support::session_with;

/// Seconds for 100 m over a rep.
LaneSwim swims(std::int64_t seconds, std::int64_t metres) {
    return {Exact{seconds * 1000, Distance::metres(100).units()}, Distance::metres(metres)};
}

Exact metres(std::int64_t numerator, std::int64_t denominator = 1) {
    return Exact{numerator * Distance::per_metre, denominator};
}

constexpr Distance m25 = Distance::metres(25);
constexpr Duration five = Duration::seconds(5);

std::vector<double> lapped_at(LaneSwim const& ahead, LaneSwim const& behind, Duration gap, Distance pool) {
    std::vector<double> at;
    auto const laps = calc::laps(ahead, behind, gap, pool);
    for (std::int64_t i = 0; laps && i < laps->times; ++i) {
        at.push_back(laps->at(i).approximate() / Distance::per_metre);
    }
    return at;
}

using Numbers = std::vector<double>;

} // namespace

TEST_CASE("lane: a slow one ahead is caught") {
    // 1:40 behind 2:10: 0.3 s a metre, and 5 s between them.
    auto const caught = calc::caught_after(swims(130, 400), swims(100, 400), five);
    REQUIRE(caught);
    CHECK(*caught == metres(50, 3));
    CHECK_FALSE(calc::caught_after(swims(100, 400), swims(130, 400), five));
    CHECK_FALSE(calc::caught_after(swims(100, 400), swims(100, 400), five));
    CHECK_FALSE(calc::caught_after(swims(130, 16), swims(100, 400), five));
    CHECK(calc::caught_after(swims(130, 17), swims(100, 400), five));
    // Right at the end is not caught: they touch together.
    CHECK_FALSE(calc::caught_after(swims(105, 100), swims(100, 100), five));
}

TEST_CASE("lane: a fast one ahead laps") {
    auto const laps = calc::laps(swims(100, 700), swims(130, 700), five, m25);
    REQUIRE(laps);
    CHECK(laps->times == 3);
    CHECK(laps->at(0) == metres(200));
    CHECK(laps->at(1) == metres(1250, 3));
    CHECK(laps->at(2) == metres(1900, 3));
    CHECK_FALSE(calc::laps(swims(130, 700), swims(100, 700), five, m25));
    CHECK_FALSE(calc::laps(swims(100, 700), swims(100, 700), five, m25));
}

TEST_CASE("lane: nobody is lapped at the end of the rep or behind it") {
    CHECK(lapped_at(swims(100, 200), swims(130, 200), five, m25).empty());
    CHECK(lapped_at(swims(100, 201), swims(130, 201), five, m25) == Numbers{200});
    // The slower one's rep is over at 140 m; he is lapped at his own 150.
    CHECK(lapped_at(swims(100, 400), swims(130, 140), five, m25).empty());
    CHECK(lapped_at(swims(100, 400), swims(130, 160), five, m25) == Numbers{200});
}

TEST_CASE("lane: one who has not left yet is not lapped") {
    // The first is back after 25 s, long before the second leaves; they meet first on his second lap.
    auto const at = lapped_at(swims(50, 500), swims(200, 500), Duration::seconds(30), m25);
    REQUIRE_FALSE(at.empty());
    CHECK(at.front() == Approx(100 + (50. - 30) / 1.5)); // m = 2: x = (2 * 50 * 0.5 - 30) / 1.5
}

TEST_CASE("lane: who leaves together is not lapped at once") {
    // 1:00 and 1:30: every 90 s the faster one has swum 150 m, 50 more than the other: there and back. He is
    // through with his 400 after 240 s, before the third time.
    CHECK(lapped_at(swims(60, 400), swims(90, 400), Duration{}, m25) == Numbers{150, 300});
}

TEST_CASE("lane: formulas against swims followed tenth by tenth of a second") {
    std::mt19937 random{7};
    auto const draw = [&](int low, int high) {
        return low + static_cast<int>(random() % static_cast<unsigned>(high - low + 1));
    };
    int alike = 0;
    int lapped = 0;
    for (int i = 0; i < 400; ++i) {
        double const a = draw(60, 180) / 100.;
        double const b = draw(60, 240) / 100.;
        int const rep = draw(4, 60) * 25;
        int const gap = draw(1, 40);
        double const lap = 50;
        auto const found =
            lapped_at({Exact{std::int64_t(a * 1000 + 0.5), Distance::per_metre}, Distance::metres(rep)},
                      {Exact{std::int64_t(b * 1000 + 0.5), Distance::per_metre}, Distance::metres(rep)},
                      Duration::seconds(gap), m25);
        // Where the one is a whole number of laps before the other, on his way.
        std::vector<double> met;
        double before = 0;
        for (int tenth = gap * 10; tenth <= int(rep * std::max(a, b) * 10) + gap * 10; ++tenth) {
            auto const time = tenth / 10.;
            auto const first = time / a;
            auto const second = (time - gap) / b;
            if (first >= rep || second >= rep) {
                break;
            }
            auto const ahead = (first - second) / lap;
            if (tenth > gap * 10 && std::floor(ahead) > std::floor(before)) {
                met.push_back(first);
            }
            before = ahead;
        }
        INFO(a << " " << b << " " << rep << " " << gap);
        // One step may hide the last before an end, or the first at the start.
        auto const more = std::max(found.size(), met.size()) - std::min(found.size(), met.size());
        REQUIRE(more <= 1);
        alike += more == 0 ? 1 : 0;
        lapped += met.empty() ? 0 : 1;
        for (std::size_t k = 0; k < std::min(found.size(), met.size()) && found.size() == met.size(); ++k) {
            REQUIRE(met[k] == Approx(found[k]).margin(0.4));
        }
    }
    CHECK(alike >= 390);
    CHECK(lapped >= 100);
}

TEST_CASE("lane: when the leader is back") {
    CHECK(calc::lap_time(swims(100, 400).pace, m25) == Duration::seconds(50));
    CHECK(calc::lap_time(swims(100, 400).pace, Distance::metres(50)) == Duration::seconds(100));
}

TEST_CASE("lane: its swimmers, fastest first") {
    auto const read = read_plan("pool 25m\nswimmer \"A\" threshold 2:00 lane 1\n"
                                "swimmer \"B\" threshold 1:50 lane 1\nswimmer \"C\" lane 1\n"
                                "swimmer \"D\" threshold 1:40 lane 2\nswimmer \"E\" threshold 2:00 lane 1\n"
                                "swimmer \"F\" threshold 1:51 per 100m in 50m lane 1\n"
                                "session\nmain\nlane 1: 50\nlane 2: 50\n");
    REQUIRE(read.error() == "");
    // 1:51 in 50 m are 1:48.7 in 25 m.
    CHECK(calc::lane_order(read.plan(), 1, Pool::of(m25, Unit::metre)) ==
          std::vector<plan::Index>{5, 1, 0, 4});
    CHECK(calc::lane_order(read.plan(), 3, Pool::of(m25, Unit::metre)).empty());
}

TEST_CASE("lane: reps of a line, however deep, and none that are timed or broken") {
    auto const distances = [](std::string const& lines, std::string const& head = "") {
        auto const read = read_plan(head + session_with(lines));
        INFO(lines);
        CHECK(read.error() == "");
        std::vector<std::int64_t> found;
        auto const line = read.plan().sections.front().body;
        for (auto const& rep : calc::lane_reps_of_line(read.plan(), line)) {
            found.push_back(rep.distance.units() / Distance::per_metre);
        }
        return found;
    };
    using Found = std::vector<std::int64_t>;
    CHECK(distances("4 x 100") == Found{100});
    CHECK(distances("4 x 100, odds hard, evens easy") == Found{100, 100});
    CHECK(distances("100, 200, 200, 100") == Found{100, 200, 100});
    CHECK(distances("10min").empty());
    CHECK(distances("750 broken at 250 for 15s").empty());
    CHECK(distances("2 x (400 + 2 x (50 + 3min))") == Found{400, 50});
    CHECK(distances("2 x use \"A\"", "set \"A\" = (300 + 100)\n") == Found{300, 100});
    CHECK(distances("pause 1min").empty());
}

TEST_CASE("lane: a swimmer's pace is his own, over his share") {
    auto const read = read_plan("pool 25m\nswimmer \"A\" threshold 2:00 lane 1 distance 80%\n"
                                "session\nmain\n400 easy\n400 at 1:30 per 100\n");
    REQUIRE(read.error() == "");
    auto const& plan = read.plan();
    calc::Clock clock{plan};
    auto const& around = clock.pacing(0, 0);
    auto const line = plan.sections.front().body;
    auto const swim = calc::swim_of(plan, around, plan.swimmers[0], calc::lane_reps(plan, line).front());
    REQUIRE(swim);
    CHECK(swim->pace == Exact{138'000, Distance::metres(100).units()}); // 115 % of 2:00
    CHECK(swim->distance == Distance::metres(320));
    auto const exact =
        calc::swim_of(plan, around, plan.swimmers[0], calc::lane_reps(plan, plan.after(line)).front());
    REQUIRE(exact);
    CHECK(exact->pace == Exact{90'000, Distance::metres(100).units()});
}

TEST_CASE("hand: marks come round after 60/gcd(60, S mod 60) starts") {
    for (int step = 1; step <= 200; ++step) {
        auto const hand = calc::hand_at_starts({Duration::seconds(step)}, 1000);
        REQUIRE(hand);
        CHECK_FALSE(hand->more);
        REQUIRE(hand->marks.size() == static_cast<std::size_t>(60 / std::gcd(60, step % 60)));
        for (int start = 0; start < 120; ++start) {
            REQUIRE(hand->marks[static_cast<std::size_t>(start) % hand->marks.size()] == start * step % 60);
        }
    }
}

TEST_CASE("hand: who leaves later has the same marks later") {
    auto const marks = [](int gap) {
        return calc::hand_at_starts({Duration::seconds(105)}, 8, Duration::seconds(gap))->marks;
    };
    CHECK(marks(0) == std::vector{0, 45, 30, 15});
    CHECK(marks(5) == std::vector{5, 50, 35, 20});
    CHECK(marks(50) == std::vector{50, 35, 20, 5});
}

TEST_CASE("hand: one step for each start, and no fractions") {
    auto const s = [](int seconds) { return Duration::seconds(seconds); };
    CHECK(calc::hand_at_starts({s(120), s(115), s(110)}, 3)->marks == std::vector{0, 0, 55});
    CHECK_FALSE(calc::hand_at_starts({Duration::ms(90'500)}, 2));
    CHECK(calc::hand_at_starts({Duration::ms(90'500)}, 1)->marks == std::vector{0});
    CHECK_FALSE(calc::hand_at_starts({s(90)}, 2, Duration::ms(500)));
    std::vector<Duration> const many(100, s(61));
    CHECK(calc::hand_at_starts(many, 100)->more);
    CHECK(calc::hand_at_starts(many, 61)->more);
    CHECK_FALSE(calc::hand_at_starts(many, 60)->more); // all of them are told
    CHECK(calc::hand_at_starts(many, 60)->marks.size() == 60);
    CHECK_FALSE(calc::hand_at_starts({s(61)}, 100)->more);
}

} // namespace lengthwise
