#pragma once

#include "compose/calendar.hpp"
#include "compose/day_sizes.hpp"
#include "compose/request.hpp"

#include <cstdint>
#include <optional>
#include <vector>

/// The way from today's longest rep and week to the race, week by week: the best of all that
/// keep the limits. docs/compose.md has the problem, what "best" is, and how it is solved.
namespace lengthwise::compose {

struct Day {
    Date date;
    DayKind kind = DayKind::pace;
    int laps = 0;
    bool last = false; ///< the plan's last session
};

/// What a build week could choose from, in laps: why it is this and not its neighbour.
struct Choice {
    int least_rep = 1;            ///< from which the race rep is still reached with the plan's rep percent
    int gentle_rep = 1;           ///< the most that the plan's rep percent allows
    int most_rep = 1;             ///< the most that `rep-step` allows
    int least_week = 0;           ///< that can hold the week's rep
    int gentle_week = 0;          ///< the most that the plan's week percent allows
    int most_week = 0;            ///< the most that `week-growth` allows
    std::optional<int> slot_week; ///< the most that the slot holds with this rep; nothing: all

    /// What makes the long day no shorter than it is.
    enum class LongDay : std::uint8_t { even_share, rep, other_days };
    LongDay long_day = LongDay::even_share;
};

struct RampWeek {
    int number = 1;
    Date from;
    WeekKind kind = WeekKind::build;
    bool holds_race = false;
    int of_kind = 1;              ///< how many of its kind so far, this one among them
    int build = 0;                ///< build weeks so far, this one among them
    int percent = 100;            ///< as in CalendarWeek
    int rep = 0;                  ///< laps of the longest rep; 0 in an empty week, as the next
    int laps = 0;                 ///< of the week
    std::vector<Day> days;        ///< in order; their laps add up to the week's
    std::optional<Choice> choice; ///< of a build week
};

struct Ramp {
    Pool pool;
    Distance lap;
    int lengths_a_lap = 2;
    int race_rep = 0;      ///< laps that the race asks for
    int sessions = 2;      ///< usual days a week
    int today_longest = 0; ///< lengths
    int today_week = 0;    ///< lengths
    int goal_week = 0;     ///< lengths that the last build week aims at
    int build_weeks = 0;
    int week_percent = 5;      ///< the least that all weekly growths need: p
    int rep_percent = 0;       ///< the least that all growths of the rep need: q
    bool rep_by_third = false; ///< q is a third exactly; `rep_percent` is 34 then
    std::vector<RampWeek> weeks;

    bool over_full_today = false;              ///< today's session does not fit the slot
    std::optional<Duration> slowest_threshold; ///< where none was said: the pace that the slot asks for,
                                               ///< whole seconds for 100; nothing where no pace is enough
};

/// No threshold is known, and at none would all sessions fit the slot.
[[nodiscard]] bool short_at_any_pace(Request const& request, Ramp const& ramp);

/// Is its longest rep as long as the race, or longer? That of `limit race-rep` may be shorter.
[[nodiscard]] bool holds_race_distance(Request const& request, RampWeek const& week);

/// The best ramp; nothing where the wish cannot be met (`ways_out` says what could be changed).
/// The request is one without `refusals`.
[[nodiscard]] std::optional<Ramp> ramp_of(Request const& request);

} // namespace lengthwise::compose
