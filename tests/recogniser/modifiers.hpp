#pragma once

#include "recogniser/figures.hpp"

/// The productions behind an item's amounts. Each reads what it can and says whether it
/// found itself; after a no, the stream stands on the line that does not fit.
namespace lengthwise::recogniser {

/// `single`: they stand behind one amount, so that a split or a break may be among them.
[[nodiscard]] bool modifiers(Stream& in, bool single);

/// The section_defaults of a heading.
[[nodiscard]] bool section_defaults(Stream& in);

[[nodiscard]] bool stroke(Stream& in);
[[nodiscard]] bool starts_stroke(Stream const& in);

} // namespace lengthwise::recogniser
