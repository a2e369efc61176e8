#pragma once

#include "calc/lane_hand.hpp"
#include "plan/plan.hpp"

#include <optional>
#include <string>

namespace lengthwise::report {

/// "00 45 30 15"; many marks end in `…` (or `...`).
[[nodiscard]] std::string marks_text(calc::Hand const& hand, bool ascii = false);

/// "hand 00 30": what the pace clock shows at each start of a line, its set begun at 00. Empty for
/// a line without such a set, or with one start only.
[[nodiscard]] std::string hand_text(plan::Plan const& plan, std::optional<calc::SendOffs> const& set,
                                    bool ascii = false);

} // namespace lengthwise::report
