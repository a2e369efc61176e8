#pragma once

#include "calc/totals.hpp"
#include "plan/plan.hpp"
#include "units/distance.hpp"

#include <cstdint>
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

/// The lanes of the plan ascending; lane 0 alone where none is named.
[[nodiscard]] std::vector<int> lanes_to_judge(plan::Plan const& plan);

/// A lap of a session's pool; 50 m where it has no length.
[[nodiscard]] Distance lap_of(plan::Plan const& plan, plan::Session const& session);

} // namespace lengthwise::check
