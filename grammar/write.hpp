#pragma once

#include "tree.hpp"

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace lengthwise::grammar {

/// The canonical text of a tree without Kind::bad nodes: one spelling, two blanks a
/// level, every comment kept, at most one blank line where there were some. Writing what was
/// parsed from the result gives the same bytes.
///
/// A comment on a line of its own stands as deep as what follows it (in a group as deep as
/// its items; at the end of the text where it was: at the margin, or as deep as the last
/// line); any other stands two blanks behind its line. A group that was written over several
/// lines has an item a line. In a pool whose length is not a whole number, a bare number
/// that stands for lengths (33 in 33 1/3 m) is written as lengths, but not in named sets.
[[nodiscard]] std::string write(Tree const& tree);

/// One item, pause or note line alone, without indentation and line end: "4 x 50 kick with board".
/// A group that was written over several lines stays on one, joined by " + ".
[[nodiscard]] std::string write_line(Tree const& tree, std::uint32_t node);

/// The same as `write`, and for each line the offset of what it begins with; a kept blank line
/// has that of the line behind it. Lines come in the order of their offsets.
struct Traced {
    std::string text;
    std::vector<std::uint32_t> origins;
};
[[nodiscard]] Traced write_traced(Tree const& tree);

/// A line of a text that is not as `write` has it. Lines are without their ends.
struct UntidyLine {
    std::uint32_t line = 1;              ///< counted from 1
    std::string_view is;                 ///< views the tree's text
    std::optional<std::string> would_be; ///< with LF where it becomes several; nothing where it goes
};

/// The lines that `write` would change, in order. None where only line ends or a byte
/// order mark differ.
[[nodiscard]] std::vector<UntidyLine> untidy_lines(Tree const& tree);

} // namespace lengthwise::grammar
