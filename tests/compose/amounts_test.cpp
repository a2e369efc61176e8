#include "compose/amounts.hpp"

#include <catch2/catch.hpp>

using namespace lengthwise;

TEST_CASE("two halves of a lap make the lap, in whole metres", "[compose]") {
    auto const half = [](std::int64_t length, int halves, bool second) {
        return compose::half_amount(Pool::of(Distance::metres(length), Unit::metre), halves, second);
    };
    CHECK(half(50, 1, false) == "25");
    CHECK(half(50, 1, true) == "25");
    CHECK(half(45, 1, false) == "22"); // one length is a lap, and its halves are not equal
    CHECK(half(45, 1, true) == "23");
    CHECK(half(45, 3, false) == "67");
    CHECK(half(45, 3, true) == "68");
    CHECK(half(45, 2, true) == "45");
    CHECK(half(25, 1, true) == "25"); // half a lap is a length
}
