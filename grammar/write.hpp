#pragma once

#include "tree.hpp"

#include <cstdint>
#include <string>

namespace lengthwise::grammar {

/// The canonical text of a tree without Kind::bad nodes: one spelling, two blanks a
/// level, every comment kept, at most one blank line where there were some. Writing what was
/// parsed from the result gives the same bytes.
[[nodiscard]] std::string write(Tree const& tree);

/// One item, pause or note line alone, without indentation and line end: "4 x 50 kick with board".
/// A group that was written over several lines stays on one, joined by " + ".
[[nodiscard]] std::string write_line(Tree const& tree, std::uint32_t node);

} // namespace lengthwise::grammar
