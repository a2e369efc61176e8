#pragma once

#include "grammar/bundle.hpp"

#include <cstddef>
#include <cstdint>
#include <string>
#include <string_view>

namespace lengthwise::cli {

/// What stands behind a week, and what is in it.
struct Rest {
    Span span; ///< to the end of the file; empty where nothing stands there
    std::size_t sessions = 0;
    std::size_t remarks = 0; ///< comments and notes
};

/// All behind the week of that number, which is there. Comments just above the next week, and not deeper than
/// it, belong to it; blank lines before them do not.
[[nodiscard]] Rest behind_week(grammar::File const& file, std::uint32_t number);

/// The file's text with `weeks` (lines, a blank one first) in the place of the rest; all before it stays
/// byte for byte.
[[nodiscard]] std::string with_weeks(grammar::File const& file, Rest const& rest, std::string_view weeks);

} // namespace lengthwise::cli
