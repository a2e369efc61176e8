#include "report/card_backs.hpp"

#include "calc/lane_swimmers.hpp"
#include "calc/longest.hpp"
#include "calc/passing.hpp"
#include "calc/totals.hpp"
#include "report/card_words.hpp"
#include "report/choose.hpp"
#include "report/time_words.hpp"
#include "report/width.hpp"
#include "units/spell.hpp"

#include <algorithm>
#include <cstddef>

namespace lengthwise::report {
namespace {

/// A rep that takes more lines than this is too long to be paced by a card.
constexpr std::int64_t most_lines = 200;

/// One who swims the longest rep.
struct Column {
    std::string name;
    calc::LaneSwim swim;
};

/// 14:43, seconds half up.
std::string clock_text(Duration time) {
    return spell::clock(Duration::seconds((time.ms() + 500) / 1000));
}

class PaceBack {
  public:
    PaceBack(plan::Plan const& plan, calc::Clock& clock, plan::Index session, int lane)
        : plan_(plan), clock_(clock), session_(session), lane_(lane),
          pool_(plan.pool_of(plan.sessions[session])),
          longest_(calc::longest_of_session(plan, session, lane)) {}

    void write(CardBack& back) {
        if (longest_.item == plan::no_index) {
            return;
        }
        auto const swims = columns();
        auto const step = one(pool_.unit) * 100;
        if (swims.empty() || longest_.distance > step * most_lines) {
            return;
        }
        back.title =
            spell::distance(longest_.distance, pool_.unit) + (pool_.has_length() ? " at the walls" : "");
        auto const words = joined(manner_words(plan_.terms[terms()].manner, {}, pool_), " ");
        back.head = {joined({"expected", words}, ", "), "expected"};
        back.columns = {std::string{spell::symbol(pool_.unit)}};
        back.passing = true;
        for (auto const& column : swims) {
            back.columns.push_back(column.name);
        }
        for (auto at = step;; at += step) {
            auto const here = std::min(at, longest_.distance);
            back.lines.push_back(line(here, swims));
            if (here == longest_.distance) {
                return;
            }
        }
    }

  private:
    [[nodiscard]] plan::Index terms() const { return plan_.items[longest_.item].terms; }

    std::vector<Column> columns() {
        std::vector<Column> columns;
        calc::LaneRep const rep{longest_.item, terms(), longest_.distance};
        auto const& around = clock_.pacing(session_, lane_);
        for (auto const& swimmer : plan_.swimmers) {
            bool const here = lane_ == 0 || (swimmer.lane && *swimmer.lane == lane_);
            if (!here || !swimmer.threshold) {
                continue;
            }
            if (auto const swim = calc::swim_of(plan_, around, swimmer, rep)) {
                columns.push_back({visible(swimmer.name), *swim});
            }
        }
        auto const time = clock_.rep(session_, lane_, terms(), longest_.distance.units(), false);
        if (columns.empty() && time.timed && time.swim.expected.ms() > 0) {
            auto const pace = calc::Exact{time.swim.expected.ms(), longest_.distance.units()};
            columns.push_back(
                {lane_ == 0 ? "time" : "lane " + std::to_string(lane_), {pace, longest_.distance}});
        }
        return columns;
    }

    [[nodiscard]] CardBackLine line(Distance at, std::vector<Column> const& columns) const {
        CardBackLine line{{}, {spell::number(at, pool_.unit)}, at};
        for (auto const& column : columns) {
            bool const swims = at <= column.swim.distance;
            line.cells.push_back(swims ? clock_text(calc::passing(column.swim, at)) : std::string{});
        }
        return line;
    }

    plan::Plan const& plan_;
    calc::Clock& clock_;
    plan::Index session_;
    int lane_;
    Pool const& pool_;
    calc::LongestRep longest_;
};

/// In the order in which a late session is cut (docs/late.md).
std::vector<std::string> advice(Card const& front) {
    bool optional = false;
    for (auto const& section : front.sections) {
        optional = std::any_of(section.rows.begin(), section.rows.end(),
                               [](CardRow const& row) { return row.optional; }) ||
                   optional;
    }
    std::string const rows = "leave out rows from the end of main";
    std::vector<std::string> lines{optional ? "leave out “if time”, then rows from the end of main" : rows};
    auto const kept = front.strip ? spell::distance(front.strip->rep, front.strip->pool.unit) : std::string{};
    lines.push_back(kept.empty() ? "the cool-down stays" : "the " + kept + " and the cool-down stay");
    if (front.strip) {
        lines.emplace_back("stopped early: ring the last box ticked");
    }
    return lines;
}

} // namespace

CardBack pace_back(plan::Plan const& plan, calc::Clock& clock, plan::Index session, int lane,
                   Card const& front) {
    CardBack back;
    back.title = front.title;
    PaceBack{plan, clock, session, lane}.write(back);
    back.when_short = advice(front);
    return back;
}

CardBack overview_back(plan::Plan const& plan, calc::Clock& clock, plan::Index session, int lane) {
    auto const& week = plan.weeks[plan.sessions[session].week];
    auto const unit = plan.pool_of(plan.sessions[session]).unit;
    lane = lane == 0 ? calc::lowest(calc::lanes_of(plan)) : lane;
    calc::Reckoner reckoner{plan};
    CardBack back;
    back.title = week.number ? "Week " + std::to_string(*week.number) : "All sessions";
    back.head = {visible(week.name)};
    back.columns = {std::string{spell::symbol(unit)}, "lengths", "longest", "min"};
    for (auto i = week.sessions.first; i < week.sessions.end(); ++i) {
        auto const& each = plan.sessions[i];
        auto const totals = reckoner.of_session(each).swum(lane);
        auto const time = clock.passes_limit(i) ? std::nullopt : clock.session(i, lane).total();
        auto const day = each.date ? spell::short_day(*each.date) : day_label(each);
        auto const name = visible(each.name);
        back.lines.push_back({joined({day, name}, "  "),
                              {spell::number(totals.distance, unit),
                               plan.pool_of(each).has_length() ? std::to_string(totals.lengths) : "-",
                               totals.longest.zero() ? "-" : spell::number(totals.longest, unit),
                               time ? band_minutes(*time) : "-"},
                              {}});
    }
    if (plan.race) {
        auto const on = spell::short_day(plan.race->on);
        back.lines.push_back({joined({"race", on, visible(plan.race->name)}, "  "),
                              {"", "", spell::number(plan.race->distance, unit)},
                              {}});
    }
    return back;
}

} // namespace lengthwise::report
