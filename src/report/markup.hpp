#pragma once

#include <string>
#include <string_view>

namespace lengthwise::report {

/// Text for the inside of XML and HTML, and for their attributes in double quotes. What a terminal
/// must not see (report/width.hpp, `visible`) is spelled out here too.
[[nodiscard]] std::string markup(std::string_view text);

} // namespace lengthwise::report
