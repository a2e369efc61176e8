#include "compose/day_sizes.hpp"

#include "calc/growth.hpp"

#include <catch2/catch.hpp>

using namespace lengthwise;
using compose::day_sizes;
using compose::DayKind;
using compose::DaySizes;

namespace {

Pool const pool_25m = Pool::of(Distance::metres(25), Unit::metre);
Pool const pool_50m = Pool::of(Distance::metres(50), Unit::metre);

} // namespace

TEST_CASE("day sizes: small days on paper") {
    // From (1, 1, 1, 1): the lap of the drill would be alone in front of a short warm-up.
    CHECK(day_sizes(DayKind::long_day, 4, 1, pool_25m) == DaySizes{2, 0, 1, 1});
    // The fifth lap: 18/3, 12/3, 60/3, 10/3.
    CHECK(day_sizes(DayKind::long_day, 5, 1, pool_25m) == DaySizes{2, 0, 2, 1});
    // 45/3 = 15, then 45/5 = 9 against 27/3 = 9: the earlier section.
    CHECK(day_sizes(DayKind::pace, 5, 1, pool_25m) == DaySizes{1, 1, 2, 1});
    CHECK(day_sizes(DayKind::pace, 6, 1, pool_25m) == DaySizes{2, 1, 2, 1}); // of two drill laps one
    // Now (1, 2, 3, 1): main 45/5 = 9 went before warm-up 18/3 = 6.
    CHECK(day_sizes(DayKind::third, 7, 1, pool_25m) == DaySizes{2, 1, 3, 1});
}

TEST_CASE("day sizes: caps of warm-up, drill and cool-down") {
    for (auto const kind : {DayKind::pace, DayKind::long_day, DayKind::fourth}) {
        auto const sizes = day_sizes(kind, 400, 30, pool_25m);
        CHECK(sizes.warm_up == 18);
        CHECK(sizes.drill == 10);
        CHECK(sizes.cool_down == 5);
        CHECK(sizes.main == 367);
    }
    auto const fifty = day_sizes(DayKind::pace, 400, 1, pool_50m);
    CHECK(fifty.cool_down == 5);
}

TEST_CASE("day sizes: add up, and a long day holds its rep") {
    for (auto rep = 1; rep <= 60; ++rep) {
        for (auto laps = static_cast<int>(calc::session_need(rep)); laps <= 120; ++laps) {
            auto const sizes = day_sizes(DayKind::long_day, laps, rep, pool_25m);
            REQUIRE(sizes.laps() == laps);
            REQUIRE(sizes.main >= rep);
            REQUIRE((sizes.warm_up >= 1 && sizes.cool_down >= 1 && sizes.drill >= 0));
            REQUIRE((sizes.drill != 1 || sizes.warm_up >= 3));
        }
    }
}

TEST_CASE("day sizes: the last session has at most two laps of drill") {
    auto const usual = day_sizes(DayKind::pace, 14, 1, pool_25m);
    auto const last = day_sizes(DayKind::pace, 14, 1, pool_25m, true);
    REQUIRE(usual.drill > 2);
    CHECK(last == DaySizes{usual.warm_up + usual.drill - 2, 2, usual.main, usual.cool_down});
}

TEST_CASE("warm-up: its three parts add up") {
    using compose::warm_up;
    using compose::WarmUp;
    CHECK(warm_up(1) == WarmUp{1, 0, 0});
    CHECK(warm_up(8) == WarmUp{4, 2, 2});
    CHECK(warm_up(18) == WarmUp{10, 4, 4});
    for (auto laps = 0; laps <= 60; ++laps) {
        auto const parts = warm_up(laps);
        CHECK(parts.choice + parts.one_thing + parts.build == laps);
    }
}
