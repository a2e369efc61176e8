#pragma once

#include <string>
#include <string_view>

namespace lengthwise::support {

/// What makes text unfit for a terminal: a control character other than a line end, a
/// bidirectional control, a byte that is no UTF-8. Empty when there is none.
[[nodiscard]] std::string unsafe_in(std::string_view text);

} // namespace lengthwise::support
