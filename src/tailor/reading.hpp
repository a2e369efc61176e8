#pragma once

#include "plan/plan.hpp"
#include "tailor/amounts.hpp"
#include "units/distance.hpp"
#include "units/pool.hpp"

namespace lengthwise::tailor {

/// An amount as it is read: a figure and what it counts.
struct Reading {
    Distance amount;
    plan::WrittenUnit unit = plan::WrittenUnit::bare;
};

/// The same figure, of the same kind: 100 in 25 m and 100 in 25 yd, 8 lengths in both.
[[nodiscard]] bool same_reading(Reading const& was, Reading const& now, Fit const& fit);

/// How today's amount is written: as before where that can be, else in the pool's own terms.
[[nodiscard]] plan::WrittenUnit unit_today(plan::WrittenUnit was, Distance now, Pool const& pool);

/// A rep made to fit.
[[nodiscard]] Reading rep_today(Reading const& was, Fit const& fit);

} // namespace lengthwise::tailor
