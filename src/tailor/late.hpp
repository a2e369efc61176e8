#pragma once

#include "plan/plan.hpp"
#include "units/distance.hpp"
#include "units/duration.hpp"
#include "units/range.hpp"

#include <cstdint>
#include <optional>
#include <vector>

/// A session that runs late: what to swim in the time that is left (docs/late.md). Counted at the
/// slow end, from the first start that is still to come.
namespace lengthwise::tailor {

struct LateWish {
    plan::Index session = 0; ///< of Plan::sessions
    int after = 0;           ///< the row swum last, by the number a deck gives it; 0: none yet
    Duration left;
    std::optional<int> lane{}; ///< that one alone; nothing: every lane of the session
};

/// A line in one lane.
struct LateCell {
    bool stays = false;                ///< the lane swims it, or pauses, today
    std::optional<Duration> start{};   ///< of a row that stays, at the slow end
    std::optional<Duration> with_it{}; ///< of a row left out: when the lane would end with this one put back
};

/// A row or a pause behind the row swum last.
struct LateLine {
    plan::Index item = 0;          ///< of Plan::items
    plan::Index section = 0;       ///< of Plan::sections
    int number = 0;                ///< as a deck counts; 0: an `if time` line or a pause
    bool left_out = false;         ///< of a row: by all lanes that swim it; of a pause: by all lanes
    std::vector<LateCell> lanes{}; ///< by place in Late::lanes
};

/// The long rep cut to whole laps, so that a lane is home in time.
struct ShorterRep {
    Distance written;
    Distance rep;
    Duration end; ///< of the lane, at the slow end
};

struct LateLane {
    int lane = 0;                        ///< 0: the session has no lane lines
    Band<Duration> end;                  ///< of all that stays
    std::optional<ShorterRep> shorter{}; ///< of a lane that is still over, where one can be cut
};

struct Late {
    enum class Problem : std::uint8_t {
        none,
        no_such_row,  ///< the session has `rows` of them
        nothing_left, ///< nobody swims anything behind that row
        no_pace       ///< `lanes` are then those whose pace is unknown
    };
    Problem problem = Problem::none;
    int rows = 0;
    std::vector<LateLane> lanes{}; ///< ascending: those that have something left to swim
    std::vector<LateLine> lines{}; ///< in their order
};

/// Leaves out, until every lane is home at the slow end: `if time` lines first, then rows of main, of
/// drill and of warm-up, each from its end; never a lane's long rep (the row with the longest
/// qualifying rep of its session, if it is still to come) nor the cool-down. A row goes for all lanes
/// that swim it as soon as one of them needs it. A pause goes with the row before it, lane by lane.
[[nodiscard]] Late late(plan::Plan const& plan, LateWish const& wish);

/// The plan with nothing in that session but what a lane that is asked for has left to swim: for
/// the question at which pace it would all fit.
[[nodiscard]] plan::Plan left_to_swim(plan::Plan plan, LateWish const& wish);

} // namespace lengthwise::tailor
