#pragma once

#include "grammar/bundle.hpp"

#include <string>
#include <string_view>

namespace lengthwise::cli {

/// A plan's text with `line` ("threshold 1:55 per 100m") as the file's own threshold: in the place
/// of the one that is there, whose comment and blanks stay, else on a line of its own behind
/// `pool`, else behind the last statement of the head, else at the beginning. All else stays as
/// it is, byte for byte; a new line ends as the one before it does.
[[nodiscard]] std::string with_threshold(grammar::File const& file, std::string_view line);

} // namespace lengthwise::cli
