#pragma once

#include "cards/body.hpp"
#include "cards/flow.hpp"
#include "cards/layout.hpp"
#include "cards/picture.hpp"
#include "cards/strip.hpp"
#include "report/card_view.hpp"

#include <array>
#include <cstddef>
#include <optional>
#include <vector>

namespace lengthwise::cards {

inline constexpr std::size_t most_cards = 99;

/// One way to lay the session out, tried.
struct Trial {
    Setting setting;
    Body body;
    Rooms rooms;
    std::optional<Strip> strip;
    std::vector<std::size_t> starts;
    std::size_t head_lines = 0;
    bool sums_fit = true; ///< at the foot of each

    [[nodiscard]] std::size_t cards() const { return starts.empty() ? most_cards + 1 : starts.size(); }
    [[nodiscard]] std::size_t lines() const { return body.lines.size(); }
    /// Lines that larger type must not break: of headings, of the set, and small ones below it. Notes may.
    [[nodiscard]] std::array<std::size_t, 3> firm_lines() const {
        std::array<std::size_t, 3> firm{head_lines, 0, 0};
        for (auto const& line : body.lines) {
            firm[line.heading ? 0 : line.of_set ? 1 : 2] += line.note ? 0 : 1;
        }
        return firm;
    }
    [[nodiscard]] bool breaks_more_than(Trial const& other) const {
        auto const ours = firm_lines();
        auto const theirs = other.firm_lines();
        return ours[0] > theirs[0] || ours[1] > theirs[1] || ours[2] > theirs[2];
    }
};

/// What the longest rep's strip takes above itself and below.
[[nodiscard]] inline double strip_gap(Setting const& setting) {
    constexpr double capitals = 0.5;
    return capitals * setting.scale.capital;
}

/// One of the cards onto which it flows, by its place.
[[nodiscard]] Picture draw_card(report::Card const& card, Trial const& trial, std::size_t index,
                                Measure& measure);

} // namespace lengthwise::cards
