#include "compose/set_book.hpp"

#include "compose/amounts.hpp"
#include "compose/fit.hpp"

#include <fmt/core.h>

#include <algorithm>
#include <array>
#include <utility>

namespace lengthwise::compose {

namespace {

/// What stands in where a set does not fit or was swum just now.
constexpr std::array stand_ins{Set::ladder, Set::rounds, Set::descend, Set::alternate,
                               Set::count,  Set::build,  Set::sight};

constexpr Laps one_block = 16; ///< more is swum in two: a block of plain reps, then the set
constexpr std::array<Laps, 7> set_sizes{12, 11, 13, 10, 14, 9, 8};

/// How quick it is, in sixths of a step a lap from easy to hard.
int quickness(Line const& line) {
    auto const of = [](Effort effort) { return effort == Effort::unsaid ? 2 : 2 * static_cast<int>(effort); };
    if (line.pattern != Pattern::none) {
        return (of(line.odds) + of(line.evens)) * 100;
    }
    auto sum = 0;
    for (auto const& rep : line.reps) {
        auto const built = rep.manner.shape == Shape::build ? 1 : 0;
        sum += (of(rep.manner.effort) + built) * rep.laps;
    }
    return sum * 200 * line.count / laps(line);
}

bool quicker(Line const& now, Line const& then) {
    return quickness(now) > quickness(then) || (now.send_off > 0 && now.send_off < then.send_off);
}

bool same_sort(Line const& a, Line const& b) {
    return (a.piece > 0) == (b.piece > 0);
}

bool has_less_rest(Line const& now, Line const& then) {
    return now.send_off == 0 && now.reps.front().rest + now.rest < then.reps.front().rest + then.rest;
}

/// Much swimming in one line all the same: a long swim broken, or a few reps that are long without being
/// nearly the longest.
bool is_long(Line const& line, Place const& place) {
    auto const few = line.form == Line::Form::reps && line.count <= 4;
    return line.piece > 0 || (few && line.reps.front().parts.empty() && 2 * longest_rep(line) <= place.rep);
}

/// A few laps: one or two kinds of them are all there is.
MainSet tiny(Place const& place, Laps laps) {
    auto const other_day = place.day == DayKind::third ? 1 : 0; // than the first, in the same week
    if ((turn(place) + other_day) % 2 == 1 || place.last) {
        return {.title = "Build each rep",
                .lines = {reps(laps, 1, crawl_build(), laps > 1 ? rest_at(1) : 0)}};
    }
    auto const whole = laps <= place.rep;
    return {.title = "Short and smooth",
            .lines = {whole ? reps(1, laps, crawl(steady(place)))
                            : reps(laps, 1, crawl(steady(place)), rest_at(1))}};
}

/// Some swimming, then four laps to wake the arms up.
MainSet sharpen(Place const& place, Laps laps) {
    MainSet main{.title = "Sharp and short", .notes = {std::string{nothing_new}}};
    auto const swim = laps - 4;
    main.spare = swim == 1 ? 1 : 0;
    if (swim > 1) {
        auto const found = fit(swim, place.rep, place.rep, {.most = 4, .spare = 2, .least = 1});
        main.spare = swim;
        for (auto const& row : found ? std::vector{*found} : rows(swim, place.rep)) {
            main.lines.push_back(
                reps(row.count, row.size, crawl(Effort::steady), row.count > 1 ? rest_at(1) : 0));
            main.spare -= row.count * row.size;
        }
    }
    auto line = reps(4, 1, crawl(), rest_at(1));
    line.pattern = Pattern::odds_and_evens;
    line.odds = Effort::easy;
    line.evens = hard(place);
    main.lines.push_back(std::move(line));
    return main;
}

} // namespace

/// Counts within a cycle: six build weeks on the first day, nine on the others. Then it begins again with
/// more rest, and usually more laps.
int SetBook::visit(Set set, Place const& place) const {
    if (place.kind != WeekKind::build) {
        return 1;
    }
    auto const cycle = place.day == DayKind::pace ? 6 : 9;
    auto const since = (place.build - 1) / cycle * cycle;
    return 1 + static_cast<int>(std::ranges::count_if(uses_, [&](Use const& use) {
               return use.build > since && use.set == set && use.day == place.day;
           }));
}

/// Was it swum on this day the last time: last week, or in the build week before this one?
bool SetBook::is_neighbour(Set set, Place const& place) const {
    auto const before = std::find_if(uses_.rbegin(), uses_.rend(),
                                     [&](Use const& use) { return use.day == place.day && use.build > 0; });
    auto const last_build = before == uses_.rend() || place.kind != WeekKind::build ? 0 : before->week;
    return std::ranges::any_of(uses_, [&](Use const& use) {
        return use.set == set && use.day == place.day &&
               (use.week == place.week - 1 || use.week == last_build);
    });
}

bool SetBook::is_this_week(Set set, Place const& place) const {
    return std::ranges::any_of(uses_,
                               [&](Use const& use) { return use.set == set && use.week == place.week; });
}

/// With the fewest spare laps.
std::optional<SetBook::Found> SetBook::fitting(Set set, Place const& place, Laps laps) const {
    for (Laps spare = 0; spare <= 2; ++spare) {
        auto lines = lines_of(set, laps - spare, place, visit(set, place));
        if (lines && (laps <= one_block || is_long(lines->front(), place))) {
            return Found{set, std::move(*lines), spare, 0};
        }
    }
    return laps > one_block ? behind_block(set, place, laps) : std::nullopt;
}

/// Where there is much to swim a block of plain reps comes first, then about twelve laps of the set.
std::optional<SetBook::Found> SetBook::behind_block(Set set, Place const& place, Laps laps) const {
    // The days of a week differ in this too, and arms have enough with a set of pull.
    auto const pulled = (place.week + place.index) % 2 == 0 && place.kit.buoy && set != Set::pull;
    auto const manner = pulled ? pull() : crawl(steady(place));
    auto const wish = place.day == DayKind::pace ? 4 : place.day == DayKind::third ? 2 : 6;
    for (auto const most : {8, 12}) {
        for (Laps spare = 0; spare <= 2; ++spare) {
            for (auto const size : set_sizes) {
                auto const block = fit(laps - spare - size, place.rep, wish, {.most = most, .spare = 0});
                auto lines = block ? lines_of(set, size, place, visit(set, place)) : std::nullopt;
                if (!lines || lines->size() > 1) {
                    continue;
                }
                auto first = reps(block->count, block->size, manner, rest_at(1));
                if (!alike(first, lines->front())) {
                    return Found{set, {std::move(first), std::move(lines->front())}, spare, 1};
                }
            }
        }
    }
    return std::nullopt;
}

SetBook::Found SetBook::choose(Place const& place, Laps laps) const {
    std::vector<Set> sets{due(place)};
    sets.insert(sets.end(), stand_ins.begin(), stand_ins.end());
    // Small sessions know few sets: then rather twice in a week than in neighbouring weeks.
    for (auto const faults : {0, 1, 2}) {
        for (auto const set : sets) {
            if ((faults < 1 && is_this_week(set, place)) || (faults < 2 && is_neighbour(set, place))) {
                continue;
            }
            if (auto found = fitting(set, place, laps)) {
                return std::move(*found);
            }
        }
    }
    return plain_rows(place, laps);
}

/// Where a day is far longer than the week's longest rep.
SetBook::Found SetBook::plain_rows(Place const& place, Laps laps) const {
    Found found{Set::build, {}, laps, 0};
    auto builds = turn(place) % 2 == 0;
    for (auto const& row : rows(laps, place.rep)) {
        found.lines.push_back(
            reps(row.count, row.size, builds ? crawl_build() : crawl(steady(place)), rest_at(1)));
        found.spare -= row.count * row.size;
        builds = !builds;
    }
    return found;
}

/// What has changed since the set was last swum; empty where there is nothing to say.
std::string SetBook::known(Place const& place, Found const& found) const {
    auto const last = std::find_if(uses_.rbegin(), uses_.rend(), [&](Use const& use) {
        return use.build > 0 && use.set == found.set && use.day == place.day;
    });
    auto const& line = found.lines[found.own];
    if (place.kind != WeekKind::build || last == uses_.rend() || !same_sort(line, last->line) ||
        laps(line) < last->laps) {
        return {};
    }
    auto const since = fmt::format("Known from week {}: ", last->week);
    if (laps(line) > last->laps) {
        return since +
               fmt::format("then {}, now {}", figure(place.pool, last->laps), amount(place.pool, laps(line)));
    }
    auto const quick = quicker(line, last->line);
    auto const brief = has_less_rest(line, last->line);
    return quick && brief ? since + "now quicker, with less rest"
           : quick        ? since + "now quicker"
           : brief        ? since + "now with less rest"
                          : std::string{};
}

std::string SetBook::title_of(Found const& found) {
    auto const whole = found.set == Set::pieces && found.lines[found.own].piece == 0;
    return std::string{whole ? "A few long ones" : compose::title_of(found.set)};
}

MainSet SetBook::next(Place const& place, Laps laps) {
    if (place.last && laps >= 4) {
        return sharpen(place, laps);
    }
    if (laps < 4) {
        auto main = tiny(place, laps);
        if (place.last) {
            main.notes.emplace_back(nothing_new);
        }
        return main;
    }
    auto found = choose(place, laps);
    MainSet main{.title = title_of(found), .spare = found.spare};
    if (auto words = known(place, found); !words.empty()) {
        found.lines[found.own].above.push_back(std::move(words));
    }
    uses_.push_back({place.day, found.set, place.week, place.kind == WeekKind::build ? place.build : 0,
                     found.lines[found.own], compose::laps(found.lines[found.own])});
    main.lines = std::move(found.lines);
    return main;
}

} // namespace lengthwise::compose
