#pragma once

#include "calc/timeline.hpp"
#include "plan/plan.hpp"

#include <string>
#include <vector>

/// Whose times a rule looks at.
namespace lengthwise::check {

class TimedLanes {
  public:
    explicit TimedLanes(plan::Plan const& plan);

    /// The lanes that a session names; where it names none, all that the plan knows, for each keeps its
    /// pace; lane 0 alone where there are no lanes.
    [[nodiscard]] std::vector<int> of(plan::Session const& session) const;

    /// The same, lanes of one pace together.
    [[nodiscard]] std::vector<std::vector<int>> by_pace(calc::Clock& clock, plan::Index session) const;

    /// " in lane 2"; nothing when it is every lane of the session.
    [[nodiscard]] std::string in(std::vector<int> const& lanes, plan::Session const& session) const;

  private:
    plan::Plan const& plan_;
    std::vector<int> all_; ///< that sessions and swimmers name, ascending
};

} // namespace lengthwise::check
