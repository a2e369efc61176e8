#pragma once

#include "cards/picture.hpp"

#include <string>
#include <string_view>
#include <vector>

namespace lengthwise::cards {

/// Pictures side by side as an SVG, millimetres its user unit. Texts stay texts; each is told its width, so
/// that it keeps its place with another font too.
[[nodiscard]] std::string svg(std::vector<Picture> const& pictures, std::string_view title);

} // namespace lengthwise::cards
