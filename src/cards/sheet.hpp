#pragma once

#include "cards/picture.hpp"

#include <cstddef>
#include <optional>
#include <string_view>
#include <vector>

/// Cards on sheets of paper: which of them lies where, on both sides. Pure geometry, mm.
namespace lengthwise::cards {

/// ISO 216 and ANSI; upright.
inline constexpr Size a4{210, 297};
inline constexpr Size letter{215.9, 279.4};

/// The least that printers leave white is about 4 mm, with some 6 (docs/cards.md, "Paper").
inline constexpr double usual_margin = 6;

/// A size that a card may have: a share of the sheet inside its margin, or one of its own.
struct CardSize {
    std::string_view name;
    std::size_t share = 0; ///< 1, 2, 4 or 8 of them fill a sheet; 0: `size` holds
    Size size{};
};
[[nodiscard]] std::vector<CardSize> const& card_sizes();
[[nodiscard]] CardSize const* find_card_size(std::string_view name);

/// The card itself on this paper.
[[nodiscard]] Size size_on(CardSize const& card, Size const& paper, double margin);

/// How cards lie on a sheet.
struct Grid {
    Size paper; ///< as it is turned
    Size card;
    std::size_t columns = 0;
    std::size_t rows = 0;
    Point origin; ///< of the first card

    [[nodiscard]] std::size_t cards() const { return columns * rows; }
    [[nodiscard]] bool landscape() const { return paper.width > paper.height; }
};

/// As many as there is room for inside the margin, in the middle of the sheet; it is turned if it then
/// holds more. Nothing where not even one fits.
[[nodiscard]] std::optional<Grid> impose(Size const& card, Size const& paper, double margin);

/// Where a card lies, by its number from 0, in reading order.
[[nodiscard]] Point place(Grid const& grid, std::size_t number);

/// Where its back lies on the other side of a sheet that is turned over its long edge, and whether the
/// back stands on its head there. A card that was cut out is turned over like a page of a book: the hole
/// is at the right in front, at the left behind.
struct BackPlace {
    Point at;
    bool upside_down = false;
};
[[nodiscard]] BackPlace back_place(Grid const& grid, std::size_t number);

/// Where to cut, for the front alone: two sides never match to the millimetre.
[[nodiscard]] std::vector<Line> cut_marks(Grid const& grid);

} // namespace lengthwise::cards
