#pragma once

#include <array>
#include <string_view>

/// The codes of errors in a text. `explain` knows them; nothing waives them.
namespace lengthwise::grammar {

struct Code {
    std::string_view code;
    std::string_view meaning; ///< one sentence, lower case, no full stop
};

namespace code {
inline constexpr std::string_view encoding = "syntax-encoding";
inline constexpr std::string_view character = "syntax-character";
inline constexpr std::string_view word = "syntax-word";
inline constexpr std::string_view number = "syntax-number";
inline constexpr std::string_view time = "syntax-time";
inline constexpr std::string_view date = "syntax-date";
inline constexpr std::string_view string = "syntax-string";
inline constexpr std::string_view comma = "syntax-comma";
inline constexpr std::string_view group = "syntax-group";
inline constexpr std::string_view place = "syntax-place";
inline constexpr std::string_view line = "syntax-line";
inline constexpr std::string_view limit = "syntax-limit";
inline constexpr std::string_view include = "syntax-include";
inline constexpr std::string_view amount = "syntax-amount";
inline constexpr std::string_view twice = "syntax-twice";
inline constexpr std::string_view name = "syntax-name";
inline constexpr std::string_view pairing = "syntax-pairing";
inline constexpr std::string_view split = "syntax-split";
inline constexpr std::string_view selector = "syntax-selector";
inline constexpr std::string_view count = "syntax-count";
} // namespace code

/// Those of the parser first, then those of the resolver.
inline constexpr auto codes = std::to_array<Code>({
    {code::encoding, "the file's bytes are not UTF-8 text with line ends"},
    {code::character, "a character that the notation does not have outside of quotes and comments"},
    {code::word, "a word that the notation does not have"},
    {code::number, "a number or distance that the notation does not have, or a figure that says too little"},
    {code::time, "a time that is not written as times are, or lacks its unit"},
    {code::date, "a day that does not exist, is not written year-month-day, or lies outside its week"},
    {code::string, "a name or note whose quotes do not close on its line"},
    {code::comma, "a comma without a blank behind it, or with nothing behind it"},
    {code::group, "a parenthesis without its partner, or something that does not stand in parentheses"},
    {code::place, "a line that stands where its kind does not belong"},
    {code::line, "something else stands where the line goes on"},
    {code::limit, "larger than lengthwise reads; the message names the limit"},
    {code::include, "a file that is not there, cannot be read, or holds more than sets"},
    {code::amount, "a distance, time or share that cannot be, or cannot be here"},
    {code::twice, "said twice where once is all; both places are named"},
    {code::name, "a set, rule or word that is not there, or a set that would hold itself"},
    {code::pairing, "two things that do not go together"},
    {code::split, "parts that do not add up to their rep, or a break that is not inside it at a wall"},
    {code::selector, "a selector that chooses a rep twice, or one that is not there"},
    {code::count,
     "send-offs or cycles that do not fit the number of reps, or a swim that does not fit its send-off"},
});

} // namespace lengthwise::grammar
