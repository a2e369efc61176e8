#pragma once

#include "units/date.hpp"
#include "units/distance.hpp"
#include "units/duration.hpp"
#include "units/pool.hpp"
#include "units/range.hpp"

#include <cstdint>
#include <string>
#include <string_view>

/// Quantities as words for people and programs. Nothing here looks at a locale.
/// A quantity below 0 has a leading hyphen before the words of its size.
namespace lengthwise::spell {

/// The figure alone in `unit`: "200", "266⅔", "12.25", "22.86". A vulgar fraction
/// where the rest is a third or a sixth, whose decimals would not end; else two decimals
/// where they are exact, one where they are not, half up: "109.4" for 100 m in yards. What
/// one decimal would show as a whole number has up to four. With `ascii`, "266 2/3".
[[nodiscard]] std::string number(Distance distance, Unit unit, bool ascii = false);

/// The same figure for a column: `whole` is set flush right, `hang` outside it,
/// so that thirds do not push 1400 out of line with 800. "266" and "⅔", "12" and ".25",
/// "200" and nothing; with `ascii` "266" and " 2/3". `whole` is empty for "⅔".
struct Figure {
    std::string whole;
    std::string hang;
};
[[nodiscard]] Figure figure(Distance distance, Unit unit, bool ascii = false);

/// "m", "yd".
[[nodiscard]] std::string_view symbol(Unit unit);

/// "266⅔ m", "25 yd".
[[nodiscard]] std::string distance(Distance distance, Unit unit, bool ascii = false);

/// Metres for JSON: half up to at most four decimals, whole numbers without a point.
[[nodiscard]] std::string json_metres(Distance distance);

/// Seconds for JSON: up to three decimals.
[[nodiscard]] std::string json_seconds(Duration duration);

/// As a pace clock shows it: "0:50", "1:30", "12:05.5", "1:02:03".
[[nodiscard]] std::string clock(Duration duration);

/// As the notation writes it, in the shortest words: "20s", "90s" as "1:30", "2min", "1h".
[[nodiscard]] std::string duration(Duration duration);

/// A number with its unit and never a clock, as `for` takes it: "45min", "90s".
/// Parts of a second are as the notation cannot say them: "0.5s".
[[nodiscard]] std::string with_unit(Duration duration);

/// "20–40s", "30s–1min"; one figure where both ends agree. With `ascii` a hyphen,
/// and then it is notation.
[[nodiscard]] std::string range(Range<Duration> range, bool ascii = false);

/// The two above for running text, a blank before the unit: "45 min", "20–40 s".
[[nodiscard]] std::string spaced(Duration duration);
[[nodiscard]] std::string spaced(Range<Duration> range, bool ascii = false);

/// "07:05".
[[nodiscard]] std::string time_of_day(TimeOfDay time);

/// "2027-05-04".
[[nodiscard]] std::string iso(Date date);

/// "Thu 29 April 2027", for a head or a sentence.
[[nodiscard]] std::string day(Date date);

/// "Thu 29 Apr", for a row; `day_of_month` without the weekday, "29 Apr".
[[nodiscard]] std::string short_day(Date date);
[[nodiscard]] std::string day_of_month(Date date);

} // namespace lengthwise::spell
