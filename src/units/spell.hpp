#pragma once

#include "units/date.hpp"
#include "units/distance.hpp"
#include "units/duration.hpp"
#include "units/pool.hpp"
#include "units/range.hpp"

#include <cstdint>
#include <string>

/// Quantities as words for people and programs. Nothing here looks at a locale.
namespace lengthwise::spell {

/// The figure alone in `unit`: "200", "266⅔", "12.25", "22.86". A vulgar fraction
/// where the rest is a half, third, quarter, sixth, eighth (…) that Unicode has a
/// sign for and decimals would not end; else up to four decimals, half up.
/// With `ascii`, "266 2/3".
[[nodiscard]] std::string number(Distance distance, Unit unit, bool ascii = false);

/// "266⅔ m", "25 yd".
[[nodiscard]] std::string distance(Distance distance, Unit unit, bool ascii = false);

/// Metres for JSON: half up to at most four decimals, whole numbers without a point.
[[nodiscard]] std::string json_metres(Distance distance);

/// Seconds for JSON: up to three decimals.
[[nodiscard]] std::string json_seconds(Duration duration);

/// As a pace clock shows it: "0:50", "1:30", "12:05.5", "1:02:03".
[[nodiscard]] std::string clock(Duration duration);

/// In the shortest words: "20s", "90s" as "1:30", "2min", "1h".
[[nodiscard]] std::string duration(Duration duration);

/// "20–40s", "30s–1min"; one figure where both ends agree. With `ascii` a hyphen.
[[nodiscard]] std::string range(Range<Duration> range, bool ascii = false);

/// "07:05".
[[nodiscard]] std::string time_of_day(TimeOfDay time);

/// "2027-05-04".
[[nodiscard]] std::string iso(Date date);

/// "Tue 4 May 2027"; `short_day` without the year.
[[nodiscard]] std::string day(Date date);
[[nodiscard]] std::string short_day(Date date);

} // namespace lengthwise::spell
