#pragma once

#include <string>
#include <string_view>

/// The parser held against the recogniser.
namespace lengthwise::recogniser {

/// Where the two differ on a text: whether it is one, or else on its first bad line. Empty
/// where they agree. Lines are left out where the parser has more findings than it keeps,
/// because the first to stand may then not be among those kept.
[[nodiscard]] std::string disagreement(std::string_view text);

} // namespace lengthwise::recogniser
