#pragma once

#include "plan/plan.hpp"
#include "tailor/amounts.hpp"
#include "units/distance.hpp"

namespace lengthwise::tailor {

/// Lets splits and breaks follow a rep from `was` to `now`: gives `terms`, an index of Plan::terms,
/// terms of its own, its selectors' among them. True when something reads otherwise.
bool fit_terms(plan::Plan& plan, plan::Index& terms, Distance was, Distance now, Fit const& fit);

} // namespace lengthwise::tailor
