#pragma once

#include "words.hpp"

#include <cstddef>
#include <cstdint>
#include <string_view>
#include <vector>

/// A line that could not be read, cut into its smallest pieces, so that hints can
/// look at what stands beside what. The grammar proper does without.
namespace lengthwise::grammar {

struct Lexeme {
    enum class Sort : std::uint8_t {
        word,   ///< letters and inner hyphens
        number, ///< digits
        clock,  ///< digits with colons: 1:30
        string, ///< with its quotes; up to the line's end where the closing one is missing
        sign,   ///< one other ASCII character
        other,  ///< one character beyond ASCII
        end,    ///< the line's end or its comment; always the last
    };
    Sort sort = Sort::end;
    char const* begin = nullptr;
    char const* end = nullptr;
    Word word = Word::none;

    [[nodiscard]] std::string_view text() const { return {begin, static_cast<std::size_t>(end - begin)}; }
    [[nodiscard]] bool is(char c) const { return sort == Sort::sign && *begin == c; }
    [[nodiscard]] bool is_number() const { return sort == Sort::number; }
    [[nodiscard]] bool is_figure() const { return sort == Sort::number || sort == Sort::clock; }
};

[[nodiscard]] std::vector<Lexeme> lex(char const* begin, char const* end);

/// One character of UTF-8. Bytes that are none count as one character each, U+FFFD.
struct Character {
    char32_t code = 0;
    int bytes = 1;
    bool well_formed = true;
};
[[nodiscard]] Character decode(char const* at, char const* end);

} // namespace lengthwise::grammar
