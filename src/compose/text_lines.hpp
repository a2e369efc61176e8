#pragma once

#include "compose/page.hpp"
#include "units/pool.hpp"

#include <string>

namespace lengthwise::compose {

/// A line as the notation writes it, without the notes above it.
[[nodiscard]] std::string spelled(Line const& line, Pool const& pool);

} // namespace lengthwise::compose
