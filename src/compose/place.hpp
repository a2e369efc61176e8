#pragma once

#include "compose/page.hpp"
#include "compose/ramp.hpp"
#include "compose/request.hpp"

#include <optional>

/// Where in a plan a session stands.
namespace lengthwise::compose {

/// All that a session's lines depend on, but for what was swum before it.
struct Place {
    Pool pool;
    Kit kit;
    std::optional<Duration> threshold; ///< for 100 of the pool's unit
    Laps race_rep = 1;

    WeekKind kind = WeekKind::build;
    int week = 1;         ///< its number
    bool opening = false; ///< the first week with a session
    int build = 1;        ///< build weeks so far, this one among them
    int build_weeks = 1;  ///< of the plan
    int easy = 0;         ///< recovery and eased weeks so far, this one among them
    int taper = 0;        ///< taper weeks so far, this one among them
    int usual_days = 2;   ///< sessions a week

    /// How far the swimmer is, by the longest rep of a build week so far: 0 under 200 m, 1 under 600 m,
    /// else 2.
    int stage = 0;
    int era = 0; ///< the stage in the first of six build weeks, of which this is one

    DayKind day = DayKind::pace;
    int index = 0; ///< in its week, from 0
    Laps laps = 4;
    Laps rep = 1;       ///< the week's longest
    bool held = false;  ///< a rep as long was swum in a build week before
    bool whole = false; ///< the race's distance in one go for the first time
    bool last = false;  ///< the plan's last session
};

/// An easier week: recovery, or what closed days left of one.
[[nodiscard]] bool is_easy(Place const& place);

/// What tells a week from its neighbours of the same kind: odd in one, even in the next.
[[nodiscard]] int turn(Place const& place);

/// What steady and hard come down to here: easy and steady for beginners and in easy weeks, and
/// nothing hard in the first week.
[[nodiscard]] Effort steady(Place const& place);
[[nodiscard]] Effort hard(Place const& place);

/// Half laps that may be swum hard in this session: a third of it, six laps in a taper.
[[nodiscard]] int most_hard_halves(Place const& place);

/// Rest in seconds between reps of a set that is swum for the `visit`-th time, from 1: 30, 25, then 20.
[[nodiscard]] int rest_at(int visit);

/// The laps nearest to 100 m, at least 1; of two as near the more.
[[nodiscard]] Laps hundred(Place const& place);

/// Whole laps in so many metres, at least 1.
[[nodiscard]] Laps laps_in(Pool const& pool, Distance distance);

[[nodiscard]] int stage_of(Pool const& pool, Laps longest);

} // namespace lengthwise::compose
