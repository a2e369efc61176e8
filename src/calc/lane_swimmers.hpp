#pragma once

#include "calc/lane.hpp"
#include "calc/timeline.hpp"
#include "plan/plan.hpp"

#include <cstdint>
#include <optional>
#include <vector>

namespace lengthwise::calc {

/// The swimmers who name a lane and have a threshold, the fastest in this pool first, of equals
/// in the order of the text: of Plan::swimmers.
[[nodiscard]] std::vector<plan::Index> lane_order(plan::Plan const& plan, int lane, Pool const& pool);

/// A rep of a distance, unbroken: what lane arithmetic is about. A broken one is none, as swimmers sort
/// themselves at its breaks; nor is a timed one, which all end together.
struct LaneRep {
    plan::Index item = 0;  ///< the leaf that it is of
    plan::Index terms = 0; ///< it is swum with
    Distance distance;
};

/// Those of a leaf that differ in distance or terms from the one before.
[[nodiscard]] std::vector<LaneRep> lane_reps(plan::Plan const& plan, plan::Index leaf);

/// All of a line, what it holds included; several places that share a set share its reps. Of a line that
/// holds thousands of items, the first thousand's.
[[nodiscard]] std::vector<LaneRep> lane_reps_of_line(plan::Plan const& plan, plan::Index line);

/// How a swimmer goes through it at his own threshold: the expected pace of the whole rep, over his share of
/// the distance. `around` is the pacing of his lane in the session.
[[nodiscard]] std::optional<LaneSwim> swim_of(plan::Plan const& plan, Pacing const& around,
                                              plan::Swimmer const& swimmer, LaneRep const& rep);

} // namespace lengthwise::calc
