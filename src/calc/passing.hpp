#pragma once

#include "calc/lane.hpp"
#include "units/distance.hpp"
#include "units/duration.hpp"

namespace lengthwise::calc {

/// When one who swims at an even pace passes a distance of the rep: t = p d, to the millisecond, half up.
[[nodiscard]] inline Duration passing(LaneSwim const& swim, Distance at) {
    return Duration::ms((swim.pace * Exact{at.units()}).rounded());
}

} // namespace lengthwise::calc
