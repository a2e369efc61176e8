#pragma once

#include <string>
#include <string_view>

/// What stands between the quotes of a STRING.
namespace lengthwise::grammar {

/// `\"` and `\\` undone.
[[nodiscard]] std::string unescape(std::string_view raw);
/// The reverse, without quotes.
[[nodiscard]] std::string escape(std::string_view text);

} // namespace lengthwise::grammar
