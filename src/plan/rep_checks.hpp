#pragma once

#include "plan/terms.hpp"
#include "plan/work.hpp"

namespace lengthwise::plan {

/// What must hold between an amount and what stands behind it: splits add up, breaks
/// end at walls, send-offs and cycles fit the count, times and distances are not mixed.
/// One error each, at the words that do not fit.
void check_reps(Work& work, Item const& reps, Behind const& behind, Pool const& pool);

/// Send-offs and cycles of `behind` against its count of reps or rounds.
void check_count(Work& work, Terms const& terms, Behind const& behind);

} // namespace lengthwise::plan
