#pragma once

#include "plan/plan.hpp"

#include <array>
#include <vector>

/// Whose pace a session is timed at.
namespace lengthwise::plan {

/// The paces of the swimmers who name a lane. A lane goes by the slowest of them that has a
/// threshold (of equals by the first), in every session, whatever settings say.
class LanePaces {
  public:
    /// The plan keeps its swimmers as long as this is used.
    explicit LanePaces(Plan const& plan);

    /// Nothing for a lane without such a swimmer, and for 0.
    [[nodiscard]] Threshold const* of(int lane) const;

    /// Lanes that have one, ascending.
    [[nodiscard]] std::vector<int> const& lanes() const { return lanes_; }

  private:
    std::array<Threshold const*, limits::lanes + 1> by_lane_{};
    std::vector<int> lanes_;
};

/// The pace at which a lane swims a session: its slowest swimmer's, else the threshold in force.
/// Lane 0 is nobody's. Nothing where there is neither.
[[nodiscard]] Threshold const* pace_of(Plan const& plan, LanePaces const& lanes, Session const& session,
                                       int lane);

/// True if nothing is left of the pace, in this pool, when `threshold minus` takes away this much
/// for 100 of the pool's unit.
[[nodiscard]] bool takes_all(Threshold const& threshold, Pool const& pool, Duration minus);

} // namespace lengthwise::plan
