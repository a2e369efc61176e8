#pragma once

#include "calc/exact.hpp"
#include "compose/day_sizes.hpp"
#include "units/duration.hpp"
#include "units/pool.hpp"

/// The most time that a session of a size can take, whatever is written into it: what the ramp
/// holds against the slot. No week occurs in it, and it grows with the session's laps; so more
/// weeks, a longer slot or a faster threshold never make a plan impossible.
namespace lengthwise::compose {

class SessionTimes {
  public:
    /// `threshold` is the time of 100 of the pool's unit; above 0.
    SessionTimes(Pool const& pool, Duration threshold);

    /// Of a session of `laps` (4 or more) whose longest rep is `rep` (1 or more; on a long day
    /// at most `laps` - 3), rounded up to the millisecond. `rep` is of no matter on other days.
    [[nodiscard]] Duration of(DayKind kind, int laps, int rep) const;

    /// The largest session of at most `most` laps that `slot` holds; below 4 (on a long day
    /// below `rep` + 3): none does.
    [[nodiscard]] int largest(DayKind kind, int rep, Duration slot, int most) const;

  private:
    [[nodiscard]] calc::Exact with_spare(DaySizes const& sizes, DayKind kind, int rep, int spare) const;

    Pool pool_;
    calc::Exact lap_; ///< milliseconds at threshold, as the four below
    calc::Exact easy_, choice_, kick_, drilled_;
};

} // namespace lengthwise::compose
