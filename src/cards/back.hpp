#pragma once

#include "cards/layout.hpp"
#include "cards/strip.hpp"
#include "report/card_view.hpp"

#include <optional>
#include <string>
#include <vector>

namespace lengthwise::cards {

/// The other side of a card, or several when not all columns have room on one. `strip` is the front's: long
/// reps have a line where it has a row. Its hole is at the left, its foot is free for notes. Empty where a
/// single column has no room.
[[nodiscard]] std::vector<Picture> backs_of(report::Card const& card, std::optional<Strip> const& strip,
                                            Size const& size, double distance, bool hole, Measure& measure);

} // namespace lengthwise::cards
