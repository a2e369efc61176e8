#pragma once

#include "plan/plan.hpp"
#include "units/pool.hpp"

#include <string>
#include <vector>

namespace lengthwise::report {

/// What a screen about a session is headed with, part by part: "Long hall",
/// "Thu 29 April 2027, 07:00, 45 min", "pool 33⅓ m". Parts of which nothing is known are
/// empty; one of the first two never is.
[[nodiscard]] std::vector<std::string> session_title(plan::Plan const& plan, plan::Index session,
                                                     Pool const& pool, bool ascii = false);

} // namespace lengthwise::report
