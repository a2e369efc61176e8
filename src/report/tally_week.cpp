#include "report/tally_parts.hpp"
#include "report/width.hpp"
#include "units/spell.hpp"

#include <algorithm>

/// One week: a row a session, its sum, and the week before to compare.
namespace lengthwise::report {
namespace {

/// "race in 13 days", counted from the week's first day; nothing once it is over.
std::string until_race(plan::Week const& week, plan::Race const& race) {
    if (!week.from || race.on < *week.from) {
        return "race";
    }
    auto const days = (race.on - *week.from).count();
    return days == 0 ? "race that day" : "race in " + std::to_string(days) + (days == 1 ? " day" : " days");
}

std::string week_title(Screen const& screen, plan::Week const& week, Tally const& whole) {
    auto label = week.number ? "Week " + std::to_string(*week.number) : plan_label(screen.plan());
    if (week.from) {
        label += " from " + spell::day(*week.from);
    }
    std::vector<std::string> parts{label, visible(week.name), lane_part(whole)};
    if (auto const& race = screen.plan().race) {
        parts.push_back(until_race(week, *race));
        parts.push_back(race_part(screen, *race));
    }
    return title(screen, parts);
}

std::vector<Cell> session_cells(plan::Plan const& plan, plan::Index index) {
    auto const& session = plan.sessions[index];
    constexpr std::string_view days[] = {"Mon", "Tue", "Wed", "Thu", "Fri", "Sat", "Sun"};
    std::string day;
    if (session.date) {
        day = spell::short_day(*session.date);
    } else if (session.day) {
        day = days[*session.day];
    }
    auto const bare = session.name.empty() && day.empty();
    return {{day, {}}, {bare ? session_label(plan, index) : visible(session.name), {}}};
}

/// A row for the other lanes where their sums differ; equal ones share it.
void add_other_lanes(Screen const& screen, Tally const& whole, Shown const& shown, Table& table) {
    std::vector<std::pair<calc::Totals, calc::LaneSet>> others;
    auto const plain = whole.swum(whole.lane()).totals;
    for (int const lane : calc::numbers(whole.lanes())) {
        auto const totals = whole.swum(lane).totals;
        if (totals == plain) {
            continue;
        }
        auto found =
            std::find_if(others.begin(), others.end(), [&](auto const& o) { return o.first == totals; });
        if (found == others.end()) {
            found = others.insert(found, {totals, {}});
        }
        found->second.set(static_cast<std::size_t>(lane));
    }
    for (auto const& [totals, lanes] : others) {
        std::vector<Cell> cells{{}, {"in " + lanes_label(lanes, screen.ascii()), {}}};
        append_cells(cells, totals, shown, screen.ascii());
        table.row(std::move(cells));
    }
}

void add_week_before(Screen const& screen, plan::Index week, int lane, Shown const& shown, Table& table) {
    if (week == 0) {
        return;
    }
    Summary before{screen.plan(), {Scope::Kind::week, week - 1}};
    std::vector<Cell> cells{{week_label(screen.plan().weeks[week - 1]), {}}, {}};
    append_cells(cells, before.whole().swum(lane).totals, shown, screen.ascii());
    table.row(std::move(cells));
}

} // namespace

std::string week_screen(Screen const& screen, plan::Index index) {
    auto const& plan = screen.plan();
    auto const& week = plan.weeks[index];
    auto const whole = screen.summary.whole();
    auto const lane = whole.lane();
    Shown const shown{screen.summary.unit(), whole.has_lengths(), true, has_timed(whole)};

    std::vector<Column> all{{"", false}, {"", false}};
    auto const figures = columns(shown);
    all.insert(all.end(), figures.begin(), figures.end());
    Table table{std::move(all)};
    for (auto i = week.sessions.first; i < week.sessions.end(); ++i) {
        auto cells = session_cells(plan, i);
        append_cells(cells, screen.summary.session(i).swum(lane).totals, shown, screen.ascii());
        table.row(std::move(cells));
    }
    table.gap();
    std::vector<Cell> total{{week.number ? week_label(week) : "total", {}}, {}};
    append_cells(total, whole.swum(lane).totals, shown, screen.ascii());
    table.row(std::move(total), Ink::bold);
    add_other_lanes(screen, whole, shown, table);
    if (whole.has_if_time(lane)) {
        std::vector<Cell> cells{{"if time", {}}, {}};
        append_extra_cells(cells, whole.if_time(lane).totals, shown, screen.ascii());
        table.row(std::move(cells));
    }
    add_week_before(screen, index, lane, shown, table);
    table.fit(1, screen.options.width, screen.ascii());
    return week_title(screen, week, whole) + table.text(screen.paint) +
           remarks(screen, pool_remarks(screen, lane));
}

} // namespace lengthwise::report
