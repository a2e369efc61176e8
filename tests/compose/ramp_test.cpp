#include "compose/ramp.hpp"

#include "compose/climb.hpp"
#include "compose/wishes.hpp"

#include <catch2/catch.hpp>

#include <fmt/core.h>

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
