#include "units/pace.hpp"

#include <catch2/catch.hpp>

using namespace lengthwise;

namespace {

Pool metres(std::int64_t length) {
    return Pool::of(Distance::metres(length), Unit::metre);
}

/// Is it `numerator` / `denominator`, in whatever terms?
bool is(Ratio const& ratio, std::int64_t numerator, std::int64_t denominator) {
    auto const whole = Distance::per_metre; // both are whole metres in units
    auto const a = ratio.numerator / whole;
    auto const b = ratio.denominator / whole;
    return ratio.numerator % whole == 0 && ratio.denominator % whole == 0 && a * denominator == b * numerator;
}

} // namespace

TEST_CASE("each length begins with a push-off worth 1 m", "[units]") {
    CHECK(is(swum_share(metres(25)), 24, 25));
    CHECK(is(swum_share(metres(50)), 49, 50));
    CHECK(is(swum_share(metres(10)), 9, 10));
    CHECK(is(swum_share(metres(6)), 9, 10)); // the push-off is no larger part of a shorter pool
    CHECK(swum_share(Pool::open_water()) == Ratio{1, 1});
    CHECK(swum_share(Pool{}) == Ratio{1, 1});
}

TEST_CASE("a pace of one pool in another: K(25) / K(50) = 24/25 : 49/50 = 48/49", "[units]") {
    auto const quicker = course_ratio(metres(25), metres(50));
    CHECK(quicker.numerator * 49 == quicker.denominator * 48);
    auto const slower = course_ratio(metres(50), metres(25));
    CHECK(slower.numerator * 48 == slower.denominator * 49);
    CHECK(is(course_ratio(metres(25), Pool::open_water()), 24, 25));
    CHECK(is(course_ratio(Pool::open_water(), metres(25)), 25, 24));
    CHECK(course_ratio(metres(25), metres(25)) == Ratio{1, 1});
    CHECK(course_ratio(metres(25), Pool{}) == Ratio{1, 1});
    CHECK(course_ratio(Pool{}, metres(50)) == Ratio{1, 1});
}
