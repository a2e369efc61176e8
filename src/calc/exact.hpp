#pragma once

#include "units/pace.hpp"

#include <cstdint>
#include <memory>

namespace lengthwise::calc {

/// A fraction without rounding, however large its terms grow. The pace model multiplies and
/// compares some dozen figures and rounds once, so the order of its factors does not matter.
///
/// Terms of up to 126 bits are reckoned in place and are not reduced; what passes that goes on
/// in numbers without a bound. Which of the two it was is no part of the value.
class Exact {
  public:
    Exact(std::int64_t whole = 0) : numerator_(whole) {} // NOLINT: a whole number is a fraction
    /// `denominator` is not 0.
    Exact(std::int64_t numerator, std::int64_t denominator);
    Exact(Ratio const& ratio) : Exact(ratio.numerator, ratio.denominator) {} // NOLINT: as above

    friend Exact operator+(Exact const& a, Exact const& b);
    friend Exact operator-(Exact const& a, Exact const& b);
    friend Exact operator*(Exact const& a, Exact const& b);
    /// `b` is not 0.
    friend Exact operator/(Exact const& a, Exact const& b);
    friend bool operator<(Exact const& a, Exact const& b);
    friend bool operator==(Exact const& a, Exact const& b) { return !(a < b) && !(b < a); }

    /// The same value in lowest terms: for figures that many others are reckoned from.
    [[nodiscard]] Exact reduced() const;

    /// To a whole number, down or half up. Beyond 64 bits it sticks at their end.
    [[nodiscard]] std::int64_t floor() const;
    [[nodiscard]] std::int64_t rounded() const;
    /// The nearest floating-point number, or next to it.
    [[nodiscard]] double approximate() const;

  private:
    __extension__ typedef __int128 Wide;
    struct Big;

    explicit Exact(Big const& big);
    [[nodiscard]] static Exact of(Wide numerator, Wide denominator);
    [[nodiscard]] Big big() const;
    [[nodiscard]] static bool fit(Wide a, Wide b);

    Wide numerator_ = 0;
    Wide denominator_ = 1;           ///< above 0
    std::shared_ptr<Big const> big_; ///< the value, where the terms above cannot hold it
};

} // namespace lengthwise::calc
