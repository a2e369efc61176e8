#pragma once

#include "plan/plan.hpp"

#include <array>
#include <vector>

/// Whose pace a session is timed at.
namespace lengthwise::calc {

/// The paces of the swimmers who name a lane. A lane goes by the slowest of them that has a
/// threshold (of equals by the first), in every session, whatever settings say.
class LanePaces {
  public:
    explicit LanePaces(plan::Plan const& plan);

    /// Nothing for a lane without such a swimmer, and for 0.
    [[nodiscard]] plan::Threshold const* of(int lane) const;

    /// Lanes that have one, ascending.
    [[nodiscard]] std::vector<int> lanes() const;

  private:
    std::array<plan::Threshold const*, limits::lanes + 1> by_lane_{};
};

/// The pace at which a lane swims a session: its slowest swimmer's, else the threshold in force.
/// Lane 0 is nobody's. Nothing where there is neither.
[[nodiscard]] plan::Threshold const* pace_of(plan::Plan const& plan, LanePaces const& lanes,
                                             plan::Session const& session, int lane);

} // namespace lengthwise::calc
