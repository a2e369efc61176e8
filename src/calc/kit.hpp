#pragma once

#include "plan/plan.hpp"

#include <unordered_set>

namespace lengthwise::calc {

/// Gathers the gear that lines need: every word in force for at least one of their reps
/// or parts. What several places share is read once, and what
/// it costs goes by the lines added, not by the plan.
class KitReader {
  public:
    explicit KitReader(plan::Plan const& plan) : plan_(plan) {}

    void add(plan::Item const& item);
    [[nodiscard]] plan::GearSet const& kit() const { return kit_; }

  private:
    void add_items(plan::Item const& item, plan::Index body);
    void add_terms(plan::Terms const& terms);

    plan::Plan const& plan_;
    std::unordered_set<plan::Index> seen_; ///< of Plan::items
    plan::GearSet kit_;
};

} // namespace lengthwise::calc
