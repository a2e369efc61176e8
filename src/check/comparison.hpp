#pragma once

#include "plan/plan.hpp"

#include <map>
#include <utility>

namespace lengthwise::check {

/// Are two readings of one text swum alike? What has been compared once is known.
class Comparison {
  public:
    explicit Comparison(plan::Plan const& plan) : plan_(plan) {}

    [[nodiscard]] bool alike(plan::Terms const& a, plan::Terms const& b) const;
    /// The items from `a` and from `b` on, or only these two.
    [[nodiscard]] bool alike(plan::Index a, plan::Index b, bool single);

  private:
    [[nodiscard]] bool compare(plan::Index a, plan::Index b, bool single);
    [[nodiscard]] bool alike(plan::Item const& a, plan::Item const& b);

    plan::Plan const& plan_;
    std::map<std::pair<plan::Index, plan::Index>, bool> known_;
};

} // namespace lengthwise::check
