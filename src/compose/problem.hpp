#pragma once

#include "compose/request.hpp"

#include <cstdint>
#include <optional>
#include <vector>

/// The ramp as numbers alone: what build weeks may be, and what they aim at. All in laps but
/// where lengths are said. docs/compose.md has the formulas.
namespace lengthwise::compose {

/// How many laps of a session the slot holds.
struct Room {
    static constexpr int all = 1 << 20; ///< there is no threshold to judge a slot by

    std::vector<int> long_day; ///< by the rep, from 0 (which is none) to the race rep
    int other_day = all;
};

struct Problem {
    int build_weeks = 0;            ///< n
    int lengths_a_lap = 2;          ///< u
    int sessions = 2;               ///< a week, k
    int race_rep = 1;               ///< R
    std::int64_t today_longest = 0; ///< E₀, lengths; 1 or more
    std::int64_t today_week = 0;    ///< V₀, lengths; 1 or more

    std::optional<std::int64_t> rep_step; ///< percent; nothing: a third exactly
    std::int64_t week_growth = 10;        ///< percent
    int session_floor =
        0; ///< laps of the long day in the last build week, where they are more than its rep needs
    Room room;
    Room tight; ///< in 95 % of the slot; filled for the race rep alone
};

/// For `build_weeks` of them; the request is one without refusals.
[[nodiscard]] Problem problem_of(Request const& request, int build_weeks);

/// The highest rep and week that may follow `rep` and `laps`, each 0 for today's, with a share
/// of `percent`.
[[nodiscard]] int next_rep(Problem const& problem, int rep, std::optional<std::int64_t> percent);
[[nodiscard]] int next_week(Problem const& problem, int laps, std::int64_t percent);

/// Laps of a long day with this rep, at the least; `build` counts build weeks from 1.
[[nodiscard]] int day_need(Problem const& problem, int rep, int build);

/// The week that can hold a rep, at the least and at the most; between the two all can, and
/// where the least is above the most none. Neither `least_week` nor the week's number falls
/// with the rep.
[[nodiscard]] int least_week(Problem const& problem, int rep, int build);
[[nodiscard]] int most_week(Problem const& problem, Room const& room, int rep, int build);

/// The shortest long day of a week with so many laps and sessions whose longest swim is `rep`:
/// `need` laps or more, from an even share to a tenth of the week above it, four laps or more on
/// the other days, each in its slot. Nothing where there is none.
[[nodiscard]] std::optional<int> long_day(Problem const& problem, int laps, int sessions, int rep, int need);

/// The week that the last build week aims at, in lengths: G.
[[nodiscard]] std::int64_t goal_week(Problem const& problem);

} // namespace lengthwise::compose
