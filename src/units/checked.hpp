#pragma once

#include <cstdint>
#include <optional>

namespace lengthwise {

/// 64-bit sums and products that say when they do not fit instead of wrapping.
[[nodiscard]] constexpr std::optional<std::int64_t> checked_add(std::int64_t a, std::int64_t b) {
    std::int64_t sum = 0;
    return __builtin_add_overflow(a, b, &sum) ? std::nullopt : std::optional{sum};
}
[[nodiscard]] constexpr std::optional<std::int64_t> checked_mul(std::int64_t a, std::int64_t b) {
    std::int64_t product = 0;
    return __builtin_mul_overflow(a, b, &product) ? std::nullopt : std::optional{product};
}

} // namespace lengthwise
