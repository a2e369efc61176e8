#pragma once

#include "grammar/tree.hpp"
#include "units/distance.hpp"
#include "units/pool.hpp"

#include <vector>

/// Distances as written numbers again. Private to the spelling of plans.
namespace lengthwise::plan {

/// A distance and the pool that it was read in.
struct Measured {
    Distance distance;
    Pool pool;
};

/// A number leaf that reads as every one of these distances in its pool (there are several in a
/// named set alone). Written with `unit` where that is exact: a bare number else in lengths,
/// anything else in metres or yards. A distance that no number of the notation says is
/// rounded to hundredths of a metre; no distance that was read is one.
[[nodiscard]] grammar::Node spell_number(std::vector<Measured> const& readings, grammar::WrittenUnit unit);

/// The same for the steps of a ladder, whose units stand on all, on none, or on the last for all.
[[nodiscard]] std::vector<grammar::Node> spell_ladder(std::vector<std::vector<Measured>> const& steps,
                                                      std::vector<grammar::WrittenUnit> const& units);

} // namespace lengthwise::plan
