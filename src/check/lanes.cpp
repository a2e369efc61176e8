#include "check/rules.hpp"

#include "calc/totals.hpp"
#include "check/lapping.hpp"
#include "check/words.hpp"
#include "plan/plan.hpp"

#include <fmt/core.h>

#include <bitset>
#include <string>
#include <vector>

namespace lengthwise::check {

namespace {

/// Lane lines that stand for each other: a run of them, broken by an unlabelled item or a pause.
using Block = std::vector<plan::Item const*>;

calc::LaneSet lanes_of(plan::Item const& item) {
    calc::LaneSet lanes;
    for (std::size_t lane = item.first_lane; lane <= item.last_lane; ++lane) {
        lanes.set(lane);
    }
    return lanes;
}

bool share_a_lane(plan::Item const& a, plan::Item const& b) {
    return a.first_lane <= b.last_lane && b.first_lane <= a.last_lane;
}

void judge_missing(Inquiry& inquiry, Block const& block, calc::LaneSet const& session_lanes) {
    auto missing = session_lanes;
    for (auto const* line : block) {
        missing &= ~lanes_of(*line);
    }
    if (missing.any()) {
        inquiry.warn(block.front()->span,
                     fmt::format("{} of this session {} no line here", lanes_named(calc::numbers(missing)),
                                 missing.count() == 1 ? "has" : "have"),
                     "lines of several lanes, one under the other, stand for each other: give each lane one");
    }
}

/// An `if time` line may stand beside a lane's own.
void judge_twice(Inquiry& inquiry, Block const& block) {
    for (std::size_t i = 1; i < block.size(); ++i) {
        for (std::size_t k = 0; k < i; ++k) {
            if (block[k]->optional == block[i]->optional && share_a_lane(*block[k], *block[i])) {
                auto const both = lanes_of(*block[k]) & lanes_of(*block[i]);
                inquiry.note(
                    block[i]->span,
                    fmt::format("{} has two lines here and swims both", lanes_named(calc::numbers(both))), "",
                    {{block[k]->span, "the first"}});
                break;
            }
        }
    }
}

void judge_block(Inquiry& inquiry, Block& block, calc::LaneSet const& session_lanes) {
    if (!block.empty()) {
        judge_missing(inquiry, block, session_lanes);
        judge_twice(inquiry, block);
    }
    block.clear();
}

void judge_session(Inquiry& inquiry, plan::Session const& session, calc::LaneSet const& session_lanes) {
    for (auto i = session.sections.first; i < session.sections.end(); ++i) {
        Block block;
        for (auto const& item : plan::items_from(inquiry.plan, inquiry.plan.sections[i].body)) {
            if (item.kind == plan::Item::Kind::note) {
                continue;
            }
            if (item.has_lanes()) {
                block.push_back(&item);
            } else {
                judge_block(inquiry, block, session_lanes);
            }
        }
        judge_block(inquiry, block, session_lanes);
    }
}

void judge_swimmers(Inquiry& inquiry, calc::LaneSet const& named) {
    for (auto const& swimmer : inquiry.plan.swimmers) {
        if (swimmer.lane && !named.test(*swimmer.lane)) {
            inquiry.warn(swimmer.span, fmt::format("no session has a line for lane {}", *swimmer.lane),
                         named.any() ? fmt::format("the sessions name {}", lanes_named(calc::numbers(named)))
                                     : std::string{"a line for a lane begins with: lane 1:"});
        }
    }
}

void judge(Inquiry& inquiry) {
    calc::LaneSet named;
    for (auto const& session : inquiry.plan.sessions) {
        auto const session_lanes = calc::lanes_of(inquiry.plan, session);
        named |= session_lanes;
        if (session_lanes.any() && !inquiry.waived(session)) {
            judge_session(inquiry, session, session_lanes);
        }
    }
    if (!inquiry.plan.sessions.empty() && !inquiry.waived()) {
        judge_swimmers(inquiry, named);
    }
    judge_lapping(inquiry);
}

} // namespace

Rule const lanes{
    .name = "lanes",
    .severity = Severity::warning,
    .measures = "each lane has its line, nobody is lapped",
    .limit = "",
    .meaning = "Lane lines one under the other stand for each other, and every lane of the session has one "
               "among them. A lane with two swims both: a note, unless one is \"if time\". A swimmer's lane "
               "is one that a session names. Where a lane has two swimmers with a threshold, the fastest, "
               "away first, laps nobody 5 s apart within a rep.",
    .why = "a lane without a line hangs at the wall while the others swim, and who is lapped in a long rep "
           "stops or swims in the other's wash.",
    .source = practice,
    .good = "lane 1: 6 x 100 crawl\nlane 2: 5 x 100 crawl",
    .bad = "lane 1: 6 x 100 crawl     in a session that has lane 2",
    .mend = "write the missing lane's line, or one for both: lane 1-2: 4 x 50; where someone is lapped, "
            "passing at the wall, another lane or a shorter rep",
    .judge = judge,
};

} // namespace lengthwise::check
