#pragma once

#include "calc/totals.hpp"
#include "check/progress.hpp"
#include "plan/plan.hpp"

#include <algorithm>
#include <cstdint>
#include <functional>
#include <string>
#include <vector>

/// Who swims what of a plan: its lanes, and those swimmers who swim something else than a lane.
namespace lengthwise::check {

/// Swimmers who swim the same: this share of one lane's lines. One without a lane is taken for one of
/// the lowest.
struct Sharers {
    int lane = 0;
    std::uint32_t percent = 100;
    std::vector<plan::Swimmer const*> swimmers; ///< in the plan's order, at least one
};

/// Those whose reps no lane has: with a share that is not all, or with a lane that no session names.
/// Equal shares stand together.
[[nodiscard]] std::vector<Sharers> sharers(plan::Plan const& plan);

/// "Ann", "Ann and Bo", "Ann, Bo and 3 more".
[[nodiscard]] std::string names(Sharers const& sharers);

/// What a lane swims, or what sharers do.
struct Swum {
    plan::Plan const& plan; ///< as they swim it: a share has its own; places in the text are the same
    calc::Reckoner& sums;   ///< of that plan
    std::vector<SwumWeek> const& weeks; ///< of that plan
    int lane = 0;
    Sharers const* sharers = nullptr; ///< nothing: all of the lane
};

/// Each week beside the highest figure of all before it, from the first on that has one before it.
template <typename Figure, typename Visit>
void each_growth(Swum const& swum, Distance before, Figure figure, Visit visit) {
    auto highest = before;
    for (auto const& week : swum.weeks) {
        if (!highest.zero()) {
            visit(week, highest);
        }
        highest = std::max(highest, figure(week));
    }
}

/// The longest rep before race day; 0: none counts.
[[nodiscard]] Distance longest_before_race(Swum const& swum);

/// Each lane ascending. For rules about a week's metres: the rounding of many short reps would make a
/// share seem to grow where the lane does not.
void each_lane(plan::Plan const& plan, calc::Reckoner& sums, std::function<void(Swum const&)> const& visit);

/// Each lane ascending, then sharers. A share of the plan is made once for all who have it, and only
/// one is there at a time.
void each_swum(plan::Plan const& plan, calc::Reckoner& sums, std::function<void(Swum const&)> const& visit);

} // namespace lengthwise::check
