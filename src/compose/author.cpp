#include "compose/author.hpp"

#include "compose/amounts.hpp"
#include "compose/drill_section.hpp"
#include "compose/long_day.hpp"
#include "compose/notes.hpp"
#include "compose/set_book.hpp"
#include "compose/warm_up.hpp"

#include <fmt/core.h>

#include <algorithm>
#include <utility>

namespace lengthwise::compose {

namespace {

std::string_view name_of(WeekKind kind) {
    switch (kind) {
    case WeekKind::recovery:
        return "Recovery";
    case WeekKind::eased:
        return "Fewer days";
    case WeekKind::taper:
        return "Taper";
    case WeekKind::build:
    case WeekKind::empty:
        break;
    }
    return "Build";
}

class Author {
  public:
    Author(Request const& request, Ramp const& ramp)
        : request_(request), ramp_(ramp), drills_(request.weeks_swum), builds_(request.weeks_swum),
          whole_swum_(race_was_swum(request)) {
        place_.pool = request.pool;
        place_.kit = request.kit;
        place_.threshold = request.threshold;
        place_.race_rep = ramp.race_rep;
        place_.build_weeks = request.weeks_swum + ramp.build_weeks;
        place_.usual_days = ramp.sessions;
        place_.stage = stage_of(request.pool, ramp.today_longest / ramp.lengths_a_lap);
        place_.era = place_.stage;
        longest_ = ramp.today_longest / ramp.lengths_a_lap;
    }

    std::vector<Week> write() {
        std::vector<Week> weeks;
        for (auto const& week : ramp_.weeks) {
            if (!week.days.empty()) {
                turn_to(week);
                weeks.push_back(write(week));
                leave(week);
            }
        }
        return weeks;
    }

  private:
    void turn_to(RampWeek const& week) {
        place_.opening = opening_;
        place_.kind = week.kind;
        place_.week = week.number;
        place_.rep = week.rep;
        if (week.kind == WeekKind::build) {
            ++builds_;
            place_.held = week.rep <= longest_;
            place_.whole = holds_race_distance(request_, week) && !whole_swum_;
            top_rep_ = std::max(top_rep_, week.rep);
            place_.stage = stage_of(place_.pool, top_rep_);
            place_.era = builds_ % 6 == 1 ? place_.stage : place_.era;
        }
        place_.build = std::max(1, builds_);
        place_.easy += is_easy(place_) ? 1 : 0;
        place_.taper += week.kind == WeekKind::taper ? 1 : 0;
        drills_now_ = drills_.open_week(place_);
        place_.index = 0;
    }

    void leave(RampWeek const& week) {
        opening_ = false;
        if (week.kind == WeekKind::build) {
            longest_ = std::max(longest_, week.rep);
            whole_swum_ = whole_swum_ || place_.whole;
            sight_met_ = sight_met_ || drills_now_.focus == Focus::sight;
        }
    }

    Week write(RampWeek const& week) {
        Week written{.number = week.number, .title = title(week)};
        for (auto const& day : week.days) {
            place_.day = day.kind;
            place_.laps = day.laps;
            place_.last = day.last;
            written.sessions.push_back(write(day));
            ++place_.index;
        }
        return written;
    }

    [[nodiscard]] std::string title(RampWeek const& week) const {
        return fmt::format("{}: longest {}, {} in all", name_of(week.kind), figure(place_.pool, week.rep),
                           amount(place_.pool, week.laps));
    }

    Session write(Day const& day) {
        auto const sizes = day_sizes(day.kind, day.laps, place_.rep, place_.pool, day.last);
        auto main = day.kind == DayKind::long_day ? main_of_long_day(place_, sizes.main)
                                                  : sets_.next(place_, sizes.main);
        auto const warm_up = sizes.warm_up + (main.spare > 1 ? 1 : 0);
        auto const cool_down = sizes.cool_down + (main.spare > 0 ? 1 : 0);
        Session session{.kind = day.kind, .date = day.date, .laps = day.laps, .title = std::move(main.title)};
        session.sections.push_back(warm_up_section(place_, warm_up, sizes.drill > 0, drills_now_, drills_));
        if (sizes.drill > 0) {
            session.sections.push_back(drill_section(place_, sizes.drill, drills_now_, drills_));
        }
        session.sections.push_back(
            {.kind = SectionKind::main, .notes = std::move(main.notes), .lines = std::move(main.lines)});
        session.sections.push_back(cool_down_section(place_, cool_down));
        add_notes(session, {.place = place_,
                            .first = opening_ && place_.index == 0,
                            .open_water = !request_.race_in_pool,
                            .looking = is_looking()});
        return session;
    }

    /// The first build week that looks where it swims.
    [[nodiscard]] bool is_looking() const {
        return place_.kind == WeekKind::build && drills_now_.focus == Focus::sight && !sight_met_;
    }

    Request const& request_;
    Ramp const& ramp_;
    Place place_;
    DrillBook drills_;
    WeekDrills drills_now_;
    SetBook sets_;
    Laps longest_ = 0; ///< swum in a build week so far, or today
    Laps top_rep_ = 0; ///< of build weeks, this one too
    int builds_ = 0;   ///< weeks that were swum before it are taken for such
    bool opening_ = true;
    bool whole_swum_;
    bool sight_met_ = false;
};

} // namespace

std::vector<Week> sessions_of(Request const& request, Ramp const& ramp) {
    return Author{request, ramp}.write();
}

} // namespace lengthwise::compose
