#pragma once

#include "units/duration.hpp"
#include "units/range.hpp"

#include <algorithm>
#include <cstdint>

/// Bands reckoned figure by figure: low with low, expected with expected, high with high.
namespace lengthwise::calc {

/// `f` of each figure of one or more bands.
template <typename F, typename... Bands>
[[nodiscard]] constexpr auto figurewise(F f, Bands const&... bands) {
    return Band<decltype(f(bands.low...))>{f(bands.low...), f(bands.expected...), f(bands.high...)};
}

/// The same figure three times.
template <typename T>
[[nodiscard]] constexpr Band<T> exactly(T const& figure) {
    return {figure, figure, figure};
}

/// A range as a band; what is expected is its midpoint, rounded down to the millisecond.
[[nodiscard]] constexpr Band<Duration> band_of(Range<Duration> const& range) {
    return {range.low, Duration::ms((range.low.ms() + range.high.ms()) / 2), range.high};
}

[[nodiscard]] constexpr Band<Duration> operator+(Band<Duration> const& a, Band<Duration> const& b) {
    return {a.low + b.low, a.expected + b.expected, a.high + b.high};
}
[[nodiscard]] constexpr Band<Duration> operator-(Band<Duration> const& a, Band<Duration> const& b) {
    return {a.low - b.low, a.expected - b.expected, a.high - b.high};
}
[[nodiscard]] constexpr Band<Duration> operator*(Band<Duration> const& a, std::int64_t n) {
    return {a.low * n, a.expected * n, a.high * n};
}
constexpr Band<Duration>& operator+=(Band<Duration>& a, Band<Duration> const& b) {
    return a = a + b;
}

/// At least `least` in each figure.
[[nodiscard]] constexpr Band<Duration> at_least(Band<Duration> const& band, Duration least) {
    return {std::max(band.low, least), std::max(band.expected, least), std::max(band.high, least)};
}

} // namespace lengthwise::calc
