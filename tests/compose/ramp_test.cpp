#include "compose/ramp.hpp"

#include "compose/session_time.hpp"
#include "compose/wishes.hpp"

#include <catch2/catch.hpp>

#include <fmt/core.h>

#include <algorithm>
#include <string>

using namespace lengthwise;
using compose::Ramp;
using compose::WeekKind;
using support::wish;

namespace {

/// "250 300 350 *200* …", easy weeks between stars, in whole units of the pool.
template <typename Laps>
std::string row(Ramp const& ramp, Laps laps) {
    auto const per = one(ramp.pool.unit);
    std::string text;
    for (auto const& week : ramp.weeks) {
        auto const figure = Distance::whole(laps(week) * ramp.lap, per);
        auto const star = week.kind == WeekKind::build ? "" : "*";
        text += fmt::format("{}{}{}{}", text.empty() ? "" : " ", star, figure, star);
    }
    return text;
}

std::string reps(Ramp const& ramp) {
    return row(ramp, [](auto const& week) { return week.rep; });
}

std::string weeks(Ramp const& ramp) {
    return row(ramp, [](auto const& week) { return week.laps; });
}

Ramp found(compose::Request const& request) {
    auto ramp = compose::ramp_of(request);
    REQUIRE(ramp);
    return *ramp;
}

} // namespace

TEST_CASE("ramp: 750 m in twelve weeks") {
    auto const ramp = found(wish(750, 12, 200, 1000));
    CHECK(ramp.week_percent == 5);
    CHECK(ramp.rep_percent == 19);
    CHECK(reps(ramp) == "250 300 350 *200* 400 450 500 *350* 550 650 750 *350*");
    CHECK(weeks(ramp) == "2050 2100 2150 *1500* 2200 2300 2350 *1600* 2400 2450 2500 *1250*");
}

TEST_CASE("ramp: 1500 m in ten weeks") {
    auto const ramp = found(wish(1500, 10, 350, 1000));
    CHECK(ramp.week_percent == 10);
    CHECK(ramp.rep_percent == 31);
    CHECK(reps(ramp) == "450 550 *350* 700 900 *600* 1150 1500 *750* *600*");
    CHECK(weeks(ramp) == "2200 2400 *1650* 2600 2850 *1950* 3100 3400 *2000* *1350*");
}

TEST_CASE("ramp: 400 m in seven weeks, not in five") {
    CHECK_FALSE(compose::ramp_of(wish(400, 5, 100, 500)));
    CHECK_FALSE(compose::ramp_of(wish(400, 5, 175, 500)));
    CHECK(compose::ramp_of(wish(400, 5, 200, 500)));
    CHECK_FALSE(compose::ramp_of(wish(400, 6, 100, 500)));
    auto const ramp = found(wish(400, 7, 100, 500));
    CHECK(ramp.week_percent == 5);
    CHECK(ramp.rep_percent == 34);
    CHECK(ramp.rep_by_third);
    CHECK(reps(ramp) == "150 200 *200* 250 300 400 *200*");
    CHECK(weeks(ramp) == "1050 1100 *750* 1150 1200 1250 *600*");
}

TEST_CASE("ramp: a slot at a threshold caps the week that is aimed at") {
    auto request = wish(750, 6, 300, 1000);
    request.threshold = Duration::seconds(125);
    auto const ramp = found(request);
    CHECK(reps(ramp) == "400 500 *350* 650 750 *350*");
    CHECK(weeks(ramp) == "2100 2200 *1500* 2300 2400 *1200*");
}

TEST_CASE("ramp: three times a week to 1500 m") {
    auto request = wish(1500, 10, 350, 1300);
    request.days = support::days(3);
    request.slot = Duration::minutes(60);
    request.threshold = Duration::seconds(115);
    auto const ramp = found(request);
    CHECK(reps(ramp) == "450 550 *350* 700 900 *600* 1150 1500 *750* *600*");
    CHECK(weeks(ramp) == "4050 4200 *2900* 4400 4550 *3150* 4700 4850 *2900* *1900*");
    auto const& last = ramp.weeks.back().days;
    CHECK(last[0].kind == compose::DayKind::long_day);
    CHECK(last[2].kind == compose::DayKind::pace);
    CHECK(last[2].last);
}

TEST_CASE("ramp: a short race in yards, without a threshold") {
    auto request = wish(400, 4, 225, 700);
    request.pool = Pool::of(Distance::yards(25), Unit::yard);
    request.longest = Distance::yards(225);
    request.session = Distance::yards(700);
    auto const ramp = found(request);
    CHECK(reps(ramp) == "300 350 450 *200*");
    CHECK(weeks(ramp) == "1500 1600 1700 *850*");
}

TEST_CASE("ramp: the slowest pace that fits is the slowest") {
    auto const ramp = found(wish(750, 12, 200, 1000));
    REQUIRE(ramp.slowest_threshold);
    auto const longest = [&](Duration threshold) {
        Duration most;
        for (auto const& week : ramp.weeks) {
            for (auto const& day : week.days) {
                auto const kind = day.kind == compose::DayKind::third ? compose::DayKind::pace : day.kind;
                most =
                    std::max(most, compose::SessionTimes{ramp.pool, threshold}.of(kind, day.laps, week.rep));
            }
        }
        return most;
    };
    CHECK(longest(*ramp.slowest_threshold) <= Duration::minutes(45));
    CHECK(longest(*ramp.slowest_threshold + Duration::seconds(1)) > Duration::minutes(45));
}
