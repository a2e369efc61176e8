#pragma once

#include "cards/layout.hpp"
#include "report/card_view.hpp"

namespace lengthwise::cards {

/// Where the columns of a card's rows stand, from the widest of what is in them. mm from the card's edge.
struct Columns {
    double bars = 0; ///< the first bar; each nested one a lane further
    double lane = 0; ///< a bar with its air; 0 without any
    double count_right = 0;
    double times = 0;
    double amount = 0; ///< distances, flush left
    double words = 0;  ///< what is swum, and clocks
    double text = 0;   ///< notes: the same, but on the narrowest cards under the figures
    double recovery_right = 0;
    double right = 0;         ///< lengths, flush right
    double widest_amount = 0; ///< what is wider runs over into the words

    [[nodiscard]] double bar(std::size_t depth) const { return bars + lane * static_cast<double>(depth); }
};

[[nodiscard]] Columns columns_of(report::Card const& card, Setting const& setting, Measure& measure);

} // namespace lengthwise::cards
