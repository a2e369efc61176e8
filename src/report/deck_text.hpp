#pragma once

#include "report/deck_view.hpp"
#include "report/paint.hpp"

#include <cstddef>
#include <string>

namespace lengthwise::report {

struct DeckStyle {
    std::size_t width = 80; ///< no line is wider, from 40 on; more than 80 is not used
    bool ascii = false;     ///< as in DeckOptions
};

/// The deck for a screen; ends in a line feed. Lanes stand side by side where there is room
/// for 80 columns and their sets, else one after the other.
[[nodiscard]] std::string deck_text(Deck const& deck, DeckStyle const& style, Paint const& paint);

} // namespace lengthwise::report
