#pragma once

#include "plan/work.hpp"

namespace lengthwise::plan {

/// What a plan that is read must hold about paces: `threshold minus` leaves one, for whoever swims
/// the item. One error an item.
void check_paces(Work& work);

} // namespace lengthwise::plan
