#pragma once

#include "cards/layout.hpp"
#include "cards/picture.hpp"
#include "cards/strip.hpp"
#include "report/card_view.hpp"

#include <optional>
#include <string>
#include <vector>

/// A session laid out on one card, or on as many as it needs.
namespace lengthwise::cards {

struct Wanted {
    Size size;
    double distance = 700; ///< mm to the reader's eyes
    bool hole = false;
    bool back = false; ///< the back is printed too
};

struct Laid {
    std::vector<Picture> fronts;
    Scale scale;
    std::size_t level = 0;        ///< of `levels`: what was given up
    std::optional<Strip> strip{}; ///< where there is one
    std::string problem;          ///< why there is no card; empty when there is one
};

/// As large as fits, never smaller than can be read at the distance; see docs/cards.md.
[[nodiscard]] Laid lay_out(report::Card const& card, Wanted const& wanted, Measure& measure);

} // namespace lengthwise::cards
