#pragma once

#include "plan/plan.hpp"

#include <vector>

namespace lengthwise::calc {

/// Terms whose reps take the same time differ in what lies around them: rest, notes, the name of
/// a drill. This gives all of a kind the number of the first.
class Alike {
  public:
    explicit Alike(plan::Plan const& plan);

    /// Of Plan::terms: the first that is timed as this one.
    [[nodiscard]] plan::Index first(plan::Index terms) const { return first_[terms]; }

  private:
    std::vector<plan::Index> first_;
};

} // namespace lengthwise::calc
