#pragma once

#include "plan/plan.hpp"
#include "units/duration.hpp"

#include <optional>
#include <vector>

/// The question turned round: no pace is known, so at which one would the session fit its slot?
namespace lengthwise::calc {

/// The slowest threshold, in whole seconds for 100 of the session's unit in its pool, at which the
/// session's high time is within `slot` in every lane that it names. Lanes whose pace is known keep
/// theirs. Nothing where none from 30 s to 10 min does.
[[nodiscard]] std::optional<Duration> slowest_fitting(plan::Plan const& plan, plan::Index session,
                                                      Duration slot);

/// The same for several sessions in one pool, each within its own slot; they have one.
[[nodiscard]] std::optional<Duration> slowest_fitting(plan::Plan const& plan,
                                                      std::vector<plan::Index> const& sessions);

} // namespace lengthwise::calc
