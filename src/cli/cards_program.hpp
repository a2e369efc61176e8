#pragma once

#include "cli/run.hpp"

#include <string>
#include <vector>

namespace lengthwise::cli {

/// Hands over to lengthwise-cards: the one beside this program, else the one on the path. It takes the same
/// words and takes this process's place, so that it answers itself. Without one that is said.
[[nodiscard]] CardsCommand cards_program(std::vector<std::string> const& words);

} // namespace lengthwise::cli
