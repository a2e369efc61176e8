#pragma once

#include "calc/growth.hpp"
#include "calc/totals.hpp"
#include "plan/plan.hpp"
#include "units/distance.hpp"

#include <cstdint>
#include <optional>
#include <string_view>
#include <vector>

/// A plan week by week, as the rules of growth see it.
namespace lengthwise::check {

/// One week's sessions before race day (all of them without a race, and those without a date).
struct SwumWeek {
    plan::Week const* week = nullptr;
    calc::Sums sums;
    std::int64_t sessions = 0;
    Distance laps; ///< one lap a session, each of its own pool
};

/// The weeks that hold such a session, in order.
[[nodiscard]] std::vector<SwumWeek> swum_weeks(plan::Plan const& plan, calc::Reckoner& sums);

/// Is a session before race day, as far as its date is known?
[[nodiscard]] bool before_race(plan::Plan const& plan, plan::Session const& session);

/// Can this week be a taper of the plan's race? Not where it ends more than calc::taper_reach days before.
[[nodiscard]] bool near_race(plan::Plan const& plan, plan::Week const& week);

/// What a taper week may have at most: `percent` of the highest week in this lane but the last.
struct Eased {
    Distance highest;
    Distance top;
};
[[nodiscard]] Eased eased(std::vector<SwumWeek> const& weeks, SwumWeek const& week, int lane,
                          std::int64_t percent);

/// The lanes of the plan ascending; lane 0 alone where none is named.
[[nodiscard]] std::vector<int> lanes_to_judge(plan::Plan const& plan);

/// What `limit` says of a rule at the file's head; nothing where it says nothing.
[[nodiscard]] std::optional<plan::Limit> file_limit(plan::Plan const& plan, std::string_view rule);

/// What the race asks of one rep: its distance, or the share that `limit race-rep` says.
struct RaceRep {
    Distance distance;
    std::int64_t percent = calc::usual::race_rep;
};
/// Of a plan that has a race.
[[nodiscard]] RaceRep race_rep_asked(plan::Plan const& plan);

/// A lap of a session's pool; 50 m where it has no length.
[[nodiscard]] Distance lap_of(plan::Plan const& plan, plan::Session const& session);

} // namespace lengthwise::check
