#pragma once

#include "cli/options.hpp"

#include <optional>
#include <string>

namespace lengthwise::cli {

/// A PDF in cards.png opens nowhere. Where a name ends as that of another kind of picture than it would
/// hold: "c.png would hold an SVG; try: -o c.svg". Other endings, and none, are everybody's own.
[[nodiscard]] std::optional<std::string> odd_name(Chart const& chart);
[[nodiscard]] std::optional<std::string> odd_name(Cards const& cards);

} // namespace lengthwise::cli
