#include "report/compose_text.hpp"

#include "report/table.hpp"
#include "units/spell.hpp"

#include <fmt/core.h>

#include <algorithm>
#include <string_view>

namespace lengthwise::report {

namespace {

using compose::Ramp;
using compose::RampWeek;
using compose::Request;
using compose::WeekKind;

Cell figure(Distance distance, Unit unit, bool ascii) {
    auto figure = spell::figure(distance, unit, ascii);
    return {std::move(figure.whole), std::move(figure.hang)};
}

/// In the place of a step up: why there is none.
std::string_view word_of(WeekKind kind) {
    switch (kind) {
    case WeekKind::build:
        return "holds";
    case WeekKind::recovery:
        return "recovers";
    case WeekKind::eased:
    case WeekKind::empty:
        return "closed";
    case WeekKind::taper:
        return "eases";
    }
    return {};
}

class RampTable {
  public:
    RampTable(Request const& request, Ramp const& ramp, bool ascii)
        : request_(request), ramp_(ramp), unit_(ramp.pool.unit), ascii_(ascii),
          longest_(ramp.today_longest * ramp.pool.length), highest_(ramp.today_week * ramp.pool.length) {}

    std::string text(Paint const& paint) {
        auto const unit = spell::symbol(unit_);
        Table table{{{.head = "", .figures = false},
                     {.head = fmt::format("rep {}", unit)},
                     {.head = "more"},
                     {.head = fmt::format("week {}", unit)},
                     {.head = "more"}}};
        table.row({{.text = "today"}, amount(longest_), {}, amount(highest_)});
        for (auto const& week : ramp_.weeks) {
            add(table, week);
        }
        // A race in metres stays so in a pool of yards, with its unit.
        auto const& race = request_.race;
        table.row({{.text = "race"},
                   race.unit == unit_ ? amount(race.distance)
                                      : Cell{.text = spell::distance(race.distance, race.unit, ascii_)}});
        return table.text(paint);
    }

  private:
    [[nodiscard]] Cell amount(Distance distance) const { return figure(distance, unit_, ascii_); }

    /// Up or down from the highest so far; a word where it is meant to be lower, or is the same.
    [[nodiscard]] Cell step(WeekKind kind, Distance from, Distance to) const {
        if (kind != WeekKind::build || from == to) {
            return {.text = std::string{word_of(kind)}};
        }
        auto cell = amount(to - from);
        if (to > from) {
            cell.text.insert(0, "+");
        }
        return cell;
    }

    void add(Table& table, RampWeek const& week) {
        auto const label = Cell{.text = fmt::format("week {}", week.number)};
        if (week.kind == WeekKind::empty) {
            table.row({label, {.text = "-"}, {.text = "closed"}, {.text = "-"}, {.text = "closed"}});
            return;
        }
        auto const rep = week.rep * ramp_.lap;
        auto const laps = week.laps * ramp_.lap;
        table.row({label, amount(rep), step(week.kind, longest_, rep), amount(laps),
                   step(week.kind, highest_, laps)});
        if (week.kind == WeekKind::build) {
            longest_ = std::max(longest_, rep);
            highest_ = std::max(highest_, laps);
        }
    }

    Request const& request_;
    Ramp const& ramp_;
    Unit unit_;
    bool ascii_;
    Distance longest_;
    Distance highest_;
};

std::string slot_words(Request const& request) {
    return spell::spaced(compose::usable_slot(request));
}

} // namespace

std::vector<Saying> ramp_sayings(Request const& request, Ramp const& ramp, bool ascii) {
    std::vector<Saying> found;
    auto const unit = ramp.pool.unit;
    auto const note = [&](std::string_view kind, std::string message, std::string hint = {}) {
        found.push_back({kind, Severity::note, std::move(message), std::move(hint)});
    };
    auto const race = spell::distance(request.race.distance, request.race.unit, ascii);
    if (auto const rep = ramp.race_rep * ramp.lap; rep > request.race.distance) {
        note("race-rep",
             fmt::format("the race is {}, its rep {}: whole laps of {}", race,
                         spell::distance(rep, unit, ascii), spell::distance(ramp.lap, unit, ascii)));
    }
    if (compose::short_at_any_pace(request, ramp)) {
        found.push_back({"slot", Severity::error,
                         fmt::format("{} is too short for this plan at any pace", slot_words(request)),
                         "a longer --slot, or more days"});
    } else if (ramp.slowest_threshold) {
        note("slot", fmt::format("fits {} at a threshold of {} or faster", slot_words(request),
                                 pace_per_100(*ramp.slowest_threshold, unit)));
    }
    if (ramp.over_full_today) {
        note("today",
             fmt::format("{} of today may take more than {} at {}",
                         spell::distance(request.session, unit, ascii), slot_words(request),
                         pace_per_100(*request.threshold, unit)),
             "no session of the plan does");
    }
    return found;
}

std::string ramp_table(Request const& request, Ramp const& ramp, Paint const& paint, bool ascii) {
    return RampTable{request, ramp, ascii}.text(paint);
}

} // namespace lengthwise::report
