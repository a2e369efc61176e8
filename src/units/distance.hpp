#pragma once

#include "units/checked.hpp"

#include <compare>
#include <cstdint>
#include <optional>

namespace lengthwise {

/// A distance as a whole number of 1/30 000 m. In that unit a metre (30 000), an
/// international yard (0.9144 m exactly, 27 432), 33 1/3 m (1 000 000) and
/// 33 1/3 yd (914 400) are all whole, so "does this rep end at a wall" has no
/// rounding in it. Range: +-3.07e14 m. Source of the yard: the international yard
/// and pound agreement of 1959 (US Federal Register 24 FR 5348).
class Distance {
  public:
    static constexpr std::int64_t per_metre = 30'000;
    static constexpr std::int64_t per_yard = 27'432;

    constexpr Distance() = default;
    [[nodiscard]] static constexpr Distance units(std::int64_t n) { return Distance{n}; }
    [[nodiscard]] static constexpr Distance metres(std::int64_t n) { return Distance{n * per_metre}; }
    [[nodiscard]] static constexpr Distance yards(std::int64_t n) { return Distance{n * per_yard}; }

    [[nodiscard]] constexpr std::int64_t units() const { return units_; }
    [[nodiscard]] constexpr bool zero() const { return units_ == 0; }

    constexpr Distance& operator+=(Distance d) {
        units_ += d.units_;
        return *this;
    }
    constexpr Distance& operator-=(Distance d) {
        units_ -= d.units_;
        return *this;
    }
    friend constexpr Distance operator+(Distance a, Distance b) { return a += b; }
    friend constexpr Distance operator-(Distance a, Distance b) { return a -= b; }
    friend constexpr Distance operator*(Distance d, std::int64_t n) { return Distance{d.units_ * n}; }
    friend constexpr Distance operator*(std::int64_t n, Distance d) { return d * n; }

    /// How often `b` goes into `a`, rounded down / up; `b` is above 0, `a` not below.
    [[nodiscard]] static constexpr std::int64_t whole(Distance a, Distance b) { return a.units_ / b.units_; }
    [[nodiscard]] static constexpr std::int64_t ceiling(Distance a, Distance b) {
        return a.units_ / b.units_ + (a.units_ % b.units_ != 0 ? 1 : 0);
    }
    [[nodiscard]] static constexpr bool divides(Distance b, Distance a) { return a.units_ % b.units_ == 0; }

    friend constexpr auto operator<=>(Distance, Distance) = default;

  private:
    explicit constexpr Distance(std::int64_t units) : units_(units) {}
    std::int64_t units_ = 0;
};

/// Sums and products that report overflow; plain operators are for values that
/// a limit already bounds.
[[nodiscard]] constexpr std::optional<Distance> checked_add(Distance a, Distance b) {
    auto const sum = checked_add(a.units(), b.units());
    return sum ? std::optional{Distance::units(*sum)} : std::nullopt;
}
[[nodiscard]] constexpr std::optional<Distance> checked_mul(Distance a, std::int64_t n) {
    auto const product = checked_mul(a.units(), n);
    return product ? std::optional{Distance::units(*product)} : std::nullopt;
}

} // namespace lengthwise
