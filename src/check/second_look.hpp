#pragma once

#include "check/inquiry.hpp"

/// The parts of the rule second-look, by what they look at.
namespace lengthwise::check::second_look_at {

void places(Inquiry& inquiry); ///< no pool, empty sections, headings that look like lines, odd thresholds
void words(Inquiry& inquiry);  ///< modifiers that change nothing or less than they seem to
void rests(Inquiry& inquiry);  ///< recovery that is missing or shorter than it seems

} // namespace lengthwise::check::second_look_at
