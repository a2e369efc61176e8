#pragma once

#include "compose/problem.hpp"

#include <cstdint>
#include <optional>
#include <vector>

/// The build weeks of a ramp: whether there are any that keep the limits, and the best of them.
namespace lengthwise::compose {

/// The growth that all weeks keep to: the share of the rep (nothing: a third exactly) and of the week.
struct Growth {
    std::optional<std::int64_t> rep;
    std::int64_t week = 10;
};

/// The limits themselves.
[[nodiscard]] Growth most_growth(Problem const& problem);

/// Can the limits be kept with this growth?
[[nodiscard]] bool feasible(Problem const& problem, Growth const& growth);

/// The fewest build weeks, at most `most`, in which the limits can be kept.
[[nodiscard]] std::optional<int> fewest_weeks(Problem problem, int most);

/// The least rep of each build week from which the race rep is still reached.
[[nodiscard]] std::vector<int> least_reps(Problem const& problem, Growth const& growth);

struct Step {
    int rep = 0;  ///< laps of the longest rep
    int laps = 0; ///< of the week

    friend bool operator==(Step const&, Step const&) = default;
};

struct Climb {
    Growth growth;           ///< p, then q: the least that there is
    std::vector<Step> steps; ///< one a build week
};

/// The best; nothing where there is none.
[[nodiscard]] std::optional<Climb> best_climb(Problem const& problem);

} // namespace lengthwise::compose
