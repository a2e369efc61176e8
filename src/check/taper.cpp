#include "check/lane_findings.hpp"
#include "check/progress.hpp"
#include "check/rules.hpp"
#include "check/words.hpp"

#include "calc/growth.hpp"

#include <fmt/core.h>

namespace lengthwise::check {

namespace {

void judge_last_week(LaneFindings& findings, Swum const& swum, std::int64_t percent) {
    auto const& last = swum.weeks.back();
    auto const& pool = swum.plan.pool_of(swum.plan.sessions[last.week->sessions.first]);
    auto const [highest, top] = eased(swum.weeks, last, swum.lane, percent);
    auto const volume = last.sums.swum(swum.lane).distance;
    if (volume > top) {
        findings.warn(swum, last.week->span,
                      fmt::format("{} in the last week before the race, {} % of {} is {}", said(volume, pool),
                                  percent, said(highest, pool), said(top, pool)),
                      "shorten it, keep the pace and the days");
    }
}

void judge(Inquiry& inquiry) {
    if (!inquiry.plan.race || inquiry.waived()) {
        return;
    }
    LaneFindings findings{lanes_to_judge(inquiry.plan).size()};
    each_lane(inquiry.plan, inquiry.sums, [&](Swum const& swum) {
        if (swum.weeks.size() > 1 && near_race(swum.plan, *swum.weeks.back().week)) {
            judge_last_week(findings, swum, inquiry.limit_or(calc::usual::taper));
        }
    });
    findings.hand_in(inquiry);
}

} // namespace

Rule const taper{
    .name = "taper",
    .severity = Severity::warning,
    .measures = "the last week before the race is eased",
    .limit = "60%",
    .meaning =
        "The last week with a session before race day has at most this share of the highest week's "
        "metres, or no more than four laps a session. Silent where that week ends more than 14 days before "
        "the race.",
    .why = "fresh arms swim better than a last long week.",
    .source =
        "Bosquet et al. 2007, MSSE 39:1358-1365 (27 studies: two weeks, volume down by 41-60 %, intensity "
        "and "
        "frequency kept) and Wang et al. 2023, PLoS ONE 18:e0282838 (14 studies, the same share); the limit "
        "is the gentle end of that",
    .good = "a last week of 1400 m, the highest 2800 m",
    .bad = "a last week of 2400 m, the highest 2800 m",
    .mend = "shorten the last week and keep its pace and its days, or set your own share: limit taper 70%",
    .judge = judge,
};

} // namespace lengthwise::check
