#pragma once

#include <array>
#include <cstddef>
#include <cstdint>
#include <random>

namespace lengthwise::bench {

/// The same numbers on every machine: the engine is fixed by the standard, and the
/// distributions, which are not, are left out.
class Random {
  public:
    explicit Random(std::uint64_t seed) : engine_(seed) {}

    [[nodiscard]] int below(int n) { return static_cast<int>(engine_() % static_cast<std::uint64_t>(n)); }
    [[nodiscard]] int between(int low, int high) { return low + below(high - low + 1); }
    [[nodiscard]] bool chance(int percent) { return below(100) < percent; }

    template <typename T, std::size_t N>
    [[nodiscard]] T const& pick(std::array<T, N> const& choices) {
        return choices[static_cast<std::size_t>(below(static_cast<int>(N)))];
    }

  private:
    std::mt19937_64 engine_;
};

} // namespace lengthwise::bench
