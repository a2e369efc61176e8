#pragma once

#include "report/chart_view.hpp"

#include <cstdint>
#include <string>

namespace lengthwise::report {

enum class ChartGround : std::uint8_t {
    white, ///< a picture of its own, in black on white
    page   ///< part of a page, in the page's colour of text
};

/// The chart as an SVG element (SVG 1.1, W3C Recommendation of 2011): above the longest rep and the
/// race, below the weeks' volume. It needs no colour; what it shows stands in its title and
/// description too. Ends in a line feed.
[[nodiscard]] std::string chart_svg(Chart const& chart, ChartGround ground);

} // namespace lengthwise::report
