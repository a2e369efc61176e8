#include "calc/threshold.hpp"

#include "plan/spell.hpp"
#include "support/swims.hpp"

#include <catch2/catch.hpp>

#include <string>

/// From swims to a threshold, and what is doubted about them. Figures are worked by hand from the
/// formulas of docs/threshold.md.
namespace lengthwise::calc {
namespace {

using Kind = Remark::Kind;
using support::Timed;
using support::trials;

constexpr double minute = 60;

Verdict judged(std::vector<Timed> const& swims, Pool const& course = {}) {
    return judge(trials(swims, course));
}

std::string line(Trials const& trials) {
    return plan::spell_line(as_setting(trials, judge(trials)));
}

/// The remarks of a kind.
std::vector<Remark> found(Verdict const& verdict, Kind kind) {
    std::vector<Remark> found;
    for (auto const& remark : verdict.remarks) {
        if (remark.kind == kind) {
            found.push_back(remark);
        }
    }
    return found;
}

bool says(std::vector<Timed> const& swims, Kind kind) {
    return !found(judged(swims), kind).empty();
}

// --- figures ---

TEST_CASE("two swims are a line") {
    auto const swims = trials({{200, 212}, {400, 442}});
    auto const verdict = judge(swims);
    REQUIRE(verdict.threshold);
    auto const& threshold = *verdict.threshold;
    CHECK(threshold.speed == Exact{20, 23});
    CHECK(threshold.pace == 115);
    CHECK(threshold.reserve == Exact{360, 23}); // 15.652 m
    CHECK_FALSE(threshold.bound);
    CHECK_FALSE(threshold.errors);
    CHECK_FALSE(threshold.pace_error());
    CHECK(line(swims) == "threshold 1:55 per 100m");
    auto const [low, high] = threshold.over_half_an_hour();
    CHECK(low == Exact{11868, 100});    // 1:59
    CHECK(high == Exact{124775, 1000}); // 2:05
}

TEST_CASE("three swims are the best line, with residuals and standard errors") {
    auto const swims = trials({{200, 152}, {400, 322}, {800, 668}});
    auto const verdict = judge(swims);
    REQUIRE(verdict.threshold);
    auto const& threshold = *verdict.threshold;
    CHECK(threshold.speed == Exact{60250, 51859});
    CHECK(threshold.reserve == Exact{1265700, 51859});
    CHECK(threshold.pace.approximate() == Approx(86.0730290456).epsilon(1e-10));
    CHECK(verdict.swims[0].residual->approximate() == Approx(-1.00).margin(0.005));
    CHECK(verdict.swims[1].residual->approximate() == Approx(1.49).margin(0.005));
    CHECK(verdict.swims[2].residual->approximate() == Approx(-0.49).margin(0.005));
    REQUIRE(threshold.errors);
    CHECK(threshold.errors->slope == Approx(0.005010).margin(5e-7));
    CHECK(threshold.errors->intercept == Approx(2.190).margin(5e-4));
    CHECK(*threshold.pace_error() == Approx(0.37).margin(0.005));
    CHECK(line(swims) == "threshold 1:26 per 100m reserve 24m");
}

TEST_CASE("swims of two pools are turned into one") {
    // 500 s * (24/25) / (49/50) = 489.796 s; 200 / 251.796 s.
    auto const swims =
        trials({{200, 238, support::metres_25}, {400, 500, support::metres_50}}, support::metres_25);
    auto const verdict = judge(swims);
    REQUIRE(verdict.threshold);
    CHECK(verdict.threshold->speed == Exact{200} / (Exact{500} * Exact{24 * 50, 25 * 49} - 238));
    CHECK(verdict.threshold->pace.approximate() == Approx(125.898).margin(5e-4));
    CHECK(verdict.threshold->reserve.approximate() == Approx(10.958).margin(5e-4));
    CHECK(line(swims) == "threshold 2:06 per 100m in 25m");
}

TEST_CASE("yards give a pace per 100 yards and a reserve in metres") {
    auto const swims = trials({{182.88, 160}, {457.2, 430}}, support::yards_25);
    auto const verdict = judge(swims);
    REQUIRE(verdict.threshold);
    CHECK(verdict.threshold->pace == 90);
    CHECK(verdict.threshold->reserve.approximate() == Approx(20.32).margin(1e-9));
    CHECK(line(swims) == "threshold 1:30 per 100yd in 25yd");
}

TEST_CASE("the course is the one that is asked for, else the first that is said") {
    std::vector<Swim> swims(2);
    CHECK(reference_course(swims, {}) == Pool{});
    swims[1].course = support::metres_50;
    CHECK(reference_course(swims, {}) == support::metres_50);
    CHECK(reference_course(swims, support::yards_25) == support::yards_25);
    swims[0].course = Pool::open_water();
    CHECK(reference_course(swims, {}) == Pool::open_water());
}

TEST_CASE("the unit is the course's, without one that of the swims") {
    std::vector<Swim> swims(2);
    CHECK(pace_unit(swims, {}) == Unit::metre);
    CHECK(pace_unit(swims, support::yards_25) == Unit::yard);
    swims[0].unit = Unit::yard;
    CHECK(pace_unit(swims, {}) == Unit::metre);
    swims[1].unit = Unit::yard;
    CHECK(pace_unit(swims, {}) == Unit::yard);
    CHECK(pace_unit(swims, support::metres_50) == Unit::metre);
}

TEST_CASE("a pace is rounded half up") {
    CHECK(line(trials({{200, 212}, {400, 443}})) == "threshold 1:56 per 100m");     // 115.5
    CHECK(line(trials({{200, 212}, {400, 442.998}})) == "threshold 1:55 per 100m"); // 115.499
}

TEST_CASE("the course stands in the line, open water too") {
    CHECK(line(trials({{200, 212}, {400, 442}}, Pool::open_water())) ==
          "threshold 1:55 per 100m in open water");
    CHECK(line(trials({{200, 212}, {400, 442}}, Pool::of(Distance::units(1'000'000), Unit::metre))) ==
          "threshold 1:55 per 100m in 33 1/3 m");
}

TEST_CASE("the reserve stands in the line from three swims and 6 to 44 m") {
    // CS 1 m/s; D' is what the first swim is ahead of its time.
    auto const with = [](double reserve) {
        return line(trials({{180 + reserve, 180}, {360 + reserve, 360}, {540 + reserve, 540}}));
    };
    CHECK(with(5.99) == "threshold 1:40 per 100m");
    CHECK(with(6) == "threshold 1:40 per 100m reserve 6m");
    CHECK(with(24.5) == "threshold 1:40 per 100m reserve 25m");
    CHECK(with(44) == "threshold 1:40 per 100m reserve 44m");
    CHECK(with(44.01) == "threshold 1:40 per 100m");
    CHECK(line(trials({{204, 180}, {564, 540}})) == "threshold 1:40 per 100m");
}

// --- one swim ---

TEST_CASE("one swim is a bound, rounded up") {
    CHECK(line(trials({{1000, 35 * minute}})) == "threshold about 3:30 per 100m");
    CHECK(line(trials({{1000, 22.5 * minute}})) == "threshold about 2:15 per 100m");
    CHECK(line(trials({{400, 500}})) == "threshold about 2:17 per 100m"); // 500 s over 365 m
    CHECK(line(trials({{1000, 35 * minute + 0.01}})) == "threshold about 3:31 per 100m");
    auto const verdict = judged({{400, 500}});
    REQUIRE(verdict.threshold);
    CHECK(verdict.threshold->bound);
    CHECK(verdict.swims[0].used);
    CHECK_FALSE(verdict.swims[0].residual);
}

TEST_CASE("from 20 min on the bound is the mean pace") {
    CHECK(judged({{1000, 20 * minute}}).threshold->pace == 120);
    CHECK(judged({{1000, 20 * minute - 0.001}}).threshold->pace == Exact{1199999, 9650});
}

TEST_CASE("a bound takes 2 min and 100 m") {
    CHECK(judged({{100, 2 * minute}}).threshold);
    CHECK_FALSE(judged({{100, 2 * minute - 0.001}}).threshold);
    CHECK(says({{100, 2 * minute - 0.001}}, Kind::no_bound));
    CHECK_FALSE(judged({{99.99, 25 * minute}}).threshold);
}

TEST_CASE("several swims of one distance are one swim, the fastest") {
    auto const verdict = judged({{400, 510}, {400, 500}, {400, 505}});
    REQUIRE(verdict.threshold);
    CHECK(verdict.threshold->bound);
    CHECK(verdict.threshold->pace == Exact{50000, 365});
    CHECK_FALSE(verdict.swims[0].used);
    CHECK(verdict.swims[1].used);
    auto const unused = found(verdict, Kind::unused);
    REQUIRE(unused.size() == 2);
    CHECK(unused[0].swim == 2);
    CHECK(unused[0].other == 1);
    CHECK(unused[1].swim == 0);
}

TEST_CASE("the fastest is found in one course") {
    // 6:00 in 50 m is 5:52.7 in 25 m.
    auto const verdict = judged({{400, 355, support::metres_25}, {400, 360, support::metres_50}, {200, 170}},
                                support::metres_25);
    CHECK_FALSE(verdict.swims[0].used);
    CHECK(verdict.swims[1].used);
}

TEST_CASE("swims with stops give a bound at most") {
    auto swims = trials({{400, 500}});
    swims.stops = true;
    CHECK(judge(swims).threshold->bound);
    swims = trials({{200, 212}, {400, 442}});
    swims.stops = true;
    auto const verdict = judge(swims);
    CHECK_FALSE(verdict.threshold);
    CHECK(found(verdict, Kind::stops).size() == 1);
}

TEST_CASE("one swim predicts nothing, and says so when asked") {
    auto swims = trials({{400, 500}});
    CHECK(found(judge(swims), Kind::not_from_one).empty());
    swims.asked = {Distance::metres(750)};
    CHECK(found(judge(swims), Kind::not_from_one).size() == 1);
    CHECK(judge(swims).predictions.empty());
}

// --- no figure ---

TEST_CASE("a longer swim takes longer") {
    CHECK_FALSE(judged({{400, 212}, {200, 212}}).threshold);
    CHECK(says({{400, 212}, {200, 212}}, Kind::not_slower));
    CHECK(says({{400, 210}, {200, 212}}, Kind::not_slower));
    auto const remarks = found(judged({{400, 210}, {200, 212}}), Kind::not_slower);
    CHECK(remarks.front().swim == 0);
    CHECK(remarks.front().other == 1);
}

TEST_CASE("a longer swim is no faster") {
    CHECK_FALSE(judged({{200, 212}, {400, 423.999}}).threshold);
    CHECK(says({{200, 212}, {400, 423.999}}, Kind::faster));
    auto const even = judged({{200, 212}, {400, 424}}); // exactly as fast
    REQUIRE(even.threshold);
    CHECK(even.threshold->reserve == 0);
}

TEST_CASE("every pair of neighbours is looked at") {
    auto const verdict = judged({{100, 90}, {200, 170}, {400, 360}, {800, 350}});
    CHECK_FALSE(verdict.threshold);
    CHECK(found(verdict, Kind::faster).size() == 1);
    CHECK(found(verdict, Kind::not_slower).size() == 1);
    for (auto const& swim : verdict.swims) {
        CHECK_FALSE(swim.used);
    }
}

TEST_CASE("a pace below a second or of a day cannot be written down") {
    CHECK(says({{1'000'000, 1}, {2'000'000, 3}}, Kind::no_pace));
    CHECK_FALSE(judged({{1'000'000, 1}, {2'000'000, 3}}).threshold);
    CHECK(says({{1, 1}, {1.5, 80000}}, Kind::no_pace));
    CHECK_FALSE(says({{200, 212}, {400, 442}}, Kind::no_pace));
}

// --- warnings and notes, on both sides of each limit ---

TEST_CASE("a swim under 2 min is doubted") {
    CHECK(says({{100, 119.999}, {400, 520}}, Kind::short_swim));
    CHECK_FALSE(says({{100, 120}, {400, 520}}, Kind::short_swim));
}

TEST_CASE("a swim over 20 min is doubted, from 15 min it is noted") {
    auto const last = [](double seconds) { return std::vector<Timed>{{200, 170}, {1000, seconds}}; };
    CHECK_FALSE(says(last(899.999), Kind::rather_long));
    CHECK(says(last(900), Kind::rather_long));
    CHECK(says(last(1200), Kind::rather_long));
    CHECK_FALSE(says(last(1200), Kind::long_swim));
    CHECK(says(last(1200.001), Kind::long_swim));
    CHECK_FALSE(says(last(1200.001), Kind::rather_long));
}

TEST_CASE("durations are judged as they were swum, whatever the course") {
    // 2:01 in 50 m is 1:58.5 in 25 m.
    auto const verdict =
        judged({{100, 121, support::metres_50}, {400, 520, support::metres_25}}, support::metres_25);
    CHECK(found(verdict, Kind::short_swim).empty());
}

TEST_CASE("the longest time is 1.5 times the shortest") {
    CHECK(says({{300, 400}, {400, 599.999}}, Kind::close));
    CHECK_FALSE(says({{300, 400}, {400, 600}}, Kind::close));
}

TEST_CASE("the longest and the shortest time are 5 min apart") {
    CHECK(says({{210, 200}, {500, 499.999}, {405, 400}}, Kind::little_apart));
    CHECK_FALSE(says({{210, 200}, {500, 500}, {405, 400}}, Kind::little_apart));
}

TEST_CASE("a reserve outside 6 to 44 m is doubted") {
    auto const with = [](double reserve) {
        return says({{180 + reserve, 180}, {540 + reserve, 540}}, Kind::odd_reserve);
    };
    CHECK(with(5.99));
    CHECK_FALSE(with(6));
    CHECK_FALSE(with(44));
    CHECK(with(44.01));
}

// 200, 400, 600 m in 200, 400 and 600 + x s: without the last CS is 1; without the first
// 200 / (200 + x). With all three, t - mean = -200 - x/3, -x/3, 200 + 2x/3, so
// CS = (80000 + 200 x) / (80000 + 400 x + 2/3 x^2). 1 / CS is 1.02 where 2/3 x^2 + 196 x = 1600,
// at x = 7.9485; leaving the first out moves less, 1.9 %, the second less still.
TEST_CASE("one swim that moves the speed by over 2 % is named, the worst one") {
    auto const decisive = [](double x) {
        return found(judged({{200, 200}, {400, 400}, {600, 600 + x}}), Kind::one_decides);
    };
    CHECK(decisive(7.948).empty());
    auto const remarks = decisive(7.949);
    REQUIRE(remarks.size() == 1);
    CHECK(remarks.front().swim == 2);
    CHECK(*remarks.front().pace == 100);
}

// 120, 220, 440 m in 100, 200, 400 s: with all three CS is 15/14, without the first 1.1 (2.7 % more), without
// the last 1 (6.7 % less).
TEST_CASE("the swim that decides may have made the speed higher") {
    auto const remarks = found(judged({{120, 100}, {220, 200}, {440, 400}}), Kind::one_decides);
    REQUIRE(remarks.size() == 1);
    CHECK(remarks.front().swim == 2);
    CHECK(*remarks.front().pace == 100);
}

TEST_CASE("of two swims none can be left out") {
    auto const verdict = judged({{100, 100}, {400, 442}});
    CHECK(found(verdict, Kind::one_decides).empty());
    REQUIRE(found(verdict, Kind::short_swim).size() == 1);
    CHECK_FALSE(found(verdict, Kind::short_swim).front().pace);
}

TEST_CASE("a doubtful swim comes with the figure without it") {
    auto const remarks = found(judged({{100, 100}, {200, 212}, {400, 442}}), Kind::short_swim);
    REQUIRE(remarks.size() == 1);
    CHECK(*remarks.front().pace == 115);
}

TEST_CASE("a pace outside 0:50 to 5:00 per 100 m is asked about") {
    CHECK(says({{200, 99.99}, {400, 199.98}}, Kind::odd_pace)); // 49.995
    CHECK_FALSE(says({{200, 100}, {400, 200}}, Kind::odd_pace));
    CHECK_FALSE(says({{200, 600}, {400, 1200}}, Kind::odd_pace));
    CHECK(says({{200, 600.1}, {400, 1200.2}}, Kind::odd_pace));
    // 4:35 per 100 yd are 5:00.7 per 100 m.
    CHECK_FALSE(found(judged({{182.88, 550}, {365.76, 1100}}, support::yards_25), Kind::odd_pace).empty());
    CHECK(found(judged({{182.88, 548}, {365.76, 1096}}, support::yards_25), Kind::odd_pace).empty());
    CHECK(says({{400, 2000}}, Kind::odd_pace)); // a bound, too
}

TEST_CASE("a swim without a pool among swims with one is noted") {
    CHECK(found(judged({{200, 212}, {400, 442}}), Kind::no_course).empty());
    auto swims = trials({{200, 212}, {400, 442, support::metres_50}});
    auto const remarks = found(judge(swims), Kind::no_course);
    REQUIRE(remarks.size() == 1);
    CHECK(remarks.front().swim == 0);
    CHECK(judge(swims).threshold->pace == 115); // taken as it is
}

TEST_CASE("a hundred swims in a hundred pools are judged at once") {
    std::vector<Timed> swims;
    double t = 0, d = 0, tt = 0, td = 0; // the sums in floating point
    for (int i = 0; i < 100; ++i) {
        auto const length = 20 + i;
        auto const metres = 200.0 + 7 * i;
        auto const seconds = (metres - 20) * 1.1 + 0.001 * i;
        swims.push_back({metres, seconds, Pool::of(Distance::metres(length), Unit::metre)});
        auto const here = seconds * (1 - 1.0 / 25) / (1 - 1.0 / length);
        t += here;
        d += metres;
        tt += here * here;
        td += here * metres;
    }
    auto const verdict = judged(swims, support::metres_25);
    REQUIRE(verdict.threshold);
    CHECK(verdict.threshold->speed.approximate() ==
          Approx((100 * td - t * d) / (100 * tt - t * t)).epsilon(1e-9));
}

} // namespace
} // namespace lengthwise::calc
