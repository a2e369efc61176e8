#pragma once

#include "calc/drain.hpp"
#include "calc/swim_time.hpp"
#include "plan/plan.hpp"
#include "units/duration.hpp"

#include <cstdint>

/// What one rep, or a rest, takes of the reserve.
namespace lengthwise::calc {

/// Critical speed and D' at one pace, as the reserve needs them: units of distance, milliseconds.
struct Tank {
    double rate = 1;    ///< R, for a unit of distance at threshold; critical speed is 1/R
    double reserve = 1; ///< D', expected
};

/// The pacing has a threshold.
[[nodiscard]] Tank tank_of(Pacing const& pacing);

/// Lying at the wall.
[[nodiscard]] Drain rest(Tank const& tank, Duration time);

/// A rep of `amount` (Distance units, or milliseconds if `timed`) swum with these terms.
[[nodiscard]] Drain rep_drain(plan::Plan const& plan, Pacing const& pacing, plan::Terms const& terms,
                              std::int64_t amount, bool timed);

} // namespace lengthwise::calc
