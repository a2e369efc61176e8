#pragma once

#include <cstddef>
#include <string>

namespace lengthwise::bench {

/// A composed plan of at least `bytes` of text: one that `check` has hardly anything to say of.
[[nodiscard]] std::string composed_plan(std::size_t bytes);

} // namespace lengthwise::bench
