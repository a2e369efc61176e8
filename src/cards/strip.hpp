#pragma once

#include "cards/layout.hpp"
#include "report/card_view.hpp"
#include "units/distance.hpp"

#include <cstdint>
#include <string>
#include <vector>

namespace lengthwise::cards {

/// Boxes to tick off the longest rep by: one a touch at the start, two lengths; four or more where
/// that would be many.
struct Strip {
    std::string label;                 ///< "750 m: tick each touch at the start"; may be left out
    std::int64_t step = 2;             ///< lengths of a cell
    std::vector<std::string> cells;    ///< lengths swum at each cell's end
    std::vector<std::string> row_ends; ///< what has been swum at each row's end
    std::size_t columns = 0;
    Distance row; ///< what a row holds
    double cell_width = 0;
    double cell_height = 0; ///< the least; `most_height` is the largest
    double most_height = 0;
    double label_height = 0; ///< 0 without one

    [[nodiscard]] double height() const {
        return label_height + cell_height * static_cast<double>(row_ends.size());
    }
};

[[nodiscard]] Strip strip_of(report::CardStrip const& strip, Setting const& setting, Measure& measure);

/// Draws it, its top at `y`.
void draw(Strip const& strip, double y, Setting const& setting, Measure& measure, std::vector<Mark>& marks);

} // namespace lengthwise::cards
