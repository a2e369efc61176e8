#pragma once

#include "check/progress.hpp"
#include "plan/plan.hpp"
#include "units/distance.hpp"

#include <cstdint>
#include <optional>
#include <string>

/// How a plan stands to its race: what `check` ends with.
namespace lengthwise::check {

/// Where the longest rep would come to, were it to go on growing as it did so far: by the mean growth a
/// week from what stands first (`before`, else the first week that has such a rep) to the last week that
/// has the longest, and no week by more than rep-step allows. Easy weeks between do not matter, a taper
/// behind the longest does not count. A judgement of the plan's slope, common practice and no more.
struct Trend {
    Distance a_week;       ///< mean growth, rounded down to 1/30 000 m
    std::int64_t week = 0; ///< its number, in which the rep that is asked would be there
    std::optional<std::int64_t>
        after_race; ///< weeks: 0 the race's own, below 0 before it; without dates nothing
};

struct Outlook {
    RaceRep asked;
    /// The session before race day in which the last lane or swimmer first swims it.
    std::optional<plan::Index> reached;
    // All below is of those who lack most; of the lowest lane where nobody lacks anything.
    Distance longest;           ///< before race day; 0: no rep counts
    std::string who;            ///< "lane 2", "Ann and Bo"; empty: all
    std::optional<Trend> trend; ///< nothing where it does not grow, or where no week has a number

    [[nodiscard]] Distance missing() const { return reached ? Distance{} : asked.distance - longest; }
};

/// Nothing without a race.
[[nodiscard]] std::optional<Outlook> outlook(plan::Plan const& plan);

} // namespace lengthwise::check
