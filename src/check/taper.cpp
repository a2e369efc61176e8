#include "check/progress.hpp"
#include "check/rules.hpp"
#include "check/words.hpp"

#include "calc/growth.hpp"

#include <fmt/core.h>

#include <algorithm>

namespace lengthwise::check {

namespace {

void judge(Inquiry& inquiry) {
    auto const& plan = inquiry.plan;
    if (!plan.race || inquiry.waived()) {
        return;
    }
    auto const weeks = swum_weeks(plan, inquiry.sums);
    if (weeks.size() < 2) {
        return;
    }
    auto const percent = inquiry.limit_or(calc::usual::taper);
    auto const& last = weeks.back();
    auto const& pool = plan.pool_of(plan.sessions[last.week->sessions.first]);
    auto const lanes = lanes_to_judge(plan);
    LaneFindings findings{lanes};
    for (auto const lane : lanes) {
        Distance highest;
        for (std::size_t i = 0; i + 1 < weeks.size(); ++i) {
            highest = std::max(highest, weeks[i].sums.swum(lane).distance);
        }
        auto const top = calc::eased_week(highest, last.laps, percent);
        auto const volume = last.sums.swum(lane).distance;
        if (volume > top) {
            findings.warn(lane, last.week->span,
                          fmt::format("{} in the last week before the race, {} % of {} is {}",
                                      said(volume, pool), percent, said(highest, pool), said(top, pool)),
                          "shorten it, keep the pace and the days");
        }
    }
    findings.hand_in(inquiry);
}

} // namespace

Rule const taper{
    .name = "taper",
    .severity = Severity::warning,
    .measures = "the last week before the race is eased",
    .limit = "60%",
    .meaning = "The last week with a session before race day has at most this share of the highest week's "
               "metres, or four laps a session.",
    .why = "fresh arms swim better than a last long week.",
    .source = "Bosquet et al. 2007, MSSE 39:1358-1365 (27 studies: volume down by 41-60 %, intensity and "
              "frequency kept)",
    .good = "week of 1400 m, the highest 2800 m",
    .bad = "week of 2400 m, the highest 2800 m",
    .mend = "shorten the last week, or set your own share: limit taper 70%",
    .judge = judge,
};

} // namespace lengthwise::check
