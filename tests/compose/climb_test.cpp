#include "compose/climb.hpp"

#include "compose/exhaustive.hpp"
#include "compose/random_wish.hpp"
#include "compose/wishes.hpp"

#include <catch2/catch.hpp>

#include <random>
#include <string_view>

using namespace lengthwise;
using compose::Request;

namespace {

template <typename T>
T one_of(std::mt19937& random, std::initializer_list<T> all) {
    return *(all.begin() + random() % all.size());
}

std::int64_t between(std::mt19937& random, std::int64_t low, std::int64_t high) {
    return low + static_cast<std::int64_t>(random() % static_cast<std::uint64_t>(high - low + 1));
}

/// A wish small enough to look at every climb; about half can be met.
Request small_wish(std::mt19937& random) {
    Request request;
    auto const length = one_of(random, {25, 25, 20, 50});
    auto const lap = length == 50 ? 50 : 2 * length;
    request.pool = Pool::of(Distance::metres(length), Unit::metre);
    request.days = support::days(static_cast<std::size_t>(between(random, 1, 4)));
    auto const laps = between(random, 1, 9);
    request.race.distance = Distance::metres(laps * lap - between(random, 0, 1) * 10);
    request.longest = Distance::metres(
        between(random, 1, std::max<std::int64_t>(1, laps)) * lap / one_of(random, {1, 1, 2}) + 20);
    request.session = Distance::metres(between(random, 3, laps * 4 / 3 + 8) * lap + 5);
    request.slot = Duration::minutes(between(random, 12, 40));
    if (random() % 2 == 0) {
        request.threshold = Duration::seconds(between(random, 90, 200));
    }
    auto const sometimes = [&](std::string_view rule, std::int64_t low, std::int64_t high) {
        if (random() % 4 == 0) {
            support::set_limit(request, rule, between(random, low, high));
        }
    };
    sometimes("rep-step", 0, 120);
    sometimes("week-growth", 0, 40);
    sometimes("race-rep", 60, 120);
    sometimes("slot", 0, 300'000);
    sometimes("session-floor", 0, Distance::metres(500).units());
    return request;
}

} // namespace

TEST_CASE("climb: the best of all climbs, and none where there is none") {
    std::mt19937 random{20270426};
    auto compared = 0;
    auto impossible = 0;
    auto climbs = std::int64_t{0};
    for (auto i = 0; i < 3500; ++i) {
        auto const request = small_wish(random);
        auto const weeks = static_cast<int>(between(random, 1, 5));
        auto const expected = support::exhaust(request, weeks, 3000);
        if (expected.too_many) {
            continue;
        }
        auto const found = compose::best_climb(compose::problem_of(request, weeks));
        INFO("case " << i << ", weeks " << weeks << ", climbs " << expected.climbs << ": "
                     << support::said(request));
        ++compared;
        climbs += expected.climbs;
        REQUIRE(found.has_value() == !expected.steps.empty());
        if (!found) {
            ++impossible;
            continue;
        }
        CHECK(found->growth.week == expected.week_percent);
        CHECK(found->growth.rep.value_or(34) == expected.rep_percent);
        CHECK(found->steps == expected.steps);
    }
    CAPTURE(compared, impossible, climbs);
    CHECK(compared >= 2000);
    CHECK(impossible >= 500);
    CHECK(compared - impossible >= 500);
}
