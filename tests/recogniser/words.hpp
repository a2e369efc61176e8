#pragma once

#include <string_view>

/// The words of grammar/notation.ebnf with the synonyms of docs/notation.md, by class. Two
/// words that are read as one (`front crawl`) are the recogniser's own business.
namespace lengthwise::recogniser {

[[nodiscard]] bool stroke_word(std::string_view word); ///< `front crawl` apart
[[nodiscard]] bool mode_word(std::string_view word);
[[nodiscard]] bool effort_word(std::string_view word); ///< one of the five plain ones
[[nodiscard]] bool gear_word(std::string_view word);   ///< `pull buoy` apart
[[nodiscard]] bool kind_word(std::string_view word);
[[nodiscard]] bool day_word(std::string_view word);
[[nodiscard]] bool unit_of_distance(std::string_view word);
[[nodiscard]] bool metres(std::string_view word);
[[nodiscard]] bool unit_of_time(std::string_view word);
[[nodiscard]] bool unit_of_number(std::string_view word); ///< either

/// How many seconds one of the unit has.
[[nodiscard]] int seconds_of(std::string_view unit_of_time);

/// A first word after which no parenthesis stays open; `next` is the word behind it, or empty.
[[nodiscard]] bool statement(std::string_view first, std::string_view next);

/// How many words make a heading here: 0 for none.
[[nodiscard]] std::size_t heading_words(std::string_view first, std::string_view next);

} // namespace lengthwise::recogniser
