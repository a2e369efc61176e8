#include "compose/head_text.hpp"

#include "calc/growth.hpp"
#include "compose/amounts.hpp"
#include "plan/rules.hpp"
#include "units/spell.hpp"

#include <fmt/core.h>

#include <algorithm>
#include <string_view>
#include <utility>

namespace lengthwise::compose {

namespace {

std::string quoted(std::string_view text) {
    std::string quoted{"\""};
    for (auto const c : text) {
        quoted += c == '"' || c == '\\' ? std::string{'\\', c} : std::string{c};
    }
    return quoted + '"';
}

std::string_view word(RaceKind kind) {
    switch (kind) {
    case RaceKind::super_sprint:
        return "super-sprint";
    case RaceKind::sprint:
        return "sprint";
    case RaceKind::standard:
        return "standard";
    case RaceKind::middle:
        return "middle";
    case RaceKind::long_course:
        break;
    }
    return "long";
}

std::string race_line(Request const& request) {
    auto const& race = request.race;
    auto const name = race.name.empty() ? std::string{} : quoted(race.name) + ' ';
    auto const size = race.kind ? std::string{word(*race.kind)} : distance(race.distance, race.unit);
    return fmt::format("race {}{} on {}\n", name, size, spell::iso(race.on));
}

/// In `unit` where two decimals are enough, which is the most that can be written; else in the other one.
std::string in_hundredths(Distance size, Unit unit) {
    auto const other = unit == Unit::metre ? Unit::yard : Unit::metre;
    return distance(size, size.units() * 100 % one(unit).units() == 0 ? unit : other);
}

std::string value_of(plan::Limit const& limit, Unit unit) {
    switch (plan::rules[limit.rule].kind) {
    case plan::LimitKind::percent:
        return fmt::format("{}%", limit.low);
    case plan::LimitKind::distance:
        return in_hundredths(Distance::units(limit.low), unit);
    case plan::LimitKind::duration:
        return spell::with_unit(Duration::ms(limit.low));
    case plan::LimitKind::range:
        return spell::range({Duration::ms(limit.low), Duration::ms(limit.high)}, true);
    case plan::LimitKind::number:
    case plan::LimitKind::none:
        break;
    }
    return fmt::format("{}", limit.low);
}

std::string limit_lines(Request const& request) {
    std::string text;
    for (auto const& limit : request.limits) {
        text +=
            fmt::format("limit {} {}\n", plan::rules[limit.rule].name, value_of(limit, request.pool.unit));
    }
    return text;
}

/// Closed days may leave a week fewer sessions than are asked for.
std::string allowed_sessions(Request const& request, Ramp const& ramp) {
    auto const asked = limit_or(request, "sessions", calc::usual::sessions);
    std::string weeks;
    auto count = 0;
    for (auto const& week : ramp.weeks) {
        auto const days = static_cast<std::int64_t>(week.days.size());
        if (days > 0 && days < asked && !week.holds_race) {
            weeks += fmt::format("{}{}", count++ == 0 ? " " : ", ", week.number);
        }
    }
    return count == 0
               ? std::string{}
               : fmt::format("allow sessions \"closed days in week{}{}\"\n", count == 1 ? "" : "s", weeks);
}

/// Closed days may leave no taper before the race, or less of one than the checks look for: then the week
/// that they take for one is the highest, and has the session that the race wants.
std::string allowed_taper(Request const& request, Ramp const& ramp) {
    std::size_t weeks = 0;
    std::size_t eased = 0;
    auto last = WeekKind::taper;
    for (auto const& week : ramp.weeks) {
        if (!week.days.empty()) {
            last = week.kind;
            ++weeks;
            eased += week.kind == WeekKind::taper ? 1 : 0;
        }
    }
    std::string text;
    if (last != WeekKind::taper) {
        text += "allow taper \"closed days before the race\"\n";
    }
    if (eased < calc::taper_weeks(request.race.distance, weeks)) {
        text += "allow session-floor \"closed days before the race\"\n";
    }
    return text;
}

std::string before_line(Request const& request, Ramp const& ramp) {
    auto const& pool = request.pool;
    return fmt::format("before longest {} week {}\n", distance(pool.length * ramp.today_longest, pool.unit),
                       distance(pool.length * ramp.today_week, pool.unit));
}

std::string unit_of_pace(Pool const& pool) {
    return fmt::format("100 {}", spell::symbol(pool.unit));
}

/// Where no threshold is known, the pace that the slot asks for.
std::string pace_lines(Request const& request, Ramp const& ramp) {
    if (request.threshold) {
        return threshold_line(*request.threshold, request.pool);
    }
    auto const slot = spell::spaced(request.slot);
    return ramp.slowest_threshold
               ? fmt::format("# No threshold is known: all fits {} at {} per {} or faster.\n", slot,
                             spell::clock(*ramp.slowest_threshold), unit_of_pace(request.pool))
               : fmt::format("# No threshold is known, and {} is short at any pace.\n", slot);
}

std::string race_rep_lines(Request const& request, Ramp const& ramp) {
    auto const rep = ramp.lap * ramp.race_rep;
    return rep > request.race.distance ? fmt::format("# {} are the whole laps nearest above the race.\n",
                                                     spell::distance(rep, request.pool.unit, true))
                                       : std::string{};
}

std::string cautions(Request const& request, Ramp const& ramp) {
    std::string text = "# Swum with a lifeguard on watch, never alone. Whoever is unsure of their health\n"
                       "# asks a doctor first. A plan does not see the swimmer: on a bad day swim less,\n"
                       "# and never catch up on what was missed.\n";
    if (!request.race_in_pool) {
        text += "# Open water is not in it. Practise there too, in company and where it is guarded.\n";
    }
    if (ramp.over_full_today) {
        text += "# What is swum today is more than the time booked holds; the plan starts below it.\n";
    }
    return text + growth_text(ramp);
}

} // namespace

std::string pool_line(Pool const& pool) {
    return fmt::format("pool {}\n", distance(pool.length, pool.unit));
}

std::string threshold_line(Duration threshold, Pool const& pool) {
    return fmt::format("threshold {} per 100{}\n", spell::clock(threshold), spell::symbol(pool.unit));
}

std::string growth_text(Ramp const& ramp) {
    auto const rep = ramp.rep_by_third      ? std::string{"a third or a lap"}
                     : ramp.rep_percent > 0 ? fmt::format("{} % or a lap", ramp.rep_percent)
                                            : std::string{"a lap"};
    return fmt::format(
        "# A week grows by at most {} % or a lap a session, the longest swim by at most\n# {}.\n",
        ramp.week_percent, rep);
}

std::string rest_line() {
    return fmt::format("rest {}\n", spell::range(usual_rest, true));
}

std::string head_text(Request const& request, Ramp const& ramp) {
    auto const& race = request.race;
    auto const title = race.name.empty() ? spell::distance(race.distance, race.unit, true) : race.name;
    return fmt::format("plan {}\n", quoted(fmt::format("To {} on {}", title, spell::day(race.on)))) +
           cautions(request, ramp) + race_line(request) + race_rep_lines(request, ramp) +
           pool_line(request.pool) + pace_lines(request, ramp) + rest_line() + limit_lines(request) +
           allowed_sessions(request, ramp) + allowed_taper(request, ramp) + before_line(request, ramp);
}

} // namespace lengthwise::compose
