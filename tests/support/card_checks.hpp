#pragma once

#include "cards/card.hpp"
#include "cards/picture.hpp"
#include "cards/type.hpp"
#include "report/card_view.hpp"

#include <string>
#include <vector>

/// What has to be true of every card that was laid out.
namespace lengthwise::support {

/// Letters as wide as those of a common typeface, about; no font is needed for it.
class FakeMeasure final : public cards::Measure {
  public:
    double width(std::string_view words, cards::Weight weight) override;
};

/// What is wrong with a card; empty when nothing is: a text outside the safe edge or in the hole's room,
/// two texts over each other, a text smaller than can be read from `distance`.
[[nodiscard]] std::string fault_of(cards::Picture const& picture, double distance, bool hole);

/// What of the session is on none of its cards: a count, an amount, a rest, a note, a sum.
[[nodiscard]] std::string lost_on(cards::Laid const& laid, report::Card const& card);

} // namespace lengthwise::support
