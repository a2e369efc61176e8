#pragma once

#include "compose/request.hpp"
#include "units/date.hpp"

#include <cstddef>
#include <cstdint>
#include <vector>

/// Which week is for what, before any distance is known.
namespace lengthwise::compose {

enum class WeekKind : std::uint8_t {
    build,
    recovery, ///< after two or three build weeks
    eased,    ///< closed days left it fewer sessions than usual
    empty,    ///< closed days left it none
    taper     ///< the last one or two, and the race's own week
};

struct CalendarWeek {
    int number = 1; ///< from the request's first on, without a gap
    Date from;      ///< as many weeks behind the request's
    WeekKind kind = WeekKind::build;
    bool holds_race = false; ///< race day is one of its seven
    int percent =
        100; ///< of the last build week, in the taper of the highest; times its sessions by the usual
    std::vector<Date> days; ///< its sessions: training days before race day that are not closed
};

struct Calendar {
    std::vector<CalendarWeek> weeks; ///< the race's own week only where it has a session
    std::size_t counted = 0;         ///< weeks that count toward the ramp, N; the race's own may come on top
    std::size_t taper = 0;           ///< of them the last, T
    int build_weeks = 0;             ///< n; 0: no week left to build
};

[[nodiscard]] Calendar calendar_of(Request const& request);

/// The build weeks of `weeks` neighbouring whole weeks, in blocks of two or three with a recovery
/// week between them: the kinds in order.
[[nodiscard]] std::vector<WeekKind> blocks(std::size_t weeks);

} // namespace lengthwise::compose
