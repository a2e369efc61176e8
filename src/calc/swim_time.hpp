#pragma once

#include "calc/exact.hpp"
#include "calc/pacing.hpp"
#include "plan/plan.hpp"
#include "units/distance.hpp"
#include "units/duration.hpp"
#include "units/pool.hpp"
#include "units/range.hpp"

#include <cstdint>
#include <optional>
#include <vector>

/// How long a rep takes, and how far a timed one goes. The formulas, their sources and worked
/// examples: docs/time.md.
namespace lengthwise::calc {

/// One rep.
struct RepTime {
    Band<Duration> swim;  ///< with its breaks; only where `timed`
    Duration breaks;      ///< of `broken`
    Distance estimated;   ///< what a timed rep goes, whole lengths; 0 for a distance
    bool timed = true;    ///< false: the time is unknown, for want of a pace
    bool measured = true; ///< false: of a timed rep, how far it goes is unknown
    bool assumed = false; ///< true: a figure is what a reserve allows that the threshold does not say
};

/// What takes longer, or goes farther, counts as this much: twice what any session may hold, and
/// small enough that 9999 of it can be added up.
inline constexpr Duration longest_time = Duration::hours(2 * limits::session_hours);
inline constexpr Distance farthest = Distance::metres(2 * limits::session_km * 1000);

/// A rep of `amount` (Distance units, or milliseconds if `timed`) swum with these terms.
[[nodiscard]] RepTime rep_time(plan::Plan const& plan, Pacing const& pacing, plan::Terms const& terms,
                               std::int64_t amount, bool timed);

/// What is swum of a pool's lengths, of metres where it has none: rounded down, at most `farthest`.
[[nodiscard]] Distance whole_lengths(Exact const& units, Pool const& pool);

/// The swimming of one rep by its manners: a part of a split as often as it comes, breaks left
/// out. The times add up to the rep's. Nothing where the time is unknown.
struct PartTime {
    plan::Manner const* manner = nullptr;
    std::optional<Band<Duration>> swim;
    std::optional<Exact> goes; ///< in units of distance, of a timed rep; nothing where a pace is wanting
};
[[nodiscard]] std::vector<PartTime> part_times(plan::Plan const& plan, Pacing const& pacing,
                                               plan::Terms const& terms, std::int64_t amount, bool timed);

/// One part of a rep (an unsplit one is its only part) by its expected figures, as the reserve sees it.
struct ExpectedPart {
    plan::Manner const* manner = nullptr;
    std::int64_t amount = 0;  ///< once, in the rep's own unit
    std::int64_t repeats = 1; ///< how often the parts come
    double form = 1;          ///< factor of stroke, mode and gear
    double ms = 0;            ///< what it takes once
    double distance = 0;      ///< what it goes once, in units; of timed ones not rounded to lengths
    bool emptied = false;     ///< its effort would use up more than the whole reserve, and is held to that
    std::optional<Duration> asked; ///< then: what a distance would take at its effort alone
};

/// In their order; the pacing has a threshold.
[[nodiscard]] std::vector<ExpectedPart> expected_parts(plan::Plan const& plan, Pacing const& pacing,
                                                       plan::Terms const& terms, std::int64_t amount,
                                                       bool timed);

} // namespace lengthwise::calc
