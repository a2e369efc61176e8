#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace lengthwise::support {

/// What one rule finds in a plan's text, in the order of the text: "8: warning: 110 m is not …".
/// A text that cannot be read gives its errors instead, so that no test passes by mistake.
[[nodiscard]] std::vector<std::string> found(std::string_view rule, std::string_view text);

/// The hint of the first finding; empty without one.
[[nodiscard]] std::string first_hint(std::string_view rule, std::string_view text);

} // namespace lengthwise::support
