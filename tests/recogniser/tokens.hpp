#pragma once

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

/// The terminals of grammar/notation.ebnf, cut out of a text by hand.
namespace lengthwise::recogniser {

enum class Sort {
    word,       ///< letters and inner hyphens, in small letters
    number,     ///< NUM
    decimal,    ///< 12.5
    fraction,   ///< 1/3
    percent,    ///< PERCENT
    ordinal,    ///< ORDINAL
    clock,      ///< CLOCK, or what looks like one
    date,       ///< four, two and two digits
    string,     ///< STRING
    sign,       ///< one of ( ) + - , / : = ×
    line_end,   ///< the end of a line that holds something
    text_end,   ///< behind the last line
    unreadable, ///< no terminal; in a line whose string does not end, each of its quotes
};

struct Token {
    Sort sort = Sort::unreadable;
    std::string text; ///< as written, words in small letters
    std::size_t line = 1;
};

/// All tokens, with a text_end behind them.
[[nodiscard]] std::vector<Token> tokens(std::string_view text);

/// The bytes of a text by line: without line ends, and without a byte order mark at the start.
[[nodiscard]] std::vector<std::string_view> lines(std::string_view text);

/// Whether a line's bytes may stand in a file at all, inside strings and comments too: UTF-8
/// without control characters, and not longer than a line may be.
[[nodiscard]] bool readable(std::string_view line);

} // namespace lengthwise::recogniser
