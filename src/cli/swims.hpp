#pragma once

#include "calc/threshold.hpp"
#include "units/distance.hpp"
#include "units/pool.hpp"

#include <string>
#include <string_view>
#include <variant>
#include <vector>

/// Swims as they are typed: "200m 3:32 400m 7:22", "36 lengths in 31 min", "400 8:20 in 50m".
/// Distances, times and pools are read by the notation's own doorway.
namespace lengthwise::cli {

/// What cannot be read, in one sentence.
struct Unread {
    std::string problem;
};

/// A pool as the notation has it behind `pool` and `in`, open water among them.
struct Course {
    std::string text; ///< as it was typed; empty where none was
    Pool pool;
};

/// `words` are cut at their blanks. A swim without `in` was swum in `course`, whose unit a bare
/// number has. At least one swim, at most 100.
[[nodiscard]] std::variant<std::vector<calc::Swim>, Unread> read_swims(std::vector<std::string> const& words,
                                                                       Course const& course);

/// "750m,1500m", "sprint, 1900m": distances to predict, race words among them.
[[nodiscard]] std::variant<std::vector<Distance>, Unread> read_distances(std::string_view list,
                                                                         Course const& course);

} // namespace lengthwise::cli
