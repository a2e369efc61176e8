#pragma once

#include "compose/ramp.hpp"
#include "compose/request.hpp"

#include <string>

namespace lengthwise::compose {

/// All that stands above the first week: what the plan is for, its cautions, settings and limits.
[[nodiscard]] std::string head_text(Request const& request, Ramp const& ramp);

} // namespace lengthwise::compose
