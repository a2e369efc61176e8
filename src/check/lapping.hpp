#pragma once

#include "check/inquiry.hpp"

namespace lengthwise::check {

/// For rule `lanes`: long reps in which the fastest swimmer of a lane laps the slowest.
void judge_lapping(Inquiry& inquiry);

} // namespace lengthwise::check
