#pragma once

#include "recogniser/stream.hpp"

#include <cstdint>

/// Distances, times, ranges and plain numbers, with what a reader of the text alone can say
/// of their values: docs/notation.md, sections 5 and 16. Each takes what it can from the
/// stream; after a no, the stream stands on the same line.
namespace lengthwise::recogniser {

inline constexpr std::uint64_t greatest_number = 7'000'000;
inline constexpr std::uint64_t most_reps = 9999;
inline constexpr std::uint64_t most_lanes = 100;
inline constexpr std::uint64_t most_weeks = 999;

/// Whether a figure may be 0.
enum class Least { none, some };

[[nodiscard]] bool number(Stream& in, std::uint64_t low = 0, std::uint64_t high = greatest_number);
[[nodiscard]] bool percent(Stream& in);
[[nodiscard]] bool ordinal(Stream& in);
[[nodiscard]] bool range(Stream& in, std::uint64_t low,
                         std::uint64_t high); ///< NUM [ "-" NUM ], not backward
[[nodiscard]] bool distance(Stream& in, Least least = Least::some);
[[nodiscard]] bool duration(Stream& in, Least least = Least::some);
[[nodiscard]] bool figure_and_unit(Stream& in, std::uint64_t least_seconds = 0); ///< no clock
[[nodiscard]] bool rest(Stream& in);

/// A distance or a duration.
[[nodiscard]] bool amount(Stream& in);
[[nodiscard]] bool starts_amount(Stream const& in, std::size_t ahead = 0);

} // namespace lengthwise::recogniser
