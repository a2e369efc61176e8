#include "compose/climb.hpp"

#include "compose/climb_search.hpp"

#include <algorithm>

namespace lengthwise::compose {

namespace {

/// From here on the week's share is as gentle as it needs to be.
constexpr std::int64_t gentle_week = 5;

/// One percent above all that are below a third.
constexpr std::int64_t third = 34;

/// The least value from `low` to `high` that does; `high` does, and so does all above one that does.
template <typename Does>
std::int64_t least(std::int64_t low, std::int64_t high, Does does) {
    while (low < high) {
        auto const middle = low + (high - low) / 2;
        if (does(middle)) {
            high = middle;
        } else {
            low = middle + 1;
        }
    }
    return low;
}

/// From the frontier of a week to that of the next, which is build week `build`.
Frontier onward(Tables const& tables, Frontier const& from, int build) {
    auto const& problem = tables.problem();
    Frontier to(from.size(), 0);
    for (auto rep = 1; rep <= problem.race_rep; ++rep) {
        auto const at = static_cast<std::size_t>(rep);
        auto top = 0;
        for (auto before = at; tables.next_rep(static_cast<int>(before)) >= rep; --before) {
            top = std::max(top, from[before] > 0 ? tables.next_week(from[before]) : 0);
            if (before <= 1) {
                break;
            }
        }
        top = std::min({top, most_week(problem, problem.room, rep, build), tables.top()});
        to[at] = top >= least_week(problem, rep, build) ? top : 0;
    }
    return to;
}

Frontier first(Tables const& tables) {
    auto const& problem = tables.problem();
    Frontier to(static_cast<std::size_t>(problem.race_rep) + 1, 0);
    for (auto rep = 1; rep <= std::min(problem.race_rep, tables.next_rep(0)); ++rep) {
        auto const top =
            std::min({tables.next_week(0), most_week(problem, problem.room, rep, 1), tables.top()});
        to[static_cast<std::size_t>(rep)] = top >= least_week(problem, rep, 1) ? top : 0;
    }
    return to;
}

Growth with_rep_percent(Problem const& problem, std::int64_t percent, std::int64_t week) {
    auto const by_third = !problem.rep_step && percent == third;
    return {by_third ? std::nullopt : std::optional{percent}, week};
}

} // namespace

Growth most_growth(Problem const& problem) {
    return {problem.rep_step, problem.week_growth};
}

std::vector<Frontier> frontiers(Tables const& tables) {
    std::vector<Frontier> all;
    for (auto build = 1; build <= tables.problem().build_weeks; ++build) {
        all.push_back(build == 1 ? first(tables) : onward(tables, all.back(), build));
    }
    return all;
}

bool feasible(Problem const& problem, Growth const& growth) {
    return problem.build_weeks > 0 && frontiers(Tables{problem, growth}).back().back() > 0;
}

std::optional<int> fewest_weeks(Problem problem, int most) {
    auto const enough = [&](std::int64_t weeks) {
        problem.build_weeks = static_cast<int>(weeks);
        return feasible(problem, most_growth(problem));
    };
    return enough(most) ? std::optional{static_cast<int>(least(1, most, enough))} : std::nullopt;
}

std::vector<int> least_reps(Problem const& problem, Growth const& growth) {
    std::vector<int> least(static_cast<std::size_t>(problem.build_weeks), problem.race_rep);
    for (auto w = least.size() - 1; w-- > 0;) {
        auto rep = 1;
        while (next_rep(problem, rep, growth.rep) < least[w + 1]) {
            ++rep;
        }
        least[w] = rep;
    }
    return least;
}

std::optional<Climb> best_climb(Problem const& problem) {
    auto const limits = most_growth(problem);
    if (!feasible(problem, limits)) {
        return std::nullopt;
    }
    auto const week = least(std::min(gentle_week, limits.week), limits.week, [&](std::int64_t percent) {
        return feasible(problem, {limits.rep, percent});
    });
    auto const rep = least(0, limits.rep.value_or(third), [&](std::int64_t percent) {
        return feasible(problem, with_rep_percent(problem, percent, week));
    });
    auto const growth = with_rep_percent(problem, rep, week);
    return Climb{growth, search(Tables{problem, growth})};
}

} // namespace lengthwise::compose
