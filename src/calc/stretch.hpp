#pragma once

#include "calc/swim_time.hpp"
#include "plan/plan.hpp"
#include "units/distance.hpp"
#include "units/duration.hpp"
#include "units/range.hpp"

#include <cstdint>

/// What reps in a row take, in closed form: the algebra of docs/notation.md, "Time".
namespace lengthwise::calc {

/// One rep, an item, a round, or whatever else is swum in a row. Figures stick at
/// `longest_time` and `farthest`. A Stretch of nothing is neutral in front of others.
struct Stretch {
    Band<Duration> slots;    ///< from its first start to the end of its last slot
    Band<Duration> end;      ///< the same to the end of its last swim: what it takes with nothing behind it
    Band<Duration> gap;      ///< between it and what follows, unless something around it says otherwise
    Band<Duration> swimming; ///< swims without breaks, added up
    Distance estimated;      ///< what timed reps go
    plan::Index untimed = plan::no_index;    ///< the first item with a rep of unknown time; then no
                                             ///< time above is of use
    plan::Index unmeasured = plan::no_index; ///< the first timed item whose distance is unknown
    plan::Index assumed = plan::no_index;    ///< the first item with a rep that an assumed reserve decides

    /// What `next` adds behind it.
    void then(Stretch const& next);

    /// `n` of it in a row, at least one.
    [[nodiscard]] Stretch times(std::int64_t n) const;

    /// A send-off holds it up; behind its slot there is nothing to wait for.
    void leave_on(Duration send_off);
};

/// A rep of `item`, with nothing behind it.
[[nodiscard]] Stretch stretch_of(RepTime const& rep, plan::Index item);

/// Puts behind rep or round `number` (from 0) of an item what follows it: its send-off, or its rest. A
/// round's own rest takes the place of what its last rep would leave.
void recover(Stretch& one, plan::Plan const& plan, plan::Item const& item, std::uint32_t number);

/// What a recovery puts between a rep and the next: nothing for a send-off. `as needed` and
/// breaths are common practice: 10 to 60 s, and 2 to 4 s each.
[[nodiscard]] Band<Duration> gap_of(plan::Recovery const& recovery);

} // namespace lengthwise::calc
