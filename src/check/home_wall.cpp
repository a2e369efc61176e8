#include "check/rules.hpp"
#include "check/words.hpp"

#include "calc/reps.hpp"
#include "calc/totals.hpp"

#include <fmt/core.h>

#include <array>
#include <cstdint>
#include <vector>

namespace lengthwise::check {

namespace {

/// Where each lane hangs after the lines so far.
class Walls {
  public:
    explicit Walls(calc::LaneSet const& lanes) : lanes_(calc::numbers(lanes)) {
        if (lanes_.empty()) {
            lanes_.push_back(0);
        }
    }

    /// An odd line brings those that swim it to the other wall. True if one of them left the start for good.
    bool cross(plan::Item const& line) {
        auto left = false;
        for (auto const lane : lanes_) {
            if (line.swum_by(lane)) {
                auto& away = away_[static_cast<std::size_t>(lane)];
                away = !away;
                left = left || away;
            }
        }
        return left;
    }

  private:
    std::vector<int> lanes_;
    std::array<bool, 128> away_{};
};

void judge_session(Inquiry& inquiry, plan::Session const& session, Pool const& pool) {
    Walls walls{calc::lanes_of(inquiry.plan, session)};
    for (auto i = session.sections.first; i < session.sections.end(); ++i) {
        for (auto const& line : plan::items_from(inquiry.plan, inquiry.plan.sections[i].body)) {
            auto const sums = line.is_swum() ? inquiry.sums.of_item(session, line) : calc::Totals{};
            auto const lengths = sums.lengths;
            if (lengths % 2 == 0 || sums.distance != lengths * pool.length) {
                continue; // home again, or not in whole lengths, which another rule has said
            }
            if (line.optional || walls.cross(line)) {
                inquiry.note(
                    line.span,
                    fmt::format("{} {} at the far wall", counted(lengths, "length"),
                                lengths == 1 ? "ends" : "end"),
                    fmt::format("{} end at the start", either_length(lengths - 1, lengths + 1, pool)));
            }
        }
    }
}

void judge(Inquiry& inquiry) {
    for (auto const& session : inquiry.plan.sessions) {
        auto const& pool = inquiry.plan.pool_of(session);
        if (pool.has_length() && !is_long(pool) && !inquiry.waived(session)) {
            judge_session(inquiry, session, pool);
        }
    }
}

} // namespace

Rule const home_wall{
    .name = "home-wall",
    .severity = Severity::note,
    .measures = "a line ends where it began",
    .limit = "",
    .meaning = "A line comes back to the start: an even number of lengths. In pools of 40 m or more both "
               "walls will do. A line that brings the lane back is left alone.",
    .why = "the coach, the board and the drinks are at the start.",
    .source = practice,
    .good = "350 crawl     14 lengths of 25 m",
    .bad = "375 crawl     15 lengths of 25 m",
    .mend = "one length more or less, let the next line bring the lane back, or: allow home-wall \"why\"",
    .judge = judge,
};

} // namespace lengthwise::check
