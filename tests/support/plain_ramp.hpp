#pragma once

#include "compose/ramp.hpp"
#include "compose/request.hpp"

#include <random>

/// Ramps that are not the best ones: sessions have to be sound for any.
namespace lengthwise::support {

/// A wish, by chance: pools of 25 m, 25 yd, 33 1/3 m and 50 m, races of 300 m to 3 800 m, one to four days,
/// 3 to 40 weeks, with and without threshold, kit and closed days.
[[nodiscard]] compose::Request random_request(std::mt19937& random);

/// Reps and weeks that grow without haste until race day; the days' sizes keep the rules for a day.
[[nodiscard]] compose::Ramp plain_ramp(compose::Request const& request);

} // namespace lengthwise::support
