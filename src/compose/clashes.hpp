#pragma once

#include "compose/calendar.hpp"
#include "compose/request.hpp"
#include "compose/ways_out.hpp"

#include <vector>

namespace lengthwise::compose {

/// Where a wish clashes for which there is no ramp; `calendar` is that of the request and has a week to
/// build.
[[nodiscard]] std::vector<Clash> clashes_of(Request const& request, Calendar const& calendar);

} // namespace lengthwise::compose
