#pragma once

#include "plan/plan.hpp"

#include <unordered_map>

namespace lengthwise::check {

/// Is anything in a section swum as a drill? What several places share is looked into once.
class Drilled {
  public:
    explicit Drilled(plan::Plan const& plan) : plan_(plan) {}

    [[nodiscard]] bool section(plan::Section const& section) { return any(section.body, false); }

  private:
    [[nodiscard]] bool any(plan::Index body, bool single);
    [[nodiscard]] bool item(plan::Item const& item);
    [[nodiscard]] bool known(plan::Index body, bool single);
    [[nodiscard]] bool leaf(plan::Item const& leaf) const;

    plan::Plan const& plan_;
    std::unordered_map<plan::Index, bool> bodies_;
};

} // namespace lengthwise::check
