#pragma once

#include "plan/plan.hpp"
#include "units/duration.hpp"

#include <optional>
#include <vector>

namespace lengthwise::calc {

/// The second that a pace clock's hand shows at one start after the other.
struct Hand {
    std::vector<int> marks; ///< 0 to 59; over again where there are more starts, unless `more`
    bool more = false;      ///< and others behind, which are not worked out
};

/// For `starts` starts at send-offs, the first of them `begun` after a full minute. One step S holds for all:
/// the hand comes round after 60/gcd(60, S mod 60) starts, a minute's worth after one. Several are one step
/// for each start. Nothing where a start is no whole second, as no hand shows that.
[[nodiscard]] std::optional<Hand> hand_at_starts(std::vector<Duration> const& steps, std::int64_t starts,
                                                 Duration begun = {});

/// The set with send-offs in an item: the item itself, else the only one inside its group.
struct SendOffs {
    plan::Index terms = 0;
    std::int64_t starts = 0; ///< reps or rounds
};
[[nodiscard]] std::optional<SendOffs> send_offs_of(plan::Plan const& plan, plan::Item const& item);

[[nodiscard]] std::vector<Duration> steps_of(plan::Plan const& plan, SendOffs const& set);

} // namespace lengthwise::calc
