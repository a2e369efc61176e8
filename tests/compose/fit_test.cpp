#include "compose/fit.hpp"

#include <catch2/catch.hpp>

#include <algorithm>

using namespace lengthwise::compose;

TEST_CASE("laps are cut into round reps near what is wished", "[compose]") {
    auto const twelve = fit(12, 10, 2);
    REQUIRE(twelve);
    CHECK(twelve->count == 6);
    CHECK(twelve->size == 2);
    CHECK(twelve->spare == 0);

    auto const seven = fit(7, 10, 1, {.most = 12}); // seven is no nice count
    REQUIRE(seven);
    CHECK(seven->count == 6);
    CHECK(seven->size == 1);
    CHECK(seven->spare == 1);

    // 6 x 4 and 4 x 6 are as near to five, and six reps are not many: the shorter rep.
    auto const six = fit(24, 10, 5);
    REQUIRE(six);
    CHECK(six->count == 6);
    CHECK(six->size == 4);

    CHECK_FALSE(fit(7, 3, 1, {.most = 12, .spare = 0}));
    CHECK_FALSE(fit(1, 10, 1));
    CHECK_FALSE(fit(6, 0, 1));
}

TEST_CASE("the largest nice count of at most a number is that number where it is nice", "[compose]") {
    CHECK(nice_at_most(1) == 1);
    CHECK(nice_at_most(6) == 6);
    CHECK(nice_at_most(7) == 6);
    CHECK(nice_at_most(11) == 10);
    CHECK(nice_at_most(99) == 12);
}

TEST_CASE("what fits is round, nice and whole, whatever is asked", "[compose]") {
    for (Laps laps = 1; laps <= 60; ++laps) {
        for (Laps longest = 1; longest <= 20; ++longest) {
            for (auto const most : {4, 8, 12}) {
                if (auto const found = fit(laps, longest, 3, {.most = most, .spare = 2})) {
                    CHECK(found->count * found->size + found->spare == laps);
                    CHECK((found->size <= longest && found->count <= most && found->spare <= 2));
                    CHECK((is_round(found->size) && is_nice(found->count)));
                }
            }
            auto const equal = equal_reps(laps, longest);
            CHECK(equal.count * equal.size == laps);
            CHECK(equal.size <= longest);
        }
    }
}

TEST_CASE("rows leave two laps at most", "[compose]") {
    for (Laps laps = 1; laps <= 120; ++laps) {
        for (Laps longest = 1; longest <= 20; ++longest) {
            auto sum = 0;
            for (auto const& row : rows(laps, longest)) {
                sum += row.count * row.size;
                CHECK((row.size <= longest && row.count <= 12));
            }
            CAPTURE(laps, longest);
            CHECK(sum <= laps);
            CHECK(laps - sum <= 2);
        }
    }
}
