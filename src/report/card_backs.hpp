#pragma once

#include "calc/timeline.hpp"
#include "plan/plan.hpp"
#include "report/card_view.hpp"

/// What the backs of cards say.
namespace lengthwise::report {

/// The session's longest rep: when each swimmer of the lane passes each 100 of the pool's unit and the end,
/// at his own threshold and an even pace; without swimmers who have one, at the lane's. And what to do when
/// short of time.
[[nodiscard]] CardBack pace_back(plan::Plan const& plan, calc::Clock& clock, plan::Index session, int lane,
                                 Card const& front);

/// The sessions of the session's week in one lane, with their sums.
[[nodiscard]] CardBack overview_back(plan::Plan const& plan, calc::Clock& clock, plan::Index session,
                                     int lane);

} // namespace lengthwise::report
