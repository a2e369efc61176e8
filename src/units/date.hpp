#pragma once

#include <chrono>
#include <cstdint>
#include <optional>
#include <string_view>

namespace lengthwise {

/// A day of the proleptic Gregorian calendar, years 1 to 9999.
using Date = std::chrono::sys_days;

/// `2027-06-13`; nothing for another form or a day that does not exist.
[[nodiscard]] std::optional<Date> parse_date(std::string_view iso);

/// True up to 9999-12-31.
[[nodiscard]] bool within_calendar(Date date);

/// Minutes since midnight, 0 to 1439.
struct TimeOfDay {
    std::uint16_t minutes = 0;
    friend constexpr auto operator<=>(TimeOfDay, TimeOfDay) = default;
};

} // namespace lengthwise
