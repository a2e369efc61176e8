#pragma once

#include "plan/plan.hpp"
#include "plan/versions.hpp"

#include <vector>

namespace lengthwise::plan {

/// For each named set of the plan what it holds, once for each pool that it is used in, in the
/// order of Plan::sets. Looks into a set once for each pool, however often it is used.
[[nodiscard]] std::vector<Versions<Item>> set_versions(Plan const& plan);

} // namespace lengthwise::plan
