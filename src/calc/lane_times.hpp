#pragma once

#include "calc/timeline.hpp"
#include "calc/totals.hpp"

#include <optional>
#include <utility>
#include <vector>

namespace lengthwise::calc {

/// What a scope takes in every lane, as Sums has what it adds up to: once for all lanes that
/// nothing tells apart, and by lane where lines or paces differ.
class LaneTimes {
  public:
    /// A lane that was not set takes what lane 0 takes.
    [[nodiscard]] SectionTimes const& of(int lane) const;
    void set(int lane, SectionTimes const& times);

    void add(LaneTimes const& more);

  private:
    SectionTimes others_;                             ///< of lane 0
    std::vector<std::pair<int, SectionTimes>> lanes_; ///< ascending
};

/// Times the sections of sessions in all lanes that may differ: those that a session names, those
/// with a pace of their own, and lane 0.
class LaneClock {
  public:
    /// With `only`, that lane is timed alone, and stands for all.
    explicit LaneClock(plan::Plan const& plan, std::optional<int> only = {}) : clock_(plan), only_(only) {}

    /// One for each section of the session, in their order; good until the next call. `named`: the
    /// lanes that the session names.
    [[nodiscard]] std::vector<LaneTimes> const& sections(plan::Index session, LaneSet const& named);

    [[nodiscard]] Clock& clock() { return clock_; }

  private:
    void time(plan::Index session, int lane, int as);

    Clock clock_;
    std::optional<int> only_;
    std::vector<LaneTimes> sections_;
    std::vector<SectionTimes> of_lane_; ///< read last
};

} // namespace lengthwise::calc
