#pragma once

#include "recogniser/stream.hpp"

namespace lengthwise::recogniser {

/// A whole file: what stands at its head, then sessions, then weeks.
[[nodiscard]] bool file(Stream& in);

} // namespace lengthwise::recogniser
