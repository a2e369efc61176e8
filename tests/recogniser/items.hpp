#pragma once

#include "recogniser/stream.hpp"

namespace lengthwise::recogniser {

/// `item`, over several lines where it is a group.
[[nodiscard]] bool item(Stream& in);

} // namespace lengthwise::recogniser
