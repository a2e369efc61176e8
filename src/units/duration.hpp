#pragma once

#include "units/checked.hpp"

#include <compare>
#include <cstdint>
#include <optional>

namespace lengthwise {

/// A span of time as whole milliseconds.
class Duration {
  public:
    constexpr Duration() = default;
    [[nodiscard]] static constexpr Duration ms(std::int64_t n) { return Duration{n}; }
    [[nodiscard]] static constexpr Duration seconds(std::int64_t n) { return Duration{n * 1000}; }
    [[nodiscard]] static constexpr Duration minutes(std::int64_t n) { return seconds(n * 60); }
    [[nodiscard]] static constexpr Duration hours(std::int64_t n) { return minutes(n * 60); }

    [[nodiscard]] constexpr std::int64_t ms() const { return ms_; }
    [[nodiscard]] constexpr bool zero() const { return ms_ == 0; }

    constexpr Duration& operator+=(Duration d) {
        ms_ += d.ms_;
        return *this;
    }
    constexpr Duration& operator-=(Duration d) {
        ms_ -= d.ms_;
        return *this;
    }
    friend constexpr Duration operator+(Duration a, Duration b) { return a += b; }
    friend constexpr Duration operator-(Duration a, Duration b) { return a -= b; }
    friend constexpr Duration operator*(Duration d, std::int64_t n) { return Duration{d.ms_ * n}; }
    friend constexpr Duration operator*(std::int64_t n, Duration d) { return d * n; }

    friend constexpr auto operator<=>(Duration, Duration) = default;

  private:
    explicit constexpr Duration(std::int64_t ms) : ms_(ms) {}
    std::int64_t ms_ = 0;
};

/// Sums and products that report overflow; plain operators are for values that
/// a limit already bounds.
[[nodiscard]] constexpr std::optional<Duration> checked_add(Duration a, Duration b) {
    auto const sum = checked_add(a.ms(), b.ms());
    return sum ? std::optional{Duration::ms(*sum)} : std::nullopt;
}
[[nodiscard]] constexpr std::optional<Duration> checked_mul(Duration a, std::int64_t n) {
    auto const product = checked_mul(a.ms(), n);
    return product ? std::optional{Duration::ms(*product)} : std::nullopt;
}

} // namespace lengthwise
