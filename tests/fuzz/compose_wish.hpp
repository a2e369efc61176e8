#pragma once

#include "compose/request.hpp"

#include <string_view>

namespace lengthwise::fuzz {

/// What a coach asks for, each figure from the next bytes: what can be typed, and beyond what is taken.
[[nodiscard]] compose::Request wish_of(std::string_view bytes);

/// Its figures lie where the everyday tests promise a plan with nothing to mend.
[[nodiscard]] bool is_usual(compose::Request const& request);

} // namespace lengthwise::fuzz
