#pragma once

#include "grammar/diagnostic.hpp"
#include "grammar/source.hpp"
#include "report/paint.hpp"

#include <cstddef>
#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

/// Findings for people: `file:line:column: severity: message [rule]`, the line, a caret.
namespace lengthwise::report {

/// The files that findings point into, the root first.
using Sources = std::vector<Source const*>;

/// A place for people. The column counts cells as a terminal shows them, tabs reaching
/// to the next multiple of 8 and control characters as `visible` spells them.
struct Position {
    std::string_view file;
    std::uint32_t line = 1;
    std::size_t column = 1;
    std::uint64_t offset = 0; ///< byte of the file, counted from 0
};
[[nodiscard]] Position position(Sources const& sources, std::uint32_t offset);

/// The file that holds an offset; the end of a file belongs to it.
[[nodiscard]] Source const& holder(Sources const& sources, std::uint32_t offset);

struct FindingsStyle {
    std::size_t width = 80; ///< a finding's first line is never folded, editors read it
    bool ascii = false;
};

/// One finding, ending in a line feed.
[[nodiscard]] std::string finding_text(Diagnostic const& finding, Sources const& sources, Paint const& paint,
                                       FindingsStyle style = {});

/// All that were kept, an empty line between them, and behind them how many more there are.
[[nodiscard]] std::string findings_text(Diagnostics const& findings, Sources const& sources,
                                        Paint const& paint, FindingsStyle style = {});

/// How many there are beside those that were kept: "3 more errors, 1 more note"; empty without any.
[[nodiscard]] std::string unlisted(Diagnostics const& findings);

/// "1 error in draft.swim; no totals until it is mended". The file "-" is standard input.
[[nodiscard]] std::string errors_line(std::string_view file, std::uint64_t errors);

/// "1 error, 2 warnings"; empty without any.
[[nodiscard]] std::string counts(Diagnostics const& findings);

[[nodiscard]] std::string_view spelling(Severity severity);

/// The program's own marks spelled in ASCII: `–` as `-`, `…` as `...`, `⅓` as ` 1/3`.
[[nodiscard]] std::string in_ascii(std::string text);

} // namespace lengthwise::report
