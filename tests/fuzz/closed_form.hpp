#pragma once

#include "calc/reserve.hpp"
#include "calc/timeline.hpp"
#include "calc/totals.hpp"
#include "fuzz/reading.hpp"

/// What the target `closed_form` compares, lane by lane.
namespace lengthwise::fuzz {

/// Distance, lengths, reps and longest rep of plan, weeks, sessions and sections.
void sums_are_right(plan::Plan const& plan, calc::Reckoner& reckoner, int lane);

/// The same by stroke, mode, effort, gear and section.
void words_are_right(plan::Plan const& plan, int lane);

/// Sections and lines, to the millisecond.
void times_are_right(plan::Plan const& plan, calc::Clock& clock, plan::Index session, int lane);

/// Where D' runs out, and how much of it is used up.
void reserve_is_right(plan::Plan const& plan, calc::Clock& clock, calc::Reserve& reserve, plan::Index session,
                      int lane);

} // namespace lengthwise::fuzz
