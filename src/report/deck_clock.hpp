#pragma once

#include "calc/timeline.hpp"
#include "plan/plan.hpp"
#include "report/deck_view.hpp"

#include <optional>
#include <vector>

namespace lengthwise::report {

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
    [[nodiscard]] int timed_as(int lane);
    [[nodiscard]] DeckPace pace(int lane);
    void turn_round(DeckClock& clock) const;

    plan::Plan const& plan_;
    plan::Index session_;
    calc::Clock clock_;
    std::vector<std::vector<calc::LineTimes>> lines_; ///< by lane
};

} // namespace lengthwise::report
