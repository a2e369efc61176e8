#pragma once

#include "check/walk.hpp"
#include "grammar/diagnostic.hpp"

#include <unordered_set>
#include <vector>

namespace lengthwise::check {

/// What stands in a named set is found once, however often the set is used.
class SeenInSets {
  public:
    bool first_time(Met const& met) { return !met.used_at || begins_.insert(met.item.span.begin).second; }

  private:
    std::unordered_set<std::uint32_t> begins_;
};

/// The `use` an item came by, as the second place of a finding.
[[nodiscard]] inline std::vector<Related> used(Met const& met) {
    return met.used_at ? std::vector<Related>{{*met.used_at, "used here"}} : std::vector<Related>{};
}

/// Where a finding about an item points.
[[nodiscard]] inline Span place(plan::Item const& item) {
    return item.span;
}

} // namespace lengthwise::check
