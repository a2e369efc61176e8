#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace lengthwise::test {

/// The errors of a text as the parser words them, one a line:
/// `3:5 syntax-word: no word "crwal"; did you mean "crawl"?`, behind it ` = hint` and
/// ` [1:1 related]` where there are any. Places are line and byte.
[[nodiscard]] std::string complaints(std::string const& text);

/// The same of lines under a heading, which count from 1:1.
[[nodiscard]] std::string line_complaints(std::string const& lines);

struct Wrong {
    std::string text;
    std::string complaints;
};

/// Checks rows of lines under a heading against their errors, word for word.
void check_lines(std::vector<Wrong> const& rows);
/// Checks rows of whole files.
void check_files(std::vector<Wrong> const& rows);

} // namespace lengthwise::test
