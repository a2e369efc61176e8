#pragma once

#include "cards/picture.hpp"
#include "cards/type.hpp"

namespace lengthwise::cards {

/// A page that shows whether the printer keeps to the scale: two bars of 50 mm, and a frame at the margin.
[[nodiscard]] Picture test_sheet(Size const& paper, double margin, Measure& measure);

} // namespace lengthwise::cards
