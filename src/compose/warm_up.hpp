#pragma once

#include "compose/drill_book.hpp"
#include "compose/place.hpp"

/// The beginning and the end of a session. Common practice, no published source.
namespace lengthwise::compose {

/// First relaxed, of one's own choice, then one thing, then crawl that builds; `laps` is 1 or more. Where the
/// session has no drills of its own (`drills_here`) the one thing is the week's. All crawl in the last
/// session.
[[nodiscard]] Section warm_up_section(Place const& place, Laps laps, bool drills_here,
                                      WeekDrills const& drills, DrillBook& book);

[[nodiscard]] Section cool_down_section(Place const& place, Laps laps);

} // namespace lengthwise::compose
