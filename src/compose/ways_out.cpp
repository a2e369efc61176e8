#include "compose/ways_out.hpp"

#include "calc/growth.hpp"
#include "compose/calendar.hpp"
#include "compose/clashes.hpp"
#include "compose/climb.hpp"
#include "compose/problem.hpp"

#include <algorithm>
#include <array>
#include <utility>

namespace lengthwise::compose {

namespace {

using std::chrono::days;

bool works(Request const& request, int build_weeks) {
    auto const problem = problem_of(request, build_weeks);
    return feasible(problem, most_growth(problem));
}

// --- one thing more --------------------------------------------------------------------

/// What could be more than it is, in steps of its own: whole lengths, minutes, percent.
enum class Thing : std::uint8_t { longest, session, slot, rep_step, week_growth };

constexpr std::array things{Thing::longest, Thing::session, Thing::slot, Thing::rep_step, Thing::week_growth};

constexpr std::int64_t day_in_minutes = 1440;

std::string_view rule_of(Thing thing) {
    return thing == Thing::rep_step ? "rep-step" : "week-growth";
}

/// Steps that it has now; a third is 33 percent and some.
std::int64_t steps_of(Thing thing, Request const& request) {
    switch (thing) {
    case Thing::longest:
        return Distance::whole(request.longest, request.pool.length);
    case Thing::session:
        return Distance::whole(request.session, request.pool.length);
    case Thing::slot:
        return request.slot.ms() / Duration::minutes(1).ms();
    case Thing::rep_step:
        return limit_or(request, rule_of(thing), 33);
    case Thing::week_growth:
        return limit_or(request, rule_of(thing), calc::usual::week_growth);
    }
    return 0;
}

/// As many as can be of use.
std::int64_t most_steps(Thing thing, Request const& request) {
    auto const length = request.pool.length;
    switch (thing) {
    case Thing::longest:
        return lengths_a_lap(request.pool) * race_rep_laps(request);
    case Thing::session:
        return Distance::whole(longest_session, length);
    case Thing::slot:
        return request.threshold ? day_in_minutes : 0;
    case Thing::rep_step:
    case Thing::week_growth:
        return 100 * (Distance::whole(longest_session, length) + 1);
    }
    return 0;
}

/// Of each thing the steps it shall have; nothing: as many as it has.
using Changes = std::array<std::optional<std::int64_t>, things.size()>;

std::optional<std::int64_t>& of(Changes& changes, Thing thing) {
    return changes[static_cast<std::size_t>(thing)];
}

void set(Request& request, Thing thing, std::int64_t steps) {
    switch (thing) {
    case Thing::longest:
        request.longest = steps * request.pool.length;
        break;
    case Thing::session:
        request.session = steps * request.pool.length;
        break;
    case Thing::slot:
        request.slot = Duration::minutes(steps);
        break;
    case Thing::rep_step:
    case Thing::week_growth: {
        auto const rule = *plan::find_rule(rule_of(thing));
        std::erase_if(request.limits, [&](plan::Limit const& limit) { return limit.rule == rule; });
        request.limits.push_back({.rule = rule, .low = steps, .high = steps, .span = {}});
        break;
    }
    }
}

Request with(Request request, Changes changes) {
    for (auto const thing : things) {
        if (auto const steps = of(changes, thing)) {
            set(request, thing, *steps);
        }
    }
    return request;
}

/// The fewest steps of one thing more than it has that are enough in so many build weeks, beside what
/// else is changed.
std::optional<std::int64_t> fewest_steps(Thing thing, Request const& request, Changes changes,
                                         int build_weeks) {
    auto const enough = [&](std::int64_t steps) {
        of(changes, thing) = steps;
        return works(with(request, changes), build_weeks);
    };
    auto low = steps_of(thing, request);
    auto high = most_steps(thing, request);
    if (low >= high || !enough(high)) {
        return std::nullopt;
    }
    while (high - low > 1) {
        auto const middle = low + (high - low) / 2;
        (enough(middle) ? high : low) = middle;
    }
    return high;
}

WayOut way_of(Request const& request, Changes changes) {
    auto const changed = with(request, changes);
    auto const if_set = [&](Thing thing, auto value) {
        return of(changes, thing) ? std::optional{value} : std::nullopt;
    };
    WayOut way;
    way.longest = if_set(Thing::longest, changed.longest);
    way.session = if_set(Thing::session, changed.session);
    way.slot = if_set(Thing::slot, changed.slot);
    way.rep_step = of(changes, Thing::rep_step);
    way.week_growth = of(changes, Thing::week_growth);
    return way;
}

// --- a later race ----------------------------------------------------------------------

Calendar calendar_on(Request request, Date race_day) {
    request.race.on = race_day;
    return calendar_of(request);
}

Date last_race_day(Request const& request) {
    return request.from + days{7 * static_cast<int>(most_weeks)};
}

/// The first day from the asked one on whose calendar has so many build weeks.
std::optional<std::pair<Date, Calendar>> earliest(Request const& request, int build_weeks) {
    for (auto day = request.race.on; day <= last_race_day(request); day += days{1}) {
        if (auto calendar = calendar_on(request, day); calendar.build_weeks >= build_weeks) {
            return std::pair{day, std::move(calendar)};
        }
    }
    return std::nullopt;
}

/// Puts the race on the earliest day that is enough, unless the asked one is. False: none is.
bool note_race_day(WayOut& way, Request const& request) {
    auto const most = calendar_on(request, last_race_day(request)).build_weeks;
    auto const weeks = fewest_weeks(problem_of(request, most), most);
    auto const found = weeks ? earliest(request, *weeks) : std::nullopt;
    if (found && found->first != request.race.on) {
        way.race_on = found->first;
        way.weeks = found->second.counted;
    }
    return found.has_value();
}

// --- one way, or several at once -----------------------------------------------------------

/// With the latest race of all, each thing in turn goes back as far as the others, which are still as
/// large as can be, allow; the slot last. Then the earliest race.
std::optional<WayOut> together(Request const& request) {
    constexpr std::array order{Thing::week_growth, Thing::rep_step, Thing::session, Thing::slot};
    auto const weeks = calendar_on(request, last_race_day(request)).build_weeks;
    Changes changes;
    for (auto const thing : order) {
        if (auto const most = most_steps(thing, request); most > steps_of(thing, request)) {
            of(changes, thing) = most;
        }
    }
    if (!works(with(request, changes), weeks)) {
        return std::nullopt;
    }
    for (auto const thing : order) {
        of(changes, thing).reset();
        if (!works(with(request, changes), weeks)) {
            of(changes, thing) = fewest_steps(thing, request, changes, weeks);
        }
    }
    auto way = way_of(request, changes);
    note_race_day(way, with(request, changes));
    return way;
}

std::vector<WayOut> single_ways(Request const& request, int build_weeks) {
    std::vector<WayOut> ways;
    if (WayOut later; note_race_day(later, request)) {
        ways.push_back(later);
    }
    for (auto const thing : things) {
        if (auto const steps =
                build_weeks > 0 ? fewest_steps(thing, request, {}, build_weeks) : std::nullopt) {
            Changes changes;
            of(changes, thing) = steps;
            ways.push_back(way_of(request, changes));
        }
    }
    return ways;
}

} // namespace

WaysOut ways_out(Request const& request) {
    auto const calendar = calendar_of(request);
    WaysOut ways;
    ways.weeks = calendar.counted;
    ways.clashes = calendar.build_weeks == 0 ? std::vector<Clash>{{Clash::Kind::no_week, 1, 0, 0}}
                                             : clashes_of(request, calendar);
    ways.single = single_ways(request, calendar.build_weeks);
    if (ways.single.empty()) {
        ways.together = together(request);
    }
    return ways;
}

} // namespace lengthwise::compose
