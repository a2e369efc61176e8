#pragma once

#include "calc/timeline.hpp"
#include "plan/plan.hpp"
#include "report/deck_view.hpp"

#include <optional>
#include <vector>

namespace lengthwise::report {

/// The lane whose pace a session is shown at. A session without lane lines (lane 0) goes by the threshold in
/// force; where there is none, by the lowest lane that has a pace of its own.
[[nodiscard]] int timed_as(plan::Plan const& plan, calc::Clock& clock, plan::Index session, int lane);

/// Reads the times of one session for its deck, lane by lane.
class DeckTimer {
  public:
    DeckTimer(plan::Plan const& plan, plan::Index session) : plan_(plan), session_(session), clock_(plan) {}

    /// For these lanes, as in Deck::lanes; before anything else is asked. `start` beats what the plan says.
    [[nodiscard]] DeckClock read(std::vector<int> const& lanes, std::optional<TimeOfDay> start);

    /// When an item leaves, by lane; nothing where it is unknown or not among the lane's lines.
    [[nodiscard]] std::vector<std::optional<Duration>> starts(plan::Index item) const;

    [[nodiscard]] calc::Clock& clock() { return clock_; }

  private:
    [[nodiscard]] DeckPace pace(int lane);
    void turn_round(DeckClock& clock) const;

    plan::Plan const& plan_;
    plan::Index session_;
    calc::Clock clock_;
    std::vector<std::vector<calc::LineTimes>> lines_; ///< by lane
};

} // namespace lengthwise::report
