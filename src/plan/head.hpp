#pragma once

#include "plan/settings.hpp"
#include "plan/work.hpp"

namespace lengthwise::plan {

/// Reads what stands before the first week or session of the root file: its name, race,
/// swimmers, `before`. `scope` is the file's, settings already read.
void read_head(Work& work, grammar::Tree const& tree, Scope const& scope);

/// The day of a date leaf.
[[nodiscard]] Date date_of(grammar::Node const& leaf);

} // namespace lengthwise::plan
