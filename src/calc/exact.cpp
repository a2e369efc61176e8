#include "calc/exact.hpp"

#include <boost/multiprecision/cpp_int.hpp>

#include <bit>
#include <limits>

namespace lengthwise::calc {
namespace {

using boost::multiprecision::cpp_int;
using boost::multiprecision::cpp_rational;

__extension__ typedef __int128 Wide;
__extension__ typedef unsigned __int128 Magnitude;

/// Products of fewer bits, and the sum of two of them, fit Wide.
constexpr int product_bits = 126;

constexpr auto lowest = std::numeric_limits<std::int64_t>::min();
constexpr auto highest = std::numeric_limits<std::int64_t>::max();

int bits(Wide value) {
    auto const size = value < 0 ? -static_cast<Magnitude>(value) : static_cast<Magnitude>(value);
    auto const upper = static_cast<std::uint64_t>(size >> 64U);
    return upper != 0 ? 64 + static_cast<int>(std::bit_width(upper))
                      : static_cast<int>(std::bit_width(static_cast<std::uint64_t>(size)));
}

Wide common_divisor(Wide a, Wide b) {
    while (b != 0) {
        a %= b;
        std::swap(a, b);
    }
    return a < 0 ? -a : a;
}

template <typename Number>
std::int64_t within_64_bits(Number const& number) {
    return number < lowest ? lowest : number > highest ? highest : static_cast<std::int64_t>(number);
}

/// The quotient rounded down and half up; the divisor is above 0.
template <typename Number>
Number floor_of(Number const& a, Number const& b) {
    Number const quotient = a / b;
    return quotient * b > a ? Number(quotient - 1) : quotient;
}
template <typename Number>
Number rounded_of(Number const& a, Number const& b) {
    Number const down = floor_of(a, b);
    Number const rest = a - down * b;
    return rest >= b - rest ? Number(down + 1) : down;
}

} // namespace

struct Exact::Big {
    cpp_rational value;
};

Exact::Exact(std::int64_t numerator, std::int64_t denominator)
    : numerator_(denominator < 0 ? -Wide{numerator} : numerator),
      denominator_(denominator < 0 ? -Wide{denominator} : denominator) {}

Exact::Exact(Big const& big) : big_(std::make_shared<Big const>(big)) {}

Exact Exact::of(Wide numerator, Wide denominator) {
    Exact result;
    result.numerator_ = numerator;
    result.denominator_ = denominator;
    return result;
}

Exact::Big Exact::big() const {
    return big_ ? *big_ : Big{cpp_rational{cpp_int{numerator_}, cpp_int{denominator_}}};
}

bool Exact::fit(Wide a, Wide b) {
    return bits(a) + bits(b) <= product_bits;
}

Exact operator+(Exact const& a, Exact const& b) {
    if (!a.big_ && !b.big_ && Exact::fit(a.numerator_, b.denominator_) &&
        Exact::fit(b.numerator_, a.denominator_) && Exact::fit(a.denominator_, b.denominator_)) {
        return Exact::of(a.numerator_ * b.denominator_ + b.numerator_ * a.denominator_,
                         a.denominator_ * b.denominator_);
    }
    return Exact{Exact::Big{a.big().value + b.big().value}};
}

Exact operator-(Exact const& a, Exact const& b) {
    return a + Exact{-1} * b;
}

Exact operator*(Exact const& a, Exact const& b) {
    if (!a.big_ && !b.big_ && Exact::fit(a.numerator_, b.numerator_) &&
        Exact::fit(a.denominator_, b.denominator_)) {
        return Exact::of(a.numerator_ * b.numerator_, a.denominator_ * b.denominator_);
    }
    return Exact{Exact::Big{a.big().value * b.big().value}};
}

Exact operator/(Exact const& a, Exact const& b) {
    if (!a.big_ && !b.big_ && Exact::fit(a.numerator_, b.denominator_) &&
        Exact::fit(a.denominator_, b.numerator_)) {
        auto const sign = b.numerator_ < 0 ? -1 : 1;
        return Exact::of(sign * a.numerator_ * b.denominator_, sign * a.denominator_ * b.numerator_);
    }
    return Exact{Exact::Big{a.big().value / b.big().value}};
}

bool operator<(Exact const& a, Exact const& b) {
    if (!a.big_ && !b.big_ && Exact::fit(a.numerator_, b.denominator_) &&
        Exact::fit(b.numerator_, a.denominator_)) {
        return a.numerator_ * b.denominator_ < b.numerator_ * a.denominator_;
    }
    return a.big().value < b.big().value;
}

Exact Exact::reduced() const {
    if (big_) {
        return *this; // in lowest terms already
    }
    auto const divisor = common_divisor(numerator_, denominator_);
    return of(numerator_ / divisor, denominator_ / divisor);
}

std::int64_t Exact::floor() const {
    return big_ ? within_64_bits(floor_of<cpp_int>(numerator(big_->value), denominator(big_->value)))
                : within_64_bits(floor_of(numerator_, denominator_));
}

std::int64_t Exact::rounded() const {
    return big_ ? within_64_bits(rounded_of<cpp_int>(numerator(big_->value), denominator(big_->value)))
                : within_64_bits(rounded_of(numerator_, denominator_));
}

double Exact::approximate() const {
    return big_ ? big_->value.convert_to<double>()
                : static_cast<double>(numerator_) / static_cast<double>(denominator_);
}

} // namespace lengthwise::calc
