#pragma once

#include <string_view>

namespace lengthwise::report {

/// How a page looks: ink on paper, dark where the reader's screen is, plain on paper that comes out of a
/// printer. It has no characters that XML would have to escape.
extern std::string_view const html_style;

} // namespace lengthwise::report
