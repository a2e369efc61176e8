#pragma once

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

namespace lengthwise::report {

/// A spelled line on lines of at most `width` cells (4 at least), each but the first hanging by
/// two. It breaks where it is read in one breath: before `/`, `+`, `rest` and `on` and behind
/// the comma before a selector, outside strings; else at a blank, and inside a word only when it is longer
/// than a line.
[[nodiscard]] std::vector<std::string> fold_set(std::string_view set, std::size_t width);

} // namespace lengthwise::report
