#pragma once

#include "calc/lane_hand.hpp"
#include "calc/stretch.hpp"
#include "calc/timeline.hpp"
#include "plan/plan.hpp"

#include <algorithm>
#include <cstdint>
#include <optional>
#include <unordered_map>
#include <vector>

/// Does who swims a set with send-offs come home before leaving again?
namespace lengthwise::calc {

/// A rep or round against its send-off.
struct TightStart {
    Band<Duration> takes; ///< to the end of its last swim
    Duration busy;        ///< expected, with what send-offs inside it add
    Duration send_off;
    std::uint32_t number = 0; ///< counted from 1; 0 where all are alike

    [[nodiscard]] Duration left() const { return send_off - std::max(takes.expected, busy); }
};

/// Goes through the reps or rounds of one item that has a send-off, in one lane.
class TightStarts {
  public:
    TightStarts(plan::Plan const& plan, Clock& clock, plan::Index session, int lane)
        : plan_(plan), clock_(clock), session_(session), lane_(lane) {}

    /// The one with least time left, the first of several; nothing where times are unknown.
    [[nodiscard]] std::optional<TightStart> of(plan::Item const& item);

  private:
    void one_by_one(plan::Item const& item, plan::Recovery const& recovery);
    void by_kind(plan::Item const& item, plan::Terms const& terms);
    void take(plan::Item const& item, plan::Selection const* selection, std::uint32_t number,
              Duration send_off);
    [[nodiscard]] Stretch stretch_of(plan::Item const& item, plan::Selection const* selection,
                                     std::uint32_t number);

    template <typename Visit>
    void for_each_selection(plan::Item const& item, Visit visit) {
        auto const& selections = plan_.terms[item.terms].selections;
        for (auto i = selections.first; i < selections.end(); ++i) {
            visit(plan_.selections[i]);
        }
    }

    plan::Plan const& plan_;
    Clock& clock_;
    plan::Index session_;
    int lane_;
    std::optional<TightStart> tightest_;
    std::unordered_map<plan::Selection const*, Stretch> stretches_; ///< of the item in hand
};

/// Is every start of the set made in each of these lanes, as expected? Where a time is unknown nothing
/// speaks against it.
[[nodiscard]] bool starts_are_made(plan::Plan const& plan, Clock& clock, plan::Index session,
                                   std::vector<int> const& lanes, SendOffs const& set);

} // namespace lengthwise::calc
