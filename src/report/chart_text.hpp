#pragma once

#include "report/chart_view.hpp"
#include "report/paint.hpp"

#include <cstddef>
#include <string>

namespace lengthwise::report {

struct ChartStyle {
    std::size_t width = 80; ///< from 40 on; below 60 the two halves stand one above the other
    bool ascii = false;
};

/// The chart for a screen, a row a week; ends in a line feed. One mark of a longest rep is a length,
/// or a round number of them where there is no room for each.
[[nodiscard]] std::string chart_text(Chart const& chart, ChartStyle const& style, Paint const& paint);

} // namespace lengthwise::report
