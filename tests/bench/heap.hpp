#pragma once

#include <cstdint>

/// The heap as this program's `operator new` and `delete` see it (heap.cpp replaces
/// them): sizes as malloc grants them, its own bookkeeping left out. Off until
/// `start_counting`, so that where time is taken an allocation pays one branch.
namespace lengthwise::bench {

void start_counting();
/// The most bytes that were held at one moment since then.
[[nodiscard]] std::int64_t peak_heap();

} // namespace lengthwise::bench
