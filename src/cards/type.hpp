#pragma once

#include "cards/picture.hpp"

#include <string_view>

/// Type: how wide letters are, how large they have to be.
namespace lengthwise::cards {

/// How wide a text is, in em. The layout knows no more about fonts than this.
class Measure {
  public:
    Measure() = default;
    Measure(Measure const&) = delete;
    Measure& operator=(Measure const&) = delete;
    virtual ~Measure() = default;
    [[nodiscard]] virtual double width(std::string_view words, Weight weight) = 0;
};

/// The height of capitals and figures, the reach of letters over and under the line: em.
inline constexpr double capital_of_em = 0.727;
inline constexpr double rise_of_em = 0.80;
inline constexpr double fall_of_em = 0.21;

/// What is small is as much smaller as 16 minutes of arc are than 22.
inline constexpr double small_of_capital = 0.727;

/// The height at which capitals are seen under so many minutes of arc: 2 d tan(a / 2).
/// The set is shown at 22', all else at 16': the preferred and the least height of ISO 9241
/// (docs/cards.md, "Type").
[[nodiscard]] double height_of_arc(double distance_mm, double minutes);
inline constexpr double set_arc = 22;
inline constexpr double small_arc = 16;
inline constexpr double largest_arc = 31;

/// The two sizes of one card, mm.
struct Scale {
    double capital = 0; ///< of the set

    [[nodiscard]] double em() const { return capital / capital_of_em; }
    [[nodiscard]] double small() const { return capital * small_of_capital; }
    [[nodiscard]] double small_em() const { return small() / capital_of_em; }
};

} // namespace lengthwise::cards
