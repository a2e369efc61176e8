#pragma once

#include "words.hpp"

#include <string_view>
#include <vector>

namespace lengthwise {

/// What else is read as that word, in one word each; from the table in words.cpp.
[[nodiscard]] std::vector<std::string_view> synonyms(Word word);

} // namespace lengthwise
