#include "compose/climb.hpp"

#include "compose/exhaustive.hpp"
#include "compose/random_wish.hpp"
#include "compose/wishes.hpp"

#include <catch2/catch.hpp>

#include <optional>
#include <random>
#include <string_view>
#include <vector>

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

/// Rooms unlike any slot's: the longer rep may have a much longer day, so that the best reps alone may have
/// no weeks.
compose::Problem odd_problem(std::mt19937& random) {
    auto const number = [&](std::int64_t low, std::int64_t high) {
        return static_cast<int>(between(random, low, high));
    };
    compose::Problem problem;
    problem.build_weeks = number(1, 6);
    problem.lengths_a_lap = number(1, 2);
    problem.sessions = number(1, 4);
    problem.race_rep = number(2, 10);
    problem.today_longest = number(1, problem.race_rep * problem.lengths_a_lap);
    problem.today_week = number(4, 20) * problem.sessions;
    if (random() % 2 == 0) {
        problem.rep_step = number(10, 120);
    }
    problem.week_growth = number(3, 40);
    auto most = number(4, 12);
    for (auto rep = 0; rep <= problem.race_rep; ++rep) {
        most += random() % 3 == 0 ? number(0, 8) : 1;
        problem.room.long_day.push_back(most);
    }
    problem.room.other_day = number(4, 20);
    problem.tight = problem.room;
    return problem;
}

struct Tally {
    int compared = 0;
    int impossible = 0;
};

/// The same as every climb says, or none.
void compare(compose::Problem const& problem, support::Exhausted const& expected, Tally& tally) {
    auto const found = compose::best_climb(problem);
    ++tally.compared;
    REQUIRE(found.has_value() == !expected.steps.empty());
    if (!found) {
        ++tally.impossible;
        return;
    }
    CHECK(found->growth.week == expected.week_percent);
    CHECK(found->growth.rep.value_or(34) == expected.rep_percent);
    CHECK(found->steps == expected.steps);
}

} // namespace

TEST_CASE("climb: the least reps from which the race rep can still be reached") {
    compose::Problem problem;
    problem.build_weeks = 4;
    problem.race_rep = 8;
    problem.today_longest = 1;
    // Twice the rep before it just gets there: no lap more is asked for.
    CHECK(compose::least_reps(problem, {100, 10}) == std::vector<int>{1, 2, 4, 8});
}

TEST_CASE("climb: the fewest weeks may be one") {
    compose::Problem problem;
    problem.race_rep = 2;
    problem.today_longest = 4; // two laps: no rep has to grow
    problem.today_week = 20;
    problem.room.long_day = {20, 20, 20};
    problem.tight = problem.room;
    CHECK(compose::fewest_weeks(problem, 1) == 1);
    CHECK(compose::fewest_weeks(problem, 8) == 1);
    problem.today_longest = 2; // one lap, and the next week's rep may be two
    CHECK(compose::fewest_weeks(problem, 8) == 1);
    problem.race_rep = 3; // a lap a week
    problem.room.long_day = {20, 20, 20, 20};
    problem.tight = problem.room;
    CHECK(compose::fewest_weeks(problem, 1) == std::nullopt);
    CHECK(compose::fewest_weeks(problem, 8) == 2);
}

TEST_CASE("climb: the best of all climbs, and none where there is none") {
    std::mt19937 random{20270426};
    Tally tally;
    for (auto i = 0; i < 4000; ++i) {
        auto const request = small_wish(random);
        auto const weeks =
            static_cast<int>(random() % 5 == 0 ? between(random, 6, 9) : between(random, 1, 5));
        auto const expected = support::exhaust(request, weeks, 3000);
        if (!expected.too_many) {
            INFO("weeks " << weeks << ", climbs " << expected.climbs << ": " << support::said(request));
            compare(compose::problem_of(request, weeks), expected, tally);
        }
    }
    CHECK(tally.compared >= 2000);
    CHECK(tally.impossible >= 500);
    CHECK(tally.compared - tally.impossible >= 500);
}

TEST_CASE("climb: the best of all where weeks get into the way of reps") {
    std::mt19937 random{1500};
    Tally tally;
    for (auto i = 0; i < 20000; ++i) {
        auto const problem = odd_problem(random);
        auto const expected = support::exhaust(problem, 1500);
        if (!expected.too_many) {
            CAPTURE(i);
            compare(problem, expected, tally);
        }
    }
    CHECK(tally.compared - tally.impossible >= 2000);
}
