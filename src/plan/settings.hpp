#pragma once

#include "grammar/tree.hpp"
#include "plan/plan.hpp"
#include "plan/work.hpp"

#include <cstdint>
#include <optional>

namespace lengthwise::plan {

/// What is in force in a scope: the nearest settings around it.
struct Scope {
    Index pool = 0;             ///< of Plan::pools
    Index threshold = no_index; ///< of Plan::thresholds
    std::optional<Range<Duration>> rest;
    Index settings = 0; ///< the scope's own, of Plan::settings
    Index factors = 0;  ///< the nearest settings that have factors; 0: none has
};

/// Reads the settings among the children `first` to `end` of a file, week or session (other nodes are passed
/// over) and puts them over `outer`. They hold for the whole scope, in any order; each is said once.
[[nodiscard]] Scope read_settings(Work& work, grammar::Tree const& tree, std::uint32_t first,
                                  std::uint32_t end, Scope const& outer, bool file_level);

/// `threshold 1:55 per 100m in 50m reserve 20m`, written where `pool` is in force.
[[nodiscard]] std::optional<Threshold> read_threshold(Work& work, grammar::Tree const& tree,
                                                      std::uint32_t node, Pool const& pool);

} // namespace lengthwise::plan
