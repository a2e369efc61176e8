#include "check/rules.hpp"

#include "units/spell.hpp"

#include <fmt/core.h>

#include <optional>

namespace lengthwise::check {

namespace {

void judge_weeks(Inquiry& inquiry) {
    plan::Week const* before = nullptr;
    for (auto const& week : inquiry.plan.weeks) {
        if (!week.from) {
            continue;
        }
        if (before != nullptr && *week.from <= *before->from) {
            inquiry.error(week.span,
                          fmt::format("week {} starts on {}, not after week {} on {}",
                                      week.number.value_or(0), spell::day(*week.from),
                                      before->number.value_or(0), spell::day(*before->from)),
                          "give the later week the later date", {{before->span, "the week before"}});
        }
        before = &week;
    }
}

void judge_sessions(Inquiry& inquiry) {
    plan::Session const* before = nullptr;
    auto const& race = inquiry.plan.race;
    for (auto const& session : inquiry.plan.sessions) {
        if (!session.date) {
            continue;
        }
        if (race && *session.date > race->on) {
            inquiry.error(session.span,
                          fmt::format("this session is on {}, after the race on {}",
                                      spell::day(*session.date), spell::day(race->on)),
                          "", {{race->span, "the race"}});
        }
        if (before != nullptr && *session.date == *before->date) {
            inquiry.error(session.span, fmt::format("two sessions are on {}", spell::day(*session.date)),
                          "move one, or: allow calendar \"why\"", {{before->span, "the other"}});
        } else if (before != nullptr && *session.date < *before->date) {
            inquiry.error(session.span,
                          fmt::format("this session is on {}, the one above it on {}",
                                      spell::day(*session.date), spell::day(*before->date)),
                          "sessions stand in the order of their dates", {{before->span, "the one above"}});
        }
        before = &session;
    }
}

void judge(Inquiry& inquiry) {
    if (inquiry.waived()) {
        return;
    }
    judge_weeks(inquiry);
    judge_sessions(inquiry);
}

} // namespace

Rule const calendar{
    .name = "calendar",
    .severity = Severity::error,
    .measures = "dates in order, none twice",
    .limit = "",
    .meaning = "Weeks and sessions with a date stand in the order of their dates. No day has two "
               "sessions, and none comes after race day.",
    .why = "a date out of its place is mostly a slip of the pen, and every sum by week trusts it.",
    .source = practice,
    .good = "week 1 from 2027-04-19\nweek 2 from 2027-04-26",
    .bad = "week 1 from 2027-04-19\nweek 2 from 2027-04-12",
    .mend = "put the dates in order; for two sessions a day: allow calendar \"why\"",
    .judge = judge,
};

} // namespace lengthwise::check
