#pragma once

#include "cards/columns.hpp"
#include "cards/layout.hpp"
#include "report/card_view.hpp"

#include <cstdint>
#include <string>
#include <vector>

/// What stands between a card's head and foot, line by line, before it is known which card a line
/// comes to stand on.
namespace lengthwise::cards {

/// How well a card may end before a line.
enum class Cut : std::uint8_t {
    torn,   ///< inside a row or group: only where no card could hold it whole
    item,   ///< between rows
    section ///< between sections
};

struct BodyLine {
    double advance = 0; ///< from the baseline above
    double rise = 0;    ///< what it takes above its own baseline
    double fall = 0;    ///< and below it
    double rule = 0;    ///< a hairline so far above the baseline; 0: none
    Cut cut = Cut::torn;
    bool of_set = false;             ///< in the large size
    bool heading = false;            ///< of a section
    bool note = false;               ///< running text
    bool strip = false;              ///< the longest rep begins here
    std::vector<Text> texts;         ///< y from the baseline
    std::vector<std::uint32_t> bars; ///< of Body::bars: those that pass by
    std::size_t section = 0;
    std::string const* clock = nullptr;           ///< of the row that begins here
    report::CardRow const* swum_before = nullptr; ///< the last whole row above
};

struct Bar {
    double x = 0;
    double width = 0;
};

struct Body {
    std::vector<BodyLine> lines;
    std::vector<Bar> bars;
    Columns columns;
    bool halves = true; ///< equal parts stand at the right
};

[[nodiscard]] Body body_of(report::Card const& card, Setting const& setting, Measure& measure);

/// A section's heading again, where it goes on on the next card.
[[nodiscard]] BodyLine continued(report::Card const& card, BodyLine const& line, Setting const& setting,
                                 Measure& measure);

} // namespace lengthwise::cards
