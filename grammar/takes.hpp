#pragma once

#include "words.hpp"

#include <string_view>

/// What keywords take, for messages such as `"rest" takes a time = try: rest 15s`.
namespace lengthwise::grammar {

struct Takes {
    Word word;
    std::string_view what;
    std::string_view example;
};

/// Behind a word that begins a statement or heading.
[[nodiscard]] Takes const* takes_as_statement(Word word);
/// Behind a keyword inside of a line.
[[nodiscard]] Takes const* takes_as_keyword(Word word);
/// Behind a word that a name in quotes follows.
[[nodiscard]] Takes const* takes_name(Word word);

} // namespace lengthwise::grammar
