#pragma once

#include "compose/climb.hpp"
#include "compose/problem.hpp"
#include "compose/request.hpp"

#include <cstdint>
#include <optional>
#include <vector>

/// docs/compose.md word by word, without any of the code that it is to be held against: every climb
/// there is, one after the other. Only the times of sessions are looked up.
namespace lengthwise::support {

struct Exhausted {
    bool too_many = false; ///< given up
    std::int64_t week_percent = 0;
    std::int64_t rep_percent = 0;     ///< 34 for a third where there is no limit
    std::vector<compose::Step> steps; ///< empty: there is none
    std::int64_t climbs = 0;          ///< that keep the limits
};

[[nodiscard]] Exhausted exhaust(compose::Request const& request, int build_weeks, std::int64_t patience);

/// For rooms that no slot has, so that reps and weeks get into each other's way. The tight one is not used.
[[nodiscard]] Exhausted exhaust(compose::Problem const& problem, std::int64_t patience);

} // namespace lengthwise::support
