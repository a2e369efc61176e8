#pragma once

#include "plan/plan.hpp"
#include "units/pool.hpp"

#include <cstddef>
#include <string>

namespace lengthwise::report {

/// What one rep of a line is, in lengths, short enough to take in at a glance: "8" for
/// `4 x 200`, "4,8,4" for a ladder, "8+2" for one round of a group, inner counts left out;
/// "1–16", from the shortest to the longest, where that would take more than `room` cells.
/// A timed rep shows its time, "3min". Empty without a pool length and for pauses and notes.
[[nodiscard]] std::string rep_lengths(plan::Plan const& plan, Pool const& pool, plan::Item const& item,
                                      std::size_t room, bool ascii = false);

} // namespace lengthwise::report
