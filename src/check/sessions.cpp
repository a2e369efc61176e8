#include "check/progress.hpp"
#include "check/rules.hpp"
#include "check/words.hpp"

#include "calc/growth.hpp"

#include <fmt/core.h>

namespace lengthwise::check {

namespace {

bool holds_race(plan::Plan const& plan, plan::Week const& week) {
    return plan.race && week.from && *week.from <= plan.race->on &&
           plan.race->on < *week.from + std::chrono::days{7};
}

void judge(Inquiry& inquiry) {
    auto const& plan = inquiry.plan;
    if (inquiry.waived()) {
        return;
    }
    auto const asked = inquiry.limit_or(calc::usual::sessions);
    for (auto const& week : plan.weeks) {
        if (week.number && week.sessions.count < asked && !holds_race(plan, week)) {
            inquiry.warn(
                week.span,
                fmt::format("week {} has {}, at least {} are asked for", *week.number,
                            week.sessions.count == 0 ? "no session" : counted(week.sessions.count, "session"),
                            asked),
                fmt::format("one more, or: limit sessions {}", week.sessions.count));
        }
    }
}

} // namespace

Rule const sessions{
    .name = "sessions",
    .severity = Severity::warning,
    .measures = "sessions a week",
    .limit = "2",
    .meaning = "Every week has at least this many sessions; the race's own week is exempt.",
    .why = "the feel for the water fades within a week.",
    .source = practice,
    .good = "week 1\n  session Tue\n  session Thu",
    .bad = "week 1\n  session Tue",
    .mend = "add a short one, or say what you have: limit sessions 1",
    .judge = judge,
};

} // namespace lengthwise::check
