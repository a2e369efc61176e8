#pragma once

#include "plan/plan.hpp"
#include "units/distance.hpp"

#include <cstdint>
#include <optional>

/// The longest qualifying reps, and where they stand.
namespace lengthwise::calc {

/// A rep that a swimmer of one lane swims unbroken, `if time` lines left out.
struct LongestRep {
    Distance distance;                    ///< 0: none qualifies
    plan::Index item = plan::no_index;    ///< the leaf of Plan::items, the first of equals; no_index: none
    plan::Index session = plan::no_index; ///< of Plan::sessions

    /// For the walk: a longer one wins, rounds change nothing.
    void add(LongestRep const& more, std::int64_t rounds = 1);
};

/// A lane that a session does not name, and 0, swim its unlabelled lines.
[[nodiscard]] LongestRep longest_of_session(plan::Plan const& plan, plan::Index session, int lane);
[[nodiscard]] LongestRep longest_of_week(plan::Plan const& plan, plan::Week const& week, int lane);
[[nodiscard]] LongestRep longest_of_plan(plan::Plan const& plan, int lane);

/// The longest in the sessions that stand before this one, and in what `before` says
/// (then without item and session). Nothing where there is neither.
[[nodiscard]] std::optional<LongestRep> longest_before(plan::Plan const& plan, plan::Index session, int lane);

} // namespace lengthwise::calc
