#pragma once

#include "plan/plan.hpp"
#include "tailor/late.hpp"

#include <cstddef>
#include <vector>

/// What stands behind the row swum last, and what of it may go.
namespace lengthwise::tailor {

/// All that is left, nothing of it timed or left out yet.
[[nodiscard]] Late late_lines(plan::Plan const& plan, LateWish const& wish);

/// The row of each lane's longest qualifying rep, by place in Late::lanes: of equals one in main before
/// others, then the first. no_index where nothing qualifies. It may have been swum already.
[[nodiscard]] std::vector<plan::Index> long_rows(plan::Plan const& plan, LateWish const& wish,
                                                 Late const& late);

/// Rows that may be left out, by place in Late::lines, in the order in which they go.
[[nodiscard]] std::vector<std::size_t>
dropping_order(plan::Plan const& plan, std::vector<plan::Index> const& long_rows, Late const& late);

} // namespace lengthwise::tailor
