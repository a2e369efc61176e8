#pragma once

#include "compose/ramp.hpp"
#include "compose/request.hpp"
#include "units/range.hpp"

#include <string>

namespace lengthwise::compose {

/// How fast it grows, which is what a coach looks for first; a comment.
[[nodiscard]] std::string growth_text(Ramp const& ramp);

/// Settings with a line feed: "pool 25m", "threshold 1:55 per 100m", "rest 20-30s".
[[nodiscard]] std::string pool_line(Pool const& pool);
[[nodiscard]] std::string threshold_line(Duration threshold, Pool const& pool);

[[nodiscard]] std::string rest_line();

/// Between reps that say nothing else.
inline constexpr Range<Duration> usual_rest{Duration::seconds(20), Duration::seconds(30)};

/// All that stands above the first week: what the plan is for, its cautions, settings and limits.
[[nodiscard]] std::string head_text(Request const& request, Ramp const& ramp);

} // namespace lengthwise::compose
