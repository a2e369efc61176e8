#pragma once

#include <string_view>

/// The codes of what the resolver finds; grammar/codes.hpp says what each means.
namespace lengthwise::plan::code {

inline constexpr std::string_view amount = "syntax-amount";     ///< a distance or time that cannot be
inline constexpr std::string_view twice = "syntax-twice";       ///< said twice where once is all
inline constexpr std::string_view name = "syntax-name";         ///< a set or rule that is not there
inline constexpr std::string_view pairing = "syntax-pairing";   ///< two things that do not go together
inline constexpr std::string_view split = "syntax-split";       ///< parts or pieces that do not add up
inline constexpr std::string_view selector = "syntax-selector"; ///< reps chosen twice, or none
inline constexpr std::string_view count = "syntax-count"; ///< send-offs or cycles that do not fit the reps
inline constexpr std::string_view date = "syntax-date";   ///< a day outside its week or the calendar
inline constexpr std::string_view limit = "syntax-limit"; ///< larger than lengthwise reads

} // namespace lengthwise::plan::code
