#pragma once

#include "compose/request.hpp"

#include <random>
#include <string>

namespace lengthwise::support {

/// A wish of any kind that is no refusal: all pools, race distances, 1 to 40 weeks, one to four days, some
/// with closed days, limits or no threshold. Many cannot be met.
[[nodiscard]] compose::Request random_wish(std::mt19937& random);

/// What it asks for, to be found again when a test complains.
[[nodiscard]] std::string said(compose::Request const& request);

} // namespace lengthwise::support
