#pragma once

#include "plan/plan.hpp"
#include "units/date.hpp"
#include "units/distance.hpp"
#include "units/duration.hpp"
#include "units/pool.hpp"

#include <cstdint>
#include <optional>
#include <string_view>

/// What stands behind an option, read.
namespace lengthwise::cli {

/// A whole number from `low` to `high`, digits only.
[[nodiscard]] std::optional<std::uint32_t> number(std::string_view text, std::uint32_t low,
                                                  std::uint32_t high);

/// A pool as the notation writes it behind `pool`: "25m", "25yd", "33 1/3 m". Not open water.
[[nodiscard]] std::optional<Pool> pool(std::string_view text);

/// The same, or "open water".
[[nodiscard]] std::optional<Pool> course(std::string_view text);

/// "07:00", as the notation writes it behind `session`.
[[nodiscard]] std::optional<TimeOfDay> time_of_day(std::string_view text);

/// "1:55 per 100m", as the notation writes it behind `threshold`, where `pool` is what the plan's
/// pool is called; empty: none.
[[nodiscard]] std::optional<plan::Threshold> pace(std::string_view text, std::string_view pool);

/// What stands behind `race`: "sprint", "1500m". Its day and place in a text mean nothing.
[[nodiscard]] std::optional<plan::Race> race(std::string_view text);

/// Its distance alone.
[[nodiscard]] std::optional<Distance> race_distance(std::string_view text);

/// A time as the notation writes it behind `rest`: "20min", "90s", "1:30". More than nothing.
[[nodiscard]] std::optional<Duration> duration(std::string_view text);

/// A size with its unit, "1m", "70cm", "6mm", "0.7m", in mm; at most three decimals.
[[nodiscard]] std::optional<double> millimetres(std::string_view text);

/// A distance as `before longest` takes it in such a pool: "200m", "8 lengths"; a bare number has the pool's
/// unit.
[[nodiscard]] std::optional<Distance> swum(std::string_view text, std::string_view pool);

/// The time booked for a session, as `for` takes it: "45min".
[[nodiscard]] std::optional<Duration> booked(std::string_view text);

/// "rep-step 25%", as the notation writes it behind `limit`.
[[nodiscard]] std::optional<plan::Limit> limit(std::string_view text, std::string_view pool);

/// A day of the week, 0 Monday … 6 Sunday: "Tue", "Tuesday".
[[nodiscard]] std::optional<std::uint8_t> weekday(std::string_view text);

} // namespace lengthwise::cli
