#pragma once

#include "grammar/meanings.hpp"
#include "report/paint.hpp"

#include <string>
#include <string_view>
#include <vector>

/// The words of the notation, explained.
namespace lengthwise::cli {

/// What a word is for, synonyms and signs included: more than one where it serves in several places,
/// nothing where the notation does not have it.
[[nodiscard]] std::vector<grammar::Meaning const*> meanings_of(std::string_view word);

/// Its title, forms, what stands behind it, and what it means.
[[nodiscard]] std::string text_of(grammar::Meaning const& meaning, report::Paint const& paint);

/// "moderate (steady), fast, strong (hard), max (sprint)": what else is read for its words.
[[nodiscard]] std::string also_read(grammar::Meaning const& meaning);

} // namespace lengthwise::cli
