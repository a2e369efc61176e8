#pragma once

#include "plan/plan.hpp"
#include "report/choose.hpp"
#include "report/summary.hpp"
#include "units/distance.hpp"

#include <optional>
#include <vector>

/// The swimmers of a plan side by side: what each swims in a scope, and at which pace.
namespace lengthwise::report {

struct SwimmerFigures {
    plan::Swimmer const* swimmer = nullptr; ///< as the file names him
    int lane = 0;                           ///< whose lines he swims; 0: nobody has lines of his own
    Figures figures{};                      ///< his share, at his pace
    bool has_lengths = false;
    bool has_lanes = false;                ///< lines with a lane label stand in the scope
    std::optional<plan::Threshold> pace{}; ///< that all sessions of the scope are timed at
    bool several_paces = false;            ///< the sessions have different ones
};

/// In the plan's order: all swimmers, or those of one lane with those who have none. One without a
/// lane swims in the lane asked for, else in the scope's lowest. `only`: him alone.
[[nodiscard]] std::vector<SwimmerFigures> swimmer_figures(plan::Plan const& plan, Scope scope,
                                                          std::optional<int> lane,
                                                          plan::Swimmer const* only = nullptr);

/// Nobody to show, and why; empty where there is somebody.
[[nodiscard]] std::string no_swimmers(plan::Plan const& plan, std::optional<int> lane);

} // namespace lengthwise::report
