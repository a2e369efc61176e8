#pragma once

#include "compose/place.hpp"
#include "compose/set_book.hpp"

namespace lengthwise::compose {

/// The main part of the day of the long rep: it comes while the swimmer is fresh, behind a few
/// building laps at most, and shorter reps follow. `laps` is at least `place.rep`.
[[nodiscard]] MainSet main_of_long_day(Place const& place, Laps laps);

} // namespace lengthwise::compose
