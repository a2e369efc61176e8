#pragma once

#include "grammar/tree.hpp"

#include <string>
#include <string_view>

namespace lengthwise::test {

/// A tree on one line: `section:drill{name"Catch" item*4{distance=50 mode:drill}}`.
/// `*4` is an item's count, `:word` a word, `=figure` a figure with its unit as it
/// was written, `"…"` a string.
[[nodiscard]] std::string dump(grammar::Tree const& tree);

/// The name of a node's kind, as in tree.hpp.
[[nodiscard]] std::string_view kind_name(grammar::Kind kind);

} // namespace lengthwise::test
