#pragma once

#include "diagnostic.hpp"
#include "source.hpp"
#include "tree.hpp"

namespace lengthwise::grammar {

struct ParseResult {
    Tree tree;
    Diagnostics findings; ///< errors only, codes `syntax-…`; empty means the text is well formed
};

/// Reads one file's text. Never throws for bad input and never gives up: a line
/// that cannot be read becomes a Kind::bad node and reading goes on behind it.
/// The tree views `source`'s text. Offsets count from source.base().
[[nodiscard]] ParseResult parse(Source const& source);

} // namespace lengthwise::grammar
