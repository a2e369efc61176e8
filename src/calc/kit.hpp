#pragma once

#include "plan/plan.hpp"

#include <vector>

namespace lengthwise::calc {

/// Gathers the gear that lines need: every word in force for at least one of their reps
/// or parts. What several places share is read once.
class KitReader {
  public:
    explicit KitReader(plan::Plan const& plan) : plan_(plan), seen_(plan.items.size()) {}

    void add(plan::Item const& item);
    [[nodiscard]] plan::GearSet const& kit() const { return kit_; }

  private:
    void add_items(plan::Item const& item, plan::Index body);
    void add_terms(plan::Terms const& terms);

    plan::Plan const& plan_;
    std::vector<bool> seen_; ///< beside Plan::items
    plan::GearSet kit_;
};

} // namespace lengthwise::calc
