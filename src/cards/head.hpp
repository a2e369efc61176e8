#pragma once

#include "cards/layout.hpp"
#include "report/card_view.hpp"

#include <cstddef>
#include <string>
#include <vector>

/// The head and the foot of a card.
namespace lengthwise::cards {

/// Which of several cards of one session it is.
struct Share {
    std::size_t number = 1;
    std::size_t of = 1;
    std::string so_far{};         ///< what the cards before hold: "2800 m"
    std::string lengths_so_far{}; ///< "112"
    std::string total{};          ///< what this one ends with, where it is not the last
    std::string lengths{};

    [[nodiscard]] bool first() const { return number == 1; }
    [[nodiscard]] bool last() const { return number == of; }
    [[nodiscard]] std::string label() const { return std::to_string(number) + "/" + std::to_string(of); }
};

struct Head {
    std::vector<Mark> marks;
    double bottom = 0; ///< of its rule
};
[[nodiscard]] Head head_of(report::Card const& card, Share const& share, Setting const& setting,
                           Measure& measure);

struct Foot {
    std::vector<Mark> marks;
    double top = 0;   ///< of its rule, or of the caution above it
    bool fits = true; ///< its sums have room beside each other
};
[[nodiscard]] Foot foot_of(report::Card const& card, Share const& share, Setting const& setting,
                           Measure& measure);

} // namespace lengthwise::cards
