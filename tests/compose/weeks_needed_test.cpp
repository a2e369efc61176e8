#include "compose/problem.hpp"
#include "compose/ramp.hpp"
#include "compose/wishes.hpp"

#include <catch2/catch.hpp>

#include <vector>

using namespace lengthwise;
using compose::Request;
using support::wish;

namespace {

bool can(Request const& request) {
    return compose::ramp_of(request).has_value();
}

std::vector<std::int64_t> const longest{50, 100, 150, 200, 250, 300, 400, 500};

/// Twice a week in 25 m: the weeks in which a race can be reached from each of these, and the least session
/// of today that is enough for it. Just below either it cannot.
void check_table(std::int64_t race, std::vector<int> const& weeks,
                 std::vector<std::int64_t> const& sessions) {
    for (std::size_t i = 0; i < longest.size(); ++i) {
        CAPTURE(race, longest[i]);
        CHECK(can(wish(race, weeks[i], longest[i], sessions[i])));
        CHECK_FALSE(can(wish(race, weeks[i] - 1, longest[i], sessions[i] + 2000)));
        CHECK_FALSE(can(wish(race, weeks[i], longest[i], sessions[i] - 25)));
    }
}

std::int64_t least_week_of_race_rep(std::int64_t race, std::size_t days) {
    auto request = wish(race, 3, race, 1000);
    request.days = support::days(days);
    auto const problem = compose::problem_of(request, 1);
    return compose::least_week(problem, problem.race_rep, 1) * 50;
}

} // namespace

TEST_CASE("ramp: the fewest weeks to a race, and the least session for them") {
    check_table(750, {12, 11, 10, 8, 7, 6, 4, 3}, {375, 425, 475, 525, 575, 625, 675, 725});
    check_table(1500, {17, 16, 15, 13, 12, 11, 9, 8}, {625, 675, 725, 775, 850, 925, 1000, 1075});
}

TEST_CASE("ramp: two small sessions need more weeks") {
    CHECK(can(wish(750, 18, 50, 200)));
    CHECK_FALSE(can(wish(750, 17, 50, 200)));
    CHECK(can(wish(1500, 29, 50, 200)));
    CHECK_FALSE(can(wish(1500, 28, 50, 200)));
}

TEST_CASE("ramp: the race rep forces a week") {
    CHECK(least_week_of_race_rep(750, 2) == 1700);
    CHECK(least_week_of_race_rep(750, 3) == 2350);
    CHECK(least_week_of_race_rep(750, 4) == 2900);
    CHECK(least_week_of_race_rep(1500, 2) == 3350);
    CHECK(least_week_of_race_rep(1500, 3) == 4650);
    CHECK(least_week_of_race_rep(1500, 4) == 5750);
}
