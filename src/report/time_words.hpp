#pragma once

#include "plan/plan.hpp"
#include "units/duration.hpp"
#include "units/pool.hpp"
#include "units/range.hpp"

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

/// Estimated times and the paces behind them, as every screen says them (docs/time.md, "What is shown").
namespace lengthwise::report {

/// Said wherever the reserve that a file does not give decides a time.
inline constexpr std::string_view reserve_assumed = "35, 20, 10 m of reserve assumed";

/// Whole minutes, half up.
[[nodiscard]] std::int64_t minutes(Duration time);

/// "38"; "<1" for what would round to nothing, "-" for no time at all.
[[nodiscard]] std::string minutes_text(Duration time);

/// "36–42": low rounded down and high rounded up, so that what fits still fits; one figure where both
/// agree, "-" for no time at all. With `ascii` a hyphen.
[[nodiscard]] std::string band_minutes(Band<Duration> const& band, bool ascii = false);

/// A booked time beside a band of minutes: "60 min", not "1 h"; "1:30" where it is no whole minutes.
[[nodiscard]] std::string slot_minutes(Duration slot);

/// Whole minutes for parts of a whole that add up to the minutes of their sum: each is rounded down,
/// and the minutes that are missing then go to the largest remainders, of equals to the first. Each is
/// less than a minute off.
[[nodiscard]] std::vector<std::int64_t> adding_up(std::vector<Duration> const& parts);

/// "1:55 per 100 m", "about 2:40 per 100 m", "0:29 per 25 yd": as the file says it.
[[nodiscard]] std::string pace_text(plan::Threshold const& threshold, bool ascii = false);

/// "fits 45 min at a threshold of 2:06 per 100 m or faster", "fits 45 min at no threshold": the slowest
/// pace as calc::slowest_fitting found it, or nothing.
[[nodiscard]] std::string fits_text(Duration slot, std::optional<Duration> slowest, Unit unit);

} // namespace lengthwise::report
