#pragma once

#include <string>
#include <utility>
#include <vector>

namespace lengthwise::bench {

/// What a figure is held against.
enum class Bound { none, at_least, at_most };

/// One row of the table that the report ends with. Every figure is of this run.
struct Goal {
    std::string what; ///< and its unit
    double here = 0;
    Bound bound = Bound::none;
    double wanted = 0;
    std::string peer{};    ///< the program or reader that stands beside it, if one does
    double beside = 0;     ///< its figure, in the same unit
    double ratio = 0;      ///< ours over its; 0: nobody stands beside
    bool of_ratio = false; ///< the bound is one on the ratio
};

class Goals {
  public:
    void add(Goal goal) { rows_.push_back(std::move(goal)); }
    void add(Goals const& more) { rows_.insert(rows_.end(), more.rows_.begin(), more.rows_.end()); }
    /// Markdown, in 100 columns.
    void print() const;

  private:
    std::vector<Goal> rows_;
};

} // namespace lengthwise::bench
