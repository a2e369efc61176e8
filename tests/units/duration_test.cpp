#include "units/duration.hpp"
#include "units/range.hpp"

#include <catch2/catch.hpp>

#include <limits>

using namespace lengthwise;

namespace {
constexpr auto most = std::numeric_limits<std::int64_t>::max();
constexpr auto least = std::numeric_limits<std::int64_t>::min();
} // namespace

TEST_CASE("durations are whole milliseconds", "[units]") {
    CHECK(Duration::seconds(1).ms() == 1000);
    CHECK(Duration::minutes(1) == Duration::seconds(60));
    CHECK(Duration::hours(1) == Duration::minutes(60));
    CHECK(Duration::hours(24).ms() == 86'400'000);
    CHECK(Duration{}.zero());
    CHECK_FALSE(Duration::ms(1).zero());
}

TEST_CASE("durations add, subtract, multiply and compare", "[units]") {
    CHECK(Duration::seconds(50) + Duration::seconds(10) == Duration::minutes(1));
    CHECK(Duration::seconds(10) - Duration::seconds(50) == Duration::seconds(-40));
    CHECK(4 * Duration::seconds(15) == Duration::minutes(1));
    CHECK(Duration::seconds(15) * 4 == Duration::minutes(1));
    CHECK(Duration::ms(999) < Duration::seconds(1));
}

TEST_CASE("durations that do not fit say so", "[units]") {
    CHECK(checked_add(Duration::ms(most - 1), Duration::ms(1)) == Duration::ms(most));
    CHECK_FALSE(checked_add(Duration::ms(most), Duration::ms(1)));
    CHECK_FALSE(checked_add(Duration::ms(least), Duration::ms(-1)));
    CHECK(checked_mul(Duration::ms(most / 2), 2) == Duration::ms(most - 1));
    CHECK_FALSE(checked_mul(Duration::ms(most / 2 + 1), 2));
    CHECK_FALSE(checked_mul(Duration::ms(least), -1));
}

TEST_CASE("a range of one value is single", "[units]") {
    CHECK(Range<Duration>{Duration::seconds(20), Duration::seconds(20)}.single());
    CHECK_FALSE(Range<Duration>{Duration::seconds(20), Duration::seconds(40)}.single());
    CHECK(Range<Duration>{} == Range<Duration>{Duration{}, Duration{}});
    CHECK_FALSE(Band<int>{1, 2, 3} == Band<int>{1, 2, 4});
}
