#include "report/tally_time.hpp"

#include "calc/fits.hpp"
#include "report/pace_words.hpp"
#include "report/scope_pace.hpp"
#include "report/time_words.hpp"
#include "units/spell.hpp"

#include <fmt/core.h>

#include <algorithm>

namespace lengthwise::report {
namespace {

/// One way in which a session may be swum.
struct Answer {
    calc::LaneSet lanes; ///< none: whoever has no pace of their own
    Band<Duration> time;
    std::string pace;
};

/// Lanes with one pace and one time together.
std::vector<Answer> answers_of(Screen const& screen, plan::Index session) {
    std::vector<Answer> answers;
    auto lanes = screen.summary.clock().paced_lanes();
    lanes.push_back(0);
    for (int const lane : lanes) {
        auto const time = screen.summary.session(session).swum(lane).time();
        if (!time || time->high.zero()) {
            continue;
        }
        auto const pace = lane_pace(screen, session, lane);
        auto found = std::ranges::find_if(
            answers, [&](Answer const& other) { return other.time == *time && other.pace == pace; });
        if (found == answers.end()) {
            found = answers.insert(found, {{}, *time, pace});
        }
        if (lane != 0) {
            found->lanes.set(static_cast<std::size_t>(lane));
        }
    }
    return answers;
}

/// "35–41 of 45 min at 1:55 per 100 m".
std::string words(Answer const& answer, std::optional<Duration> slot, bool ascii) {
    auto text = band_minutes(answer.time, ascii);
    if (slot && (slot->ms() % Duration::minutes(1).ms()) == 0) {
        text += " of " + slot_minutes(*slot);
    } else {
        text += slot ? " min of " + spell::spaced(*slot) : " min";
    }
    return answer.pace.empty() ? text : text + " at " + answer.pace;
}

bool has_threshold(plan::Plan const& plan) {
    return !plan.thresholds.empty() || std::ranges::any_of(plan.swimmers, [](auto const& swimmer) {
        return swimmer.threshold.has_value();
    });
}

std::string why_unknown(plan::Plan const& plan, Tally const& tally, bool one_session) {
    if (!has_threshold(plan)) {
        return "time unknown: the file has no threshold.";
    }
    calc::LaneSet unknown;
    for (int const lane : calc::numbers(tally.lanes())) {
        unknown.set(static_cast<std::size_t>(lane), !tally.swum(lane).time());
    }
    auto const where =
        one_session ? "no threshold is in force here." : "no threshold is in force everywhere.";
    return unknown.none() || unknown == tally.lanes()
               ? fmt::format("time unknown: {}", where)
               : fmt::format("time unknown in {}: {}", lanes_label(unknown), where);
}

/// Sessions with a slot, if they are all in one pool, so that one pace can be said for them.
std::vector<plan::Index> with_slots(plan::Plan const& plan, plan::Run sessions) {
    std::vector<plan::Index> with;
    for (auto i = sessions.first; i < sessions.end(); ++i) {
        if (plan.sessions[i].slot()) {
            if (!with.empty() &&
                plan.pool_of(plan.sessions[i]) != plan.pool_of(plan.sessions[with.front()])) {
                return {};
            }
            with.push_back(i);
        }
    }
    return with;
}

/// "Fits 45 min at a threshold of 2:06 per 100 m or faster."
std::string what_would_fit(plan::Plan const& plan, plan::Run sessions) {
    auto const with = with_slots(plan, sessions);
    if (with.empty()) {
        return {};
    }
    auto const& first = plan.sessions[with.front()];
    auto const unit = plan.pool_of(first).unit;
    if (sessions.count == 1) {
        auto text = fits_text(*first.slot(), calc::slowest_fitting(plan, with.front(), *first.slot()), unit);
        text.front() = 'F';
        return text + ".";
    }
    auto const slowest = calc::slowest_fitting(plan, with);
    return slowest
               ? fmt::format("Every slot fits at a threshold of {} or faster.", pace_per_100(*slowest, unit))
               : "Not every slot fits, at any threshold.";
}

} // namespace

Minutes minutes_of(std::vector<std::optional<Band<Duration>>> const& rows,
                   std::optional<Band<Duration>> const& total) {
    std::vector<Duration> expected;
    std::vector<Cell> cells;
    for (auto const& row : rows) {
        expected.push_back(row ? row->expected : Duration{});
        cells.push_back(minutes_cell(row));
    }
    if (!total) {
        auto const known = std::ranges::count_if(expected, [](Duration time) { return !time.zero(); });
        auto const unknown = std::ranges::count_if(rows, [](auto const& row) { return !row.has_value(); });
        return known > unknown ? Minutes{cells, minutes_cell(total)} : Minutes{};
    }
    auto const whole = adding_up(expected);
    for (std::size_t i = 0; i < rows.size(); ++i) {
        cells[i].text = whole[i] > 0 ? fmt::format("{}", whole[i]) : expected[i].zero() ? "-" : "<1";
    }
    return {std::move(cells), minutes_cell(total)};
}

Cell minutes_cell(std::optional<Band<Duration>> const& time) {
    return {time ? minutes_text(time->expected) : "?", {}};
}

std::string lane_pace(Screen const& screen, plan::Index session, int lane) {
    auto const* const pace = screen.summary.clock().pacing(session, lane).threshold();
    return pace != nullptr ? pace_text(*pace, screen.ascii()) : std::string{};
}

std::string lanes_head(Screen const& screen, plan::Index session, calc::LaneSet const& lanes) {
    auto const pace = lane_pace(screen, session, calc::lowest(lanes));
    return lanes_label(lanes, screen.ascii()) + (pace.empty() ? "" : ", " + pace);
}

std::string answers(Screen const& screen, plan::Index session) {
    auto const all = answers_of(screen, session);
    if (all.empty()) {
        return {};
    }
    Table table{{{"", false}, {"", false}}};
    for (auto const& answer : all) {
        auto const who = answer.lanes.any() ? lanes_label(answer.lanes, screen.ascii())
                         : all.size() > 1   ? "others"
                                            : std::string{};
        table.row({{who, {}}, {words(answer, screen.plan().sessions[session].slot(), screen.ascii()), {}}});
    }
    return "\n" + table.text(screen.paint);
}

std::string timed_apart(Unit unit) {
    return fmt::format("timed reps are not in the {}", unit == Unit::yard ? "yards" : "metres");
}

std::vector<std::string> time_remarks(Tally const& tally, Unit unit) {
    bool estimates = false;
    bool assumes = false;
    for (int const lane : lanes_shown(tally)) {
        for (auto const& times : {tally.swum(lane).times, tally.if_time(lane).times}) {
            estimates = estimates || !times.estimated.zero();
            assumes = assumes || times.assumed != plan::no_index;
        }
    }
    return {estimates ? timed_apart(unit) : std::string{}, std::string{assumes ? reserve_assumed : ""}};
}

std::string unknown_time(Screen const& screen, plan::Run sessions, Tally const& tally) {
    auto const lanes = lanes_shown(tally);
    if (std::ranges::all_of(lanes, [&](int lane) { return tally.swum(lane).time().has_value(); })) {
        return {};
    }
    auto const fits = what_would_fit(screen.plan(), sessions);
    return "\n" + why_unknown(screen.plan(), tally, sessions.count == 1) + "\n" +
           (fits.empty() ? "" : fits + "\n");
}

std::string common_pace(Screen const& screen, int lane) {
    auto const pace = scope_pace(screen.summary, lane).pace;
    return pace ? pace_text(*pace, screen.ascii()) : std::string{};
}

} // namespace lengthwise::report
