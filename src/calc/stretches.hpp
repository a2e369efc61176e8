#pragma once

#include "calc/paces.hpp"
#include "calc/stretch.hpp"
#include "plan/plan.hpp"

#include <cstdint>
#include <unordered_map>
#include <vector>

namespace lengthwise::calc {

/// The stretches of a plan's items, remembering what several places share.
class Stretches {
  public:
    Stretches(plan::Plan const& plan, Paces& paces) : plan_(plan), paces_(paces) {}

    /// Of Plan::items[index], which is swum: all its reps or rounds.
    [[nodiscard]] Stretch of(plan::Index index, PacingId pacing);

    /// One round of a group or `use`, of those that `selection` chooses (null: that none does), without
    /// what follows it.
    [[nodiscard]] Stretch round(plan::Index index, plan::Selection const* selection, PacingId pacing);

  private:
    template <typename Once>
    [[nodiscard]] Stretch repeated(plan::Item const& item, Once once) const;
    template <typename Once>
    [[nodiscard]] Stretch by_kind(plan::Item const& item, Once once) const;
    template <typename Once>
    [[nodiscard]] Stretch one_by_one(plan::Item const& item, Once once) const;
    [[nodiscard]] std::vector<plan::Selection const*> choosers(plan::Item const& item) const;
    [[nodiscard]] Stretch body(plan::Index index, plan::Index first, PacingId pacing);
    [[nodiscard]] Stretch siblings(plan::Index index, plan::Index first, PacingId pacing);

    plan::Plan const& plan_;
    Paces& paces_;
    std::unordered_map<std::uint64_t, Stretch> shared_; ///< by pacing and body
};

} // namespace lengthwise::calc
