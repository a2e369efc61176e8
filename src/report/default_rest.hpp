#pragma once

#include "plan/plan.hpp"
#include "units/duration.hpp"
#include "units/range.hpp"

#include <optional>

namespace lengthwise::report {

/// The rest that comes down from settings, if a section of the session with lines takes it.
[[nodiscard]] std::optional<Range<Duration>> default_rest(plan::Plan const& plan,
                                                          plan::Session const& session);

} // namespace lengthwise::report
