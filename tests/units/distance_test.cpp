#include "units/distance.hpp"
#include "units/pool.hpp"

#include <catch2/catch.hpp>

#include <limits>

using namespace lengthwise;

namespace {
constexpr auto most = std::numeric_limits<std::int64_t>::max();
constexpr auto least = std::numeric_limits<std::int64_t>::min();
} // namespace

TEST_CASE("metres, yards and their thirds are whole numbers of the unit", "[units]") {
    CHECK(Distance::metres(1).units() == 30'000);
    CHECK(Distance::yards(1).units() == 27'432);
    CHECK(Distance::metres(100).units() == 3 * 1'000'000); // 33 1/3 m
    CHECK(Distance::metres(200).units() == 3 * 2'000'000); // 66 2/3 m
    CHECK(Distance::yards(100).units() == 3 * 914'400);    // 33 1/3 yd
    CHECK(Distance::yards(110).units() == 3 * 1'005'840);  // 36 2/3 yd
    CHECK(Distance::metres(1).units() % 24 == 0);          // the smallest part that may be written,
    CHECK(Distance::yards(1).units() % 24 == 0);           // of metres and yards,
    CHECK(Distance::metres(1).units() % 100 == 0);         // and two decimals of metres
    CHECK(Distance::metres(9144) == Distance::yards(10'000));
}

TEST_CASE("a third of a pool's lengths adds up without rounding", "[units]") {
    auto const pool = Distance::units(1'000'000);
    Distance sum;
    for (int i = 0; i < 3'000'000; ++i) {
        sum += pool;
    }
    CHECK(sum == Distance::metres(100'000'000));
}

TEST_CASE("lengths are counted down and up, and a wall is met exactly", "[units]") {
    auto const pool = Distance::metres(25);
    auto const one_more = Distance::units(1);
    CHECK(Distance::whole(Distance::metres(100), pool) == 4);
    CHECK(Distance::ceiling(Distance::metres(100), pool) == 4);
    CHECK(Distance::divides(pool, Distance::metres(100)));

    CHECK(Distance::whole(Distance::metres(100) + one_more, pool) == 4);
    CHECK(Distance::ceiling(Distance::metres(100) + one_more, pool) == 5);
    CHECK_FALSE(Distance::divides(pool, Distance::metres(100) + one_more));

    CHECK(Distance::whole(Distance::metres(100) - one_more, pool) == 3);
    CHECK(Distance::ceiling(Distance::metres(100) - one_more, pool) == 4);

    CHECK(Distance::whole({}, pool) == 0);
    CHECK(Distance::ceiling({}, pool) == 0);
    CHECK(Distance::divides(pool, {}));
    CHECK(Distance::ceiling(one_more, pool) == 1);
    CHECK(Distance::ceiling(Distance::units(most), one_more) == most);
}

TEST_CASE("distances add, subtract, multiply and compare", "[units]") {
    CHECK(Distance::metres(75) + Distance::metres(25) == Distance::metres(100));
    CHECK(Distance::metres(75) - Distance::metres(100) == Distance::metres(-25));
    CHECK(4 * Distance::metres(25) == Distance::metres(100));
    CHECK(Distance::metres(25) * 4 == Distance::metres(100));
    CHECK(Distance::yards(100) < Distance::metres(100));
    CHECK(Distance::yards(110) > Distance::metres(100));
    CHECK(Distance{}.zero());
    CHECK_FALSE(Distance::units(1).zero());
}

TEST_CASE("sums of distances that do not fit say so", "[units]") {
    CHECK(checked_add(Distance::units(most - 1), Distance::units(1)) == Distance::units(most));
    CHECK_FALSE(checked_add(Distance::units(most), Distance::units(1)));
    CHECK(checked_add(Distance::units(least + 1), Distance::units(-1)) == Distance::units(least));
    CHECK_FALSE(checked_add(Distance::units(least), Distance::units(-1)));
    CHECK(checked_add(Distance::units(most), Distance::units(least)) == Distance::units(-1));
}

TEST_CASE("products of distances that do not fit say so", "[units]") {
    constexpr std::int64_t root = 3'037'000'499; // its square is the largest below 2^63
    CHECK(checked_mul(Distance::units(root), root) == Distance::units(9'223'372'030'926'249'001));
    CHECK_FALSE(checked_mul(Distance::units(root + 1), root + 1));
    CHECK(checked_mul(Distance::units(most), 1) == Distance::units(most));
    CHECK_FALSE(checked_mul(Distance::units(most), 2));
    CHECK_FALSE(checked_mul(Distance::units(least), -1));
    CHECK(checked_mul(Distance::units(most), 0) == Distance{});
}

TEST_CASE("a pool knows its unit and whether it has a length", "[units]") {
    CHECK(one(Unit::metre) == Distance::metres(1));
    CHECK(one(Unit::yard) == Distance::yards(1));
    auto const yards = Pool::of(Distance::yards(25), Unit::yard);
    CHECK(yards.has_length());
    CHECK(yards.unit == Unit::yard);
    CHECK_FALSE(Pool::open_water().has_length());
    CHECK(Pool::open_water().unit == Unit::metre);
    CHECK_FALSE(Pool{}.has_length());
    CHECK_FALSE(Pool{} == Pool::open_water());
}
