#pragma once

#include "compose/ramp.hpp"
#include "compose/request.hpp"

#include <cstdint>
#include <optional>
#include <vector>

/// What to change where a wish cannot be met.
namespace lengthwise::compose {

/// Where it clashes: what could be had against what is wanted.
struct Clash {
    enum class Kind : std::uint8_t {
        no_week, ///< the calendar has no week left to build; the figures are 0
        start,   ///< the first week with four laps a session; laps of the week
        rep,     ///< the rep cannot grow to the race rep; laps of the rep
        week,    ///< the week cannot grow to hold the race rep; laps of the week
        slot     ///< the slot does not hold the day of the race rep; minutes, rounded up
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
    std::vector<Clash> clashes;
    std::size_t weeks = 0;          ///< counted weeks of the wish
    std::vector<WayOut> single;     ///< each enough by itself, one member set each
    std::optional<WayOut> together; ///< where none is: what is needed at once
};

/// For a request without refusals that `ramp_of` finds nothing for.
[[nodiscard]] WaysOut ways_out(Request const& request);

} // namespace lengthwise::compose
