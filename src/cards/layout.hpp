#pragma once

#include "cards/picture.hpp"
#include "cards/type.hpp"

#include <array>

/// What holds for every card: edges, rules, and what gives way when there is little room. Millimetres.
/// The reasons stand in docs/cards.md.
namespace lengthwise::cards {

inline constexpr double safe_edge = 5;  ///< no text is nearer to the cut
inline constexpr double frame_edge = 2; ///< the frame's way in from the cut
inline constexpr double frame_line = 0.3;
inline constexpr double frame_radius = 3.5;
inline constexpr double heavy_rule = 0.7;
inline constexpr double hair_rule = 0.25;

/// A hole of 6 mm, as punches make them, for a cord.
inline constexpr double hole_radius = 3;
inline constexpr double hole_centre = 9.5; ///< from top and side
inline constexpr double hole_room = 15.1;  ///< what lines beside it leave free, from the side
inline constexpr double hole_depth = 14;   ///< lines that begin further down are free of it

// Shares of an em or of a capital.
inline constexpr double figures_air = 0.4;  ///< em between figures and words
inline constexpr double times_air = 0.07;   ///< em on both sides of ×
inline constexpr double lengths_air = 0.32; ///< em between recovery and lengths
inline constexpr double words_air = 0.4;    ///< em between words and recovery
inline constexpr double bar_lane = 0.6;     ///< capitals
inline constexpr double bar_width = 0.28;   ///< capitals
inline constexpr double optional_bar = 0.5; ///< mm
inline constexpr double small_pitch = 1.6;  ///< small capitals from one small line to the next
inline constexpr double rule_gap = 0.3;     ///< capitals between text and a rule

/// What is shown. In the order in which it is given up when a card is short: lines closer together,
/// the strip's label, lines closer still, the pace clock's hand, the head's third line, the lengths.
struct Level {
    double pitch = 1.55; ///< capitals from one line of the set to the next
    bool strip_label = true;
    bool hand = true;
    bool third_line = true;
    bool lengths = true;
};
inline constexpr double largest_pitch = 1.75;
inline constexpr std::array<Level, 6> levels{{{1.55, true, true, true, true},
                                              {1.55, false, true, true, true},
                                              {1.45, false, true, true, true},
                                              {1.45, false, false, true, true},
                                              {1.45, false, false, false, true},
                                              {1.45, false, false, false, false}}};

/// One way to lay a card out.
struct Setting {
    Size size;
    Scale scale;
    Level level;
    bool hole = false;
    bool clock_column = false; ///< leave times before each line, not once a section
    bool back = false;         ///< the caution stands there

    [[nodiscard]] double right() const { return size.width - safe_edge; }
};

/// The line around a card and, if one is wanted, the mark for its hole: at the right in front, behind at the
/// left.
void frame(Picture& picture, bool hole, bool behind);

} // namespace lengthwise::cards
