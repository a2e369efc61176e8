#include "units/pool.hpp"

#include <catch2/catch.hpp>

using namespace lengthwise;

TEST_CASE("a lap is there and back, in pools of 40 m or more one length", "[units]") {
    auto const lap_of = [](Distance length) { return lap(Pool::of(length, Unit::metre)); };
    CHECK(lap_of(Distance::metres(25)) == Distance::metres(50));
    CHECK(lap_of(Distance::units(1'000'000)) == Distance::units(2'000'000)); // 33 1/3 m
    CHECK(lap_of(Distance::metres(40) - Distance::units(1)) == Distance::metres(80) - Distance::units(2));
    CHECK(lap_of(Distance::metres(40)) == Distance::metres(40));
    CHECK(lap_of(Distance::metres(50)) == Distance::metres(50));
    CHECK(lap_of(Distance::yards(43)) == Distance::yards(86)); // 39.3192 m
    CHECK(lap_of(Distance::yards(44)) == Distance::yards(44)); // 40.2336 m
}

TEST_CASE("a bare number counts in the pool's unit", "[units]") {
    CHECK(one(Unit::metre).units() == 30'000);
    CHECK(one(Unit::yard).units() == 27'432);
}
