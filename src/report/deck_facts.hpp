#pragma once

#include "report/deck_view.hpp"

#include <string>
#include <vector>

namespace lengthwise::report {

/// What stands at a deck's head below the title, part by part: "lane 2", "longest today 750",
/// "before 600", "race 750 m", "kit: board". Figures are in the pool's unit; it stands beside
/// them where the race's does not say it.
[[nodiscard]] std::vector<std::string> deck_facts(Deck const& deck, bool ascii = false);

} // namespace lengthwise::report
