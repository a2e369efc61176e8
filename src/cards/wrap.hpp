#pragma once

#include "cards/type.hpp"

#include <string>
#include <string_view>
#include <vector>

/// Words on lines.
namespace lengthwise::cards {

/// Text of one weight.
struct Piece {
    std::string words;
    Weight weight = Weight::medium;
};

/// Broken at blanks into lines of at most `width` em; a word that is longer than a line is broken
/// inside. Empty text has no lines.
[[nodiscard]] std::vector<std::string> wrap(std::string_view text, Weight weight, double width,
                                            Measure& measure);

/// The same, and the lines about equally long.
[[nodiscard]] std::vector<std::string> wrap_evenly(std::string_view text, Weight weight, double width,
                                                   Measure& measure);

/// A line of pieces that stand next to each other.
struct Placed {
    Piece piece;
    double at = 0; ///< em from the line's beginning
    double width = 0;
};
using PlacedLine = std::vector<Placed>;
[[nodiscard]] PlacedLine placed_alone(Piece piece, Measure& measure);

/// Pieces joined by " · ", broken between them where there is room for a whole one, else inside.
[[nodiscard]] std::vector<PlacedLine> flow_pieces(std::vector<Piece> const& pieces, double width,
                                                  Measure& measure);

} // namespace lengthwise::cards
