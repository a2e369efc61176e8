#pragma once

#include "compose/page.hpp"
#include "compose/ramp.hpp"
#include "compose/request.hpp"

#include <string>
#include <vector>

namespace lengthwise::compose {

/// The plan as the notation has it, in its neat spelling, with comments where a coach would want a reason.
[[nodiscard]] std::string plan_text(Request const& request, Ramp const& ramp, std::vector<Week> const& weeks);

} // namespace lengthwise::compose
