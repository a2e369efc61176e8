#pragma once

#include "plan/plan.hpp"
#include "plan/tree_builder.hpp"

/// Settings spelled into a tree. Private to the spelling of plans.
namespace lengthwise::plan {

/// A line for each.
void spell_settings(TreeBuilder& tree, Settings const& settings);

/// On the line in hand, as a setting or of a swimmer.
void spell_threshold(TreeBuilder& tree, Threshold const& threshold);

/// A distance leaf with a unit of its own, as where no pool says what a bare number is.
void spell_distance(TreeBuilder& tree, grammar::Kind kind, Distance distance, Unit unit);

} // namespace lengthwise::plan
