#pragma once

#include <cstddef>
#include <string>
#include <string_view>

/// A line of a file as findings show it: safe, cut to size, with the place to mark.
namespace lengthwise::report {

/// Cells of `   26 | ` before the line.
inline constexpr std::size_t gutter = 8;

/// Text of a line from its first byte on, safe to print, tabs as blanks up to the next
/// multiple of 8 cells. `from` is the cell it begins in.
[[nodiscard]] std::string shown(std::string_view text, std::size_t from = 0);

struct Excerpt {
    std::string line;       ///< at most the width, cut at blanks where it can be, with `…` where it was
    std::size_t before = 0; ///< cells before the mark
    std::size_t marked = 1; ///< cells under it, at least 1
};

/// What a line of at most `width` cells shows around the bytes [begin, begin + size), which
/// end with the line at the latest.
[[nodiscard]] Excerpt excerpt_of(std::string_view line, std::size_t begin, std::size_t size,
                                 std::size_t width, bool ascii = false);

/// Folded text whose further lines stand under its first one, behind the gutter.
[[nodiscard]] std::string hung(std::string_view folded);

} // namespace lengthwise::report
