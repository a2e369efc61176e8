#pragma once

#include <string>
#include <string_view>

namespace lengthwise::report {

/// Text for the inside of a line of Markdown (CommonMark), where it stands behind a heading's or a list
/// item's sign or a word: what would be markup or HTML there is escaped. What a terminal must not see is
/// spelled out.
[[nodiscard]] std::string markdown(std::string_view text);

} // namespace lengthwise::report
