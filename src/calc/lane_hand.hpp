#pragma once

#include "plan/plan.hpp"
#include "units/duration.hpp"

#include <cstdint>
#include <optional>
#include <unordered_map>
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

/// A set with send-offs.
struct SendOffs {
    plan::Index item = 0;
    plan::Index terms = 0;
    std::int64_t starts = 0; ///< reps or rounds
};

/// Finds them, remembering what several places share.
class SendOffReader {
  public:
    explicit SendOffReader(plan::Plan const& plan) : plan_(plan) {}

    /// The item itself, else the only one inside its group or named set; nothing where there are several, or
    /// where rounds differ.
    [[nodiscard]] std::optional<SendOffs> of(plan::Item const& item);

  private:
    struct Found {
        std::optional<SendOffs> only;
        bool several = false;
    };

    [[nodiscard]] Found find(plan::Item const& item);
    [[nodiscard]] Found find_inside(plan::Item const& item);

    plan::Plan const& plan_;
    std::unordered_map<plan::Index, Found> shared_; ///< by body
};

[[nodiscard]] std::vector<Duration> steps_of(plan::Plan const& plan, SendOffs const& set);

} // namespace lengthwise::calc
