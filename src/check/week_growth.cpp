#include "check/lane_findings.hpp"
#include "check/progress.hpp"
#include "check/rules.hpp"
#include "check/words.hpp"

#include "calc/growth.hpp"

#include <fmt/core.h>

namespace lengthwise::check {

namespace {

std::string week_words(plan::Week const& week) {
    return week.number ? fmt::format("week {}", *week.number) : std::string{"this week"};
}

void judge_week(Inquiry& inquiry, LaneFindings& findings, Swum const& swum, SwumWeek const& week,
                Distance highest) {
    auto const& plan = swum.plan;
    auto const& pool = plan.pool_of(plan.sessions[week.week->sessions.first]);
    auto const volume = week.sums.swum(swum.lane).distance;
    auto const top = calc::next_week(highest, week.laps, inquiry.limit_or(calc::usual::week_growth));
    if (volume <= top) {
        return;
    }
    findings.warn(
        swum, week.week->span,
        fmt::format("{} has {} after at most {}, the next step is {}", week_words(*week.week),
                    said(volume, pool), said(highest, pool), said(top, pool)),
        fmt::format("coach's choice, not proven: limit week-growth {}%", percent_more(highest, volume)));
}

void judge(Inquiry& inquiry) {
    if (inquiry.waived()) {
        return;
    }
    LaneFindings findings{lanes_to_judge(inquiry.plan).size()};
    each_lane(inquiry.plan, inquiry.sums, [&](Swum const& swum) {
        auto const& before = swum.plan.before;
        each_growth(
            swum, before ? before->week.value_or(Distance{}) : Distance{},
            [&](SwumWeek const& week) { return week.sums.swum(swum.lane).distance; },
            [&](SwumWeek const& week, Distance highest) {
                judge_week(inquiry, findings, swum, week, highest);
            });
    });
    findings.hand_in(inquiry);
}

} // namespace

Rule const week_growth{
    .name = "week-growth",
    .severity = Severity::warning,
    .measures = "how fast the week grows",
    .limit = "10%",
    .meaning = "A week's metres grow by at most one lap a session, or by this share over the highest week so "
               "far, whichever is more. It counts from \"before ... week\", where the file has it. "
               "Judged for each lane.",
    .why = "a week that jumps is the first place to look when somebody tires. The share is a coach's choice, "
           "not proven: ten percent comes from running, and there it spared no injuries.",
    .source = "common practice; against its proof: Buist et al. 2008, Am J Sports Med 36:33-39 (532 novice "
              "runners, 20.8 % and 20.3 % injured); no study in swimmers found",
    .good = "2200 m in the week after 2000 m",
    .bad = "2500 m in the week after 2000 m",
    .mend = "spread the metres over more weeks, or set your own share: limit week-growth 20%",
    .judge = judge,
};

} // namespace lengthwise::check
