#pragma once

#include <array>
#include <cstddef>
#include <cstdint>
#include <random>
#include <string_view>

namespace lengthwise::bench {

/// The same numbers on every machine: the engine is fixed by the standard, and the
/// distributions, which are not, are left out.
class Random {
  public:
    /// The first numbers are those of `bytes`, as many as each needs; the engine's come behind them.
    explicit Random(std::uint64_t seed, std::string_view bytes = {}) : engine_(seed), bytes_(bytes) {}

    [[nodiscard]] int below(int n) { return static_cast<int>(next(n) % static_cast<std::uint64_t>(n)); }
    [[nodiscard]] int between(int low, int high) { return low + below(high - low + 1); }
    [[nodiscard]] bool chance(int percent) { return below(100) < percent; }

    template <typename T, std::size_t N>
    [[nodiscard]] T const& pick(std::array<T, N> const& choices) {
        return choices[static_cast<std::size_t>(below(static_cast<int>(N)))];
    }

  private:
    [[nodiscard]] std::uint64_t next(int n) {
        if (bytes_.empty()) {
            return engine_();
        }
        std::uint64_t number = 0;
        for (std::int64_t most = 1; most < n && !bytes_.empty(); most *= 256) {
            number = number * 256 + static_cast<unsigned char>(bytes_.front());
            bytes_.remove_prefix(1);
        }
        return number;
    }

    std::mt19937_64 engine_;
    std::string_view bytes_; ///< those that are left
};

} // namespace lengthwise::bench
