#pragma once

#include "cli/console.hpp"
#include "cli/files.hpp"
#include "cli/options.hpp"

namespace lengthwise::cli {

/// The command: a plan's sessions on cards, the cards on sheets, the sheets as a PDF (or one picture as a
/// PNG) to `console.out`. `fonts` is a folder to look in instead of the usual ones, or null.
[[nodiscard]] int make_cards(Cards const& options, char const* fonts, Files& files, Console& console);

} // namespace lengthwise::cli
