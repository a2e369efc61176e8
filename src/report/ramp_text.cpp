#include "report/ramp_text.hpp"

#include "check/progress.hpp"
#include "check/swum.hpp"
#include "report/choose.hpp"
#include "report/table.hpp"
#include "report/width.hpp"
#include "units/spell.hpp"

#include <fmt/core.h>

#include <algorithm>
#include <optional>
#include <vector>

namespace lengthwise::report {

namespace {

constexpr std::size_t widest_name = 20;

/// Lanes, or swimmers, whose longest rep is the same in every week.
struct Climb {
    calc::LaneSet lanes;
    std::string swimmers{}; ///< names; empty: the lanes
    Distance before{};
    std::vector<Distance> weeks{};

    [[nodiscard]] bool like(Climb const& other) const {
        return before == other.before && weeks == other.weeks;
    }
};

std::vector<Distance> longest_of_weeks(check::Swum const& swum) {
    std::vector<Distance> longest;
    for (auto const& week : swum.weeks) {
        longest.push_back(week.sums.swum(swum.lane).longest);
    }
    return longest;
}

/// Those who swim alike share one; a swimmer has none where a lane swims the same.
std::vector<Climb> climbs_of(plan::Plan const& plan) {
    std::vector<Climb> climbs;
    calc::Reckoner sums{plan};
    check::each_swum(plan, sums, [&](check::Swum const& swum) {
        auto const& before = swum.plan.before;
        Climb climb{{}, {}, before ? before->longest : Distance{}, longest_of_weeks(swum)};
        auto found = std::ranges::find_if(climbs, [&](Climb const& other) { return other.like(climb); });
        if (swum.sharers == nullptr) {
            found = found == climbs.end() ? climbs.insert(found, std::move(climb)) : found;
            found->lanes.set(static_cast<std::size_t>(swum.lane));
        } else if (found == climbs.end()) {
            climb.swimmers = check::names(*swum.sharers);
            climbs.push_back(std::move(climb));
        } else if (!found->swimmers.empty()) {
            found->swimmers += ", " + check::names(*swum.sharers);
        }
    });
    return climbs;
}

std::vector<check::SwumWeek> weeks_of(plan::Plan const& plan) {
    calc::Reckoner sums{plan};
    return check::swum_weeks(plan, sums);
}

/// Of the pool that is named first.
Unit unit_of(plan::Plan const& plan) {
    return plan.sessions.empty() ? Unit::metre : plan.pool_of(plan.sessions.front()).unit;
}

class Ramp {
  public:
    Ramp(plan::Plan const& plan, bool ascii)
        : plan_(plan), weeks_(weeks_of(plan)), climbs_(climbs_of(plan)), ascii_(ascii) {}

    /// A row for all that swim alike.
    [[nodiscard]] Table lying() const {
        std::vector<Column> columns{{.head = title(), .figures = false}};
        for (auto const& stop : stops()) {
            columns.push_back({.head = stop});
        }
        Table table{std::move(columns)};
        for (auto const& climb : climbs_) {
            std::vector<Cell> cells{{.text = who(climb)}};
            std::ranges::move(figures(climb), std::back_inserter(cells));
            table.row(cells);
        }
        return table;
    }

    [[nodiscard]] bool worth_showing() const {
        return std::ranges::any_of(weeks_, [](auto const& swum) { return swum.week->number.has_value(); });
    }

    /// A row a week: as many side by side as there is room for, the others below.
    [[nodiscard]] std::string standing(Paint const& paint, std::size_t width) const {
        std::string text;
        for (std::size_t first = 0; first < climbs_.size();) {
            auto count = std::min(climbs_.size() - first, width / 8 + 1); // more need not be tried
            while (count > 1 && standing(first, count).width() > width) {
                --count;
            }
            text.append(text.empty() ? "" : "\n").append(standing(first, count).text(paint));
            first += count;
        }
        return text;
    }

  private:
    [[nodiscard]] Table standing(std::size_t first, std::size_t count) const {
        std::vector<Column> columns{{.head = title(), .figures = false}};
        std::vector<std::vector<Cell>> all;
        for (auto i = first; i < first + count; ++i) {
            columns.push_back({.head = who(climbs_[i])});
            all.push_back(figures(climbs_[i]));
        }
        Table table{std::move(columns)};
        auto const heads = stops();
        for (std::size_t i = 0; i < heads.size(); ++i) {
            std::vector<Cell> cells{{.text = heads[i]}};
            for (auto const& column : all) {
                cells.push_back(column[i]);
            }
            table.row(cells);
        }
        return table;
    }

    [[nodiscard]] std::string title() const {
        return fmt::format("longest rep, {}", spell::symbol(unit_of(plan_)));
    }

    [[nodiscard]] std::string who(Climb const& climb) const {
        if (!climb.swimmers.empty()) {
            return cut(visible(climb.swimmers), widest_name, ascii_);
        }
        bool const others = climbs_.back().swimmers.empty();
        return climb.lanes.test(0) ? others ? "everyone" : "everyone else" : lanes_label(climb.lanes, ascii_);
    }

    [[nodiscard]] std::vector<std::string> stops() const {
        std::vector<std::string> stops;
        if (plan_.before) {
            stops.emplace_back("before");
        }
        for (auto const& swum : weeks_) {
            stops.push_back(week_label(*swum.week));
        }
        if (plan_.race) {
            stops.emplace_back("race");
        }
        return stops;
    }

    [[nodiscard]] std::vector<Cell> figures(Climb const& climb) const {
        std::vector<Cell> cells;
        if (plan_.before) {
            cells.push_back(figure(climb.before));
        }
        for (auto const longest : climb.weeks) {
            cells.push_back(longest.zero() ? Cell{.text = "-"} : figure(longest));
        }
        if (plan_.race) {
            // A race in metres stays so in a pool of yards, with its unit.
            auto const& race = *plan_.race;
            cells.push_back(race.unit == unit_of(plan_)
                                ? figure(race.distance)
                                : Cell{.text = spell::distance(race.distance, race.unit, ascii_)});
        }
        return cells;
    }

    [[nodiscard]] Cell figure(Distance distance) const {
        auto figure = spell::figure(distance, unit_of(plan_), ascii_);
        return {.text = std::move(figure.whole), .hang = std::move(figure.hang)};
    }

    plan::Plan const& plan_;
    std::vector<check::SwumWeek> weeks_;
    std::vector<Climb> climbs_;
    bool ascii_;
};

} // namespace

std::string ramp_text(plan::Plan const& plan, Paint const& paint, std::size_t width, bool ascii) {
    Ramp const ramp{plan, ascii};
    if (!ramp.worth_showing()) {
        return {};
    }
    auto const lying = ramp.lying();
    return lying.width() <= width ? lying.text(paint) : ramp.standing(paint, width);
}

} // namespace lengthwise::report
