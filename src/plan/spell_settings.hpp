#pragma once

#include "plan/plan.hpp"
#include "plan/tree_builder.hpp"

/// Settings spelled into a tree. Private to the spelling of plans.
namespace lengthwise::plan {

/// A line for each; `pool` is in force there.
void spell_settings(TreeBuilder& tree, Settings const& settings, Pool const& pool);

/// On the line in hand, as a setting or of a swimmer.
void spell_threshold(TreeBuilder& tree, Threshold const& threshold, Pool const& pool);

/// A distance leaf with a unit of its own; in lengths only where nothing else says it.
void spell_distance(TreeBuilder& tree, grammar::Kind kind, Distance distance, Unit unit,
                    Pool const& pool = {});

} // namespace lengthwise::plan
