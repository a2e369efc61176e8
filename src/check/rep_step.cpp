#include "check/lane_findings.hpp"
#include "check/progress.hpp"
#include "check/rules.hpp"
#include "check/words.hpp"

#include "calc/growth.hpp"
#include "calc/longest.hpp"

#include <fmt/core.h>

#include <optional>

namespace lengthwise::check {

namespace {

void judge_week(Inquiry& inquiry, LaneFindings& findings, Swum const& swum, SwumWeek const& week,
                Distance longest) {
    auto const& plan = swum.plan;
    auto const rep = calc::longest_of_week(plan, *week.week, swum.lane);
    if (rep.session == plan::no_index) {
        return;
    }
    auto const& session = plan.sessions[rep.session];
    auto const& pool = plan.pool_of(session);
    auto const limit = inquiry.limit();
    auto top =
        calc::next_rep(longest, lap_of(plan, session), limit ? std::optional{limit->low} : std::nullopt);
    if (rep.distance <= top) {
        return;
    }
    if (pool.has_length()) {
        top = Distance::whole(top, pool.length) * pool.length;
    }
    findings.warn(swum, plan.items[rep.item].span,
                  fmt::format("{} after a longest rep of {}, the next step is {}", said(rep.distance, pool),
                              said(longest, pool), said(top, pool)),
                  fmt::format("a week with {} between them, or: limit rep-step {}%", said(top, pool),
                              percent_more(longest, rep.distance)));
}

void judge(Inquiry& inquiry) {
    if (inquiry.waived()) {
        return;
    }
    LaneFindings findings{lanes_to_judge(inquiry.plan).size()};
    each_swum(inquiry.plan, inquiry.sums, [&](Swum const& swum) {
        each_growth(
            swum, swum.plan.before ? swum.plan.before->longest : Distance{},
            [&](SwumWeek const& week) { return week.sums.swum(swum.lane).longest; },
            [&](SwumWeek const& week, Distance longest) {
                judge_week(inquiry, findings, swum, week, longest);
            });
    });
    findings.hand_in(inquiry);
}

} // namespace

Rule const rep_step{
    .name = "rep-step",
    .severity = Severity::warning,
    .measures = "how fast the longest rep grows",
    .limit = "a third (34%)",
    .meaning =
        "From week to week the longest rep grows by at most one lap, there and back (one length in pools "
        "of 40 m or more), or by this share of the longest so far, whichever is more. It counts from "
        "\"before\", where the file has it. Judged for each lane, and for each swimmer's share.",
    .why = "a step that is too long ends at the wall, and with it the belief in the next one. A bare "
           "percentage would get stuck below a length.",
    .source =
        "common practice, no published source: nothing was found that proves a safe growth of a longest "
        "swim",
    .good = "600 in the week after 500",
    .bad = "750 in the week after 500",
    .mend = "put a week between, or set your own share: limit rep-step 50%",
    .judge = judge,
};

} // namespace lengthwise::check
