#pragma once

#include "plan/plan.hpp"

#include <unordered_map>

namespace lengthwise::calc {

/// Gathers the gear that lines need: every word in force for at least one of their reps
/// or parts. What several places share is read once, however many sessions ask for it, and what
/// it costs goes by the lines added, not by the plan.
class KitReader {
  public:
    explicit KitReader(plan::Plan const& plan) : plan_(plan) {}

    void add(plan::Item const& item);
    [[nodiscard]] plan::GearSet const& kit() const { return kit_; }
    /// For other lines; what is known of sets stays.
    void begin_anew() { kit_ = {}; }

  private:
    [[nodiscard]] plan::GearSet of(plan::Item const& item);
    [[nodiscard]] plan::GearSet of_items(plan::Item const& item, plan::Index body);
    [[nodiscard]] plan::GearSet of_terms(plan::Terms const& terms) const;

    plan::Plan const& plan_;
    std::unordered_map<plan::Index, plan::GearSet> sets_; ///< by the item that a `use` holds
    plan::GearSet kit_;
};

} // namespace lengthwise::calc
