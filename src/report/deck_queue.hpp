#pragma once

#include "calc/lane_hand.hpp"
#include "calc/lane_swimmers.hpp"
#include "plan/plan.hpp"
#include "report/deck_view.hpp"

#include <optional>
#include <string>
#include <vector>

namespace lengthwise::report {

/// Says of a session's lines what comes of swimmers one behind the other in a lane (docs/time.md,
/// "In one lane"). Texts are safe to print.
class QueueReader {
  public:
    QueueReader(plan::Plan const& plan, plan::Index session, calc::Clock& clock, DeckQueue const& asked,
                bool ascii)
        : plan_(plan), session_(session), clock_(clock), asked_(asked), ascii_(ascii) {}

    /// Who swims in the lanes shown; before anything else is asked.
    void find(DeckClock const& lanes);

    /// No lane has two swimmers.
    [[nodiscard]] bool empty() const { return queues_.empty(); }

    /// Below a line: the hand for each of them, whether all get away, who laps whom.
    /// `set`: the one with send-offs in it.
    [[nodiscard]] std::vector<std::string> below(plan::Index line, std::optional<calc::SendOffs> const& set);

    /// Who they are, and what stands below lines; once all lines were asked.
    [[nodiscard]] std::vector<std::string> foot() const;

  private:
    struct Queue {
        int lane = 0;                      ///< the one whose pace they have; 0: nobody's
        std::vector<plan::Index> swimmers; ///< named; nothing: `count` at the lane's pace
        int count = 0;
    };

    void add(int lane);
    [[nodiscard]] std::string label(Queue const& queue, int place) const;
    void add_hands(std::vector<std::string>& texts, Queue const& queue, calc::SendOffs const& set);
    void add_away(std::vector<std::string>& texts, Queue const& queue, plan::Index line);
    void add_meetings(std::vector<std::string>& texts, Queue const& queue, plan::Index line);
    [[nodiscard]] std::vector<std::string> meetings(Queue const& queue, calc::LaneRep const& rep) const;
    [[nodiscard]] std::string meeting(Queue const& queue, int ahead, calc::LaneSwim const& first, int behind,
                                      calc::LaneSwim const& second) const;
    [[nodiscard]] std::optional<calc::LaneSwim> first_swim(Queue const& queue, calc::LaneRep const& rep);
    [[nodiscard]] std::string who(Queue const& queue) const;

    plan::Plan const& plan_;
    plan::Index session_;
    calc::Clock& clock_;
    DeckQueue asked_;
    bool ascii_;
    std::vector<Queue> queues_;
    bool hands_ = false;    ///< a line said them
    bool meetings_ = false; ///< a line said that somebody is lapped or caught
    bool all_away_ = true;
    bool judged_ = false; ///< a line was reckoned
};

} // namespace lengthwise::report
