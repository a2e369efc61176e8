#pragma once

#include "compose/page.hpp"
#include "compose/ramp.hpp"
#include "compose/request.hpp"

#include <string>
#include <vector>

namespace lengthwise::compose {

/// What weeks say that stand in a plan with a head of its own.
struct WeeksHead {
    std::string comment{};               ///< lines above the first one
    std::vector<std::string> settings{}; ///< of each, with a line feed
};

/// The weeks alone, a blank line before each.
[[nodiscard]] std::string weeks_text(Request const& request, Ramp const& ramp, std::vector<Week> const& weeks,
                                     WeeksHead const& head = {});

/// The plan as the notation has it, in its neat spelling, with comments where a coach would want a reason.
[[nodiscard]] std::string plan_text(Request const& request, Ramp const& ramp, std::vector<Week> const& weeks);

} // namespace lengthwise::compose
