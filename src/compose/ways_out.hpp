#pragma once

#include "compose/ramp.hpp"
#include "compose/request.hpp"

#include <cstdint>
#include <optional>
#include <vector>

/// What to change where a wish cannot be met.
namespace lengthwise::compose {

/// Where it clashes: what could be had in a week against what is wanted of it.
struct Clash {
    enum class Kind : std::uint8_t {
        no_week, ///< the calendar has no week left to build; the figures are 0
        rep,     ///< the longest rep, in laps: it does not grow to the race rep
        week,    ///< the week, in laps: it does not grow to hold the rep that is due by then
        slot ///< the booked time, in minutes rounded down and up: it does not hold the week of the race rep
    };
    Kind kind = Kind::rep;
    int week = 1; ///< number of the plan's week
    std::int64_t can = 0;
    std::int64_t wants = 0;
};

/// The least change of one thing, or of several at once.
struct WayOut {
    std::optional<Date> race_on;             ///< the earliest race day
    std::size_t weeks = 0;                   ///< beside it: counted weeks
    std::optional<Distance> longest;         ///< whole lengths
    std::optional<Distance> session;         ///< whole lengths
    std::optional<Duration> slot;            ///< whole minutes
    std::optional<std::int64_t> rep_step;    ///< percent
    std::optional<std::int64_t> week_growth; ///< percent
};

struct WaysOut {
    std::vector<Clash> clashes;     ///< one or more
    std::size_t weeks = 0;          ///< counted weeks of the wish
    std::vector<WayOut> single;     ///< each enough by itself, one member set each
    std::optional<WayOut> together; ///< where none is: what is needed at once, as little as it can be with a
                                    ///< race as late as any, then the earliest race day; nothing where even
                                    ///< that is not enough
};

/// For a request without refusals that `ramp_of` finds nothing for.
[[nodiscard]] WaysOut ways_out(Request const& request);

} // namespace lengthwise::compose
