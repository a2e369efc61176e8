#include "compose/text.hpp"

#include "compose/head_text.hpp"
#include "compose/text_lines.hpp"
#include "units/spell.hpp"

#include <fmt/core.h>

#include <algorithm>
#include <string_view>

namespace lengthwise::compose {

namespace {

std::string_view heading(SectionKind kind) {
    switch (kind) {
    case SectionKind::warm_up:
        return "warm-up";
    case SectionKind::drill:
        return "drill";
    case SectionKind::cool_down:
        return "cool-down";
    case SectionKind::main:
        break;
    }
    return "main";
}

constexpr std::string_view relaxed = " easy rest 20s";

std::string section_text(Section const& section, Pool const& pool) {
    auto const relax = section.kind == SectionKind::warm_up || section.kind == SectionKind::cool_down;
    auto const name = section.name.empty() ? std::string{} : fmt::format(" \"{}\"", section.name);
    auto text = fmt::format("    {}{}{}\n", heading(section.kind), name, relax ? relaxed : "");
    for (auto const& note : section.notes) {
        text += fmt::format("      \"{}\"\n", note);
    }
    for (auto const& line : section.lines) {
        for (auto const& note : line.above) {
            text += fmt::format("      \"{}\"\n", note);
        }
        text += fmt::format("      {}\n", spelled(line, pool));
    }
    return text;
}

/// In minutes where it can be: "60min".
std::string slot(Duration duration) {
    auto const minutes = duration.ms() / Duration::minutes(1).ms();
    return Duration::minutes(minutes) == duration ? fmt::format("{}min", minutes)
                                                  : spell::with_unit(duration);
}

std::string session_text(Session const& session, Request const& request) {
    auto const day = spell::short_day(session.date).substr(0, 3);
    auto const time = time_on(request, session.date);
    auto const at = time ? ' ' + spell::time_of_day(*time) : std::string{};
    auto text = fmt::format("  session {}{} for {} \"{}\"\n", day, at, slot(request.slot), session.title);
    for (auto const& section : session.sections) {
        text += section_text(section, request.pool);
    }
    return text;
}

/// Why a week is as it is, where that is not plain.
std::string reason(RampWeek const& week, bool whole) {
    switch (week.kind) {
    case WeekKind::recovery:
        return "# An easier week: what was built up settles. Nothing in it is new or hard.\n";
    case WeekKind::eased:
        return "# Closed days leave this week fewer sessions: it is an easy one.\n";
    case WeekKind::taper:
        return week.of_kind == 1 ? "# Less water, the same days, the same speed: fresh for the race.\n" : "";
    case WeekKind::build:
    case WeekKind::empty:
        break;
    }
    return whole ? "# The whole race distance in one go, for the first time.\n" : "";
}

/// Weeks without a session, from `first` up to the one before `next`.
std::string missing(int first, int next) {
    if (first == next) {
        return {};
    }
    if (first + 1 == next) {
        return fmt::format("# Week {} is left out: closed days.\n", first);
    }
    // A week off is recovery; after more of them nobody knows yet what still goes.
    return fmt::format(
        "# Weeks {} {} {} are left out: closed days. Were they not swum elsewhere, find out what\n"
        "# still goes and begin again from there: lengthwise compose --resume\n",
        first, first + 2 == next ? "and" : "to", next - 1);
}

} // namespace

std::string weeks_text(Request const& request, Ramp const& ramp, std::vector<Week> const& weeks,
                       WeeksHead const& head) {
    std::string text;
    auto whole_swum = race_was_swum(request);
    auto next = request.first_week;
    for (auto const& week : weeks) {
        auto const& of = *std::ranges::find(ramp.weeks, week.number, &RampWeek::number);
        auto const whole = of.kind == WeekKind::build && holds_race_distance(request, of) && !whole_swum;
        auto const first = &week == &weeks.front();
        whole_swum = whole_swum || whole;
        text +=
            '\n' + (first ? head.comment : std::string{}) + missing(next, week.number) + reason(of, whole);
        auto const from = first ? " from " + spell::iso(of.from) : std::string{};
        text += fmt::format("week {}{} \"{}\"\n", week.number, from, week.title);
        for (auto const& setting : head.settings) {
            text += "  " + setting;
        }
        for (auto const& session : week.sessions) {
            text += session_text(session, request);
        }
        next = week.number + 1;
    }
    return text;
}

std::string plan_text(Request const& request, Ramp const& ramp, std::vector<Week> const& weeks) {
    return head_text(request, ramp) + weeks_text(request, ramp, weeks);
}

} // namespace lengthwise::compose
