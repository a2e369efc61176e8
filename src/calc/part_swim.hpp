#pragma once

#include "calc/swim_time.hpp"

#include <cstdint>
#include <optional>

/// One part of a rep: how long it takes, how far it goes, and where the reserve allows less than its
/// effort asks. The rep is their sum: swim_time.hpp.
namespace lengthwise::calc {

/// `time`, or `longest_time` where it is longer or too long to be counted.
[[nodiscard]] Duration capped(std::optional<Duration> time);

/// One part, or a rep without parts.
struct Part {
    plan::Manner const& manner;
    std::int64_t amount = 0;
    std::int64_t repeats = 1;
};

class PartSwim {
  public:
    /// The terms of the whole rep. Both outlive this.
    PartSwim(Pacing const& pacing, plan::Terms const& terms) : pacing_(pacing), terms_(terms) {}

    /// Of a distance; nothing where a pace is wanting.
    [[nodiscard]] std::optional<Band<Duration>> time(Part const& part) const;
    /// Of a time, in units of distance; nothing where a pace is wanting.
    [[nodiscard]] std::optional<Exact> distance(Part const& part) const;
    /// What `with stops` adds to so much distance.
    [[nodiscard]] Band<Duration> stops(std::int64_t distance) const;

    /// Does the reserve allow less than the effort asks, in one of the three times?
    [[nodiscard]] bool bounded_time(Part const& part) const;
    /// The same of how far a timed part goes.
    [[nodiscard]] bool bounded_distance(Part const& part) const;
    /// Fills in whether this part is held to the whole reserve.
    void empty(ExpectedPart& expected, Part const& part, bool timed) const;

  private:
    [[nodiscard]] std::int64_t in_one_go(Part const& part) const;
    [[nodiscard]] Band<Exact> stops_over(std::int64_t distance) const;
    [[nodiscard]] bool paced(plan::Effort const& effort) const;

    Pacing const& pacing_;
    plan::Terms const& terms_;
};

} // namespace lengthwise::calc
