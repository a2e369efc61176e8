#pragma once

#include "cards/card.hpp"
#include "cards/picture.hpp"
#include "cards/type.hpp"
#include "report/card_view.hpp"

#include <cstdint>
#include <set>
#include <string>
#include <vector>

/// What has to be true of every card that was laid out.
namespace lengthwise::support {

/// Letters as wide as those of a common typeface, about; no font is needed for it.
class FakeMeasure final : public cards::Measure {
  public:
    double width(std::string_view words, cards::Weight weight) override;
};

/// Where a card has room for one.
enum class Hole : std::uint8_t { none, right, left };

/// What is wrong with a card; empty when nothing is: a text outside the safe edge or in the hole's room,
/// two texts over each other, a text smaller than can be read from `distance`.
[[nodiscard]] std::string fault_of(cards::Picture const& picture, double distance, Hole hole);

/// What of the session is on none of its cards: a count, an amount, a rest, a note, a sum; the caution,
/// unless it stands on the back.
[[nodiscard]] std::string lost_on(cards::Laid const& laid, report::Card const& card, bool caution);

/// Cards of so many random sessions, in all sizes, with and without hole and back.
struct CardCount {
    int sessions = 0;
    int laid = 0;
    int several = 0; ///< of them on more than one card
    int backs = 0;
    int refusals = 0;                ///< for want of room
    std::set<std::string> refused{}; ///< and of which sizes
    std::string fault{};             ///< the first, with its seed and size; then it stops
};
[[nodiscard]] CardCount check_cards(int sessions, std::uint64_t seed, cards::Measure& measure);

} // namespace lengthwise::support
