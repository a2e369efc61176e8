#pragma once

#include "report/deck_view.hpp"
#include "units/spell.hpp"

#include <cstddef>
#include <string>
#include <vector>

namespace lengthwise::report {

/// One line of a deck's table, cell by cell; an empty cell stays empty.
struct DeckLine {
    std::string number{};
    bool changed = false;
    std::vector<std::string> clock{};    ///< one for each lane shown; none where the clock does not run
    std::string rep{};                   ///< lengths of one rep
    std::string lengths{};               ///< of the line
    std::vector<spell::Figure> so_far{}; ///< one for each lane shown
    std::string set{};
    std::vector<std::string> below{}; ///< under the set
    bool swum = false;                ///< it is what they came for
};

/// A section under its heading; the totals at the end have none.
struct DeckBlock {
    std::string heading{};
    std::vector<DeckLine> lines{};
};

/// What the table holds for these places in Deck::lanes: the sections, then the totals.
[[nodiscard]] std::vector<DeckBlock> deck_blocks(Deck const& deck, std::vector<std::size_t> const& lanes,
                                                 bool ascii);

} // namespace lengthwise::report
