#pragma once

#include "compose/climb.hpp"
#include "compose/problem.hpp"

#include <cstddef>
#include <vector>

/// The search behind `best_climb`.
namespace lengthwise::compose {

/// A problem and a growth to keep to, its steps looked up instead of reckoned.
class Tables {
  public:
    Tables(Problem const& problem, Growth const& growth);

    [[nodiscard]] Problem const& problem() const { return problem_; }
    [[nodiscard]] int next_rep(int rep) const { return next_rep_[static_cast<std::size_t>(rep)]; }
    [[nodiscard]] int next_week(int laps) const { return next_week_[static_cast<std::size_t>(laps)]; }
    /// A higher week than today's and all that is aimed at is of no use.
    [[nodiscard]] int top() const { return static_cast<int>(next_week_.size()) - 1; }

  private:
    Problem const& problem_;
    std::vector<int> next_rep_;  ///< from 0 (today's) to the race rep
    std::vector<int> next_week_; ///< from 0 (today's) to `top`
};

/// By the rep, 0 to the race rep, the highest week that can be reached with it; 0 where none can.
/// All from the least week that holds the rep up to it can be reached.
using Frontier = std::vector<int>;

/// One a build week.
[[nodiscard]] std::vector<Frontier> frontiers(Tables const& tables);

/// The steps nearest to a straight climb, by docs/compose.md; there are some.
[[nodiscard]] std::vector<Step> search(Tables const& tables);

} // namespace lengthwise::compose
