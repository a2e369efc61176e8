#pragma once

#include "cli/compose_options.hpp"

#include <cstdint>
#include <optional>
#include <string_view>

/// `compose --resume`: what may stand beside it, and what has to.
namespace lengthwise::cli {

/// "week 3" or "3".
[[nodiscard]] std::optional<std::uint32_t> week_number(std::string_view text);

/// Of options that name a plan to go on with.
[[nodiscard]] Options read_resume(TypedCompose& typed);

} // namespace lengthwise::cli
