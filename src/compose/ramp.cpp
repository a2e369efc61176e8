#include "compose/ramp.hpp"

#include "calc/growth.hpp"
#include "compose/climb.hpp"
#include "compose/problem.hpp"
#include "compose/session_time.hpp"

#include <algorithm>
#include <array>
#include <set>
#include <tuple>

namespace lengthwise::compose {

namespace {

constexpr auto fewest_laps = static_cast<int>(calc::fewest_laps);
constexpr int third_percent = 34; ///< how a third is said where whole percents are

// --- build weeks -----------------------------------------------------------------------

Choice::LongDay reason(Problem const& problem, int laps, int need, int long_day) {
    auto const k = problem.sessions;
    return long_day == (laps + k - 1) / k ? Choice::LongDay::even_share
           : long_day == need             ? Choice::LongDay::rep
                                          : Choice::LongDay::other_days;
}

Choice choice_of(Problem const& problem, Growth const& growth, Step const& before, Step const& step,
                 int build) {
    Choice choice;
    choice.least_week = least_week(problem, step.rep, build);
    choice.gentle_rep = next_rep(problem, before.rep, growth.rep);
    choice.most_rep = next_rep(problem, before.rep, problem.rep_step);
    choice.gentle_week = next_week(problem, before.laps, growth.week);
    choice.most_week = next_week(problem, before.laps, problem.week_growth);
    if (problem.room.other_day != Room::all) {
        choice.slot_week = most_week(problem, problem.room, step.rep, build);
    }
    return choice;
}

// --- easy weeks ------------------------------------------------------------------------

/// A week as it is swum.
struct Shape {
    int rep = 0;
    int laps = 0;
    int long_day = 0;
};

/// The week of `laps` with the longest rep, at most `rep`, that a long day can hold. Where the slot
/// holds none a shorter week is looked for; one of four laps a session with a rep of one lap always is.
Shape easy_shape(Problem const& problem, int laps, int sessions, int rep) {
    for (auto week = laps; week >= fewest_laps * sessions; --week) {
        for (auto longest = std::max(rep, 1); longest >= 1; --longest) {
            auto const need = static_cast<int>(calc::session_need(longest));
            if (auto const day = long_day(problem, week, sessions, longest, need)) {
                return {longest, week, *day};
            }
        }
    }
    return {1, fewest_laps * sessions, fewest_laps};
}

/// 0.7 of a rep, but not under the smaller of it and 200 m.
int easy_rep(Distance lap, int rep) {
    auto const two_hundred = static_cast<int>(Distance::whole(Distance::metres(200), lap));
    return std::max(rep * 7 / 10, std::min(rep, two_hundred));
}

// --- days ------------------------------------------------------------------------------

/// Pace, long, third, fourth; in the plan's last week the pace day comes last.
std::vector<DayKind> order_of(std::size_t sessions, bool last_week) {
    if (sessions == 1) {
        return {DayKind::long_day};
    }
    std::vector<DayKind> order{DayKind::pace, DayKind::long_day, DayKind::third, DayKind::fourth};
    order.resize(sessions);
    if (last_week) {
        std::rotate(order.begin(), order.begin() + 1, order.end());
    }
    return order;
}

/// The other days share what the long day leaves, the pace day the odd laps first.
int laps_of(DayKind kind, Shape const& shape, int sessions) {
    if (kind == DayKind::long_day) {
        return shape.long_day;
    }
    auto const rest = shape.laps - shape.long_day;
    auto const others = sessions - 1;
    auto const place = kind == DayKind::pace ? 0 : static_cast<int>(kind) - 1;
    return rest / others + (place < rest % others ? 1 : 0);
}

class Maker {
  public:
    Maker(Request const& request, Calendar calendar, Problem const& problem, Climb climb)
        : request_(request), calendar_(std::move(calendar)), problem_(problem), climb_(std::move(climb)),
          least_reps_(least_reps(problem, climb_.growth)) {
        auto const has_sessions = [](CalendarWeek const& week) { return week.kind != WeekKind::empty; };
        auto const last = std::find_if(calendar_.weeks.rbegin(), calendar_.weeks.rend(), has_sessions);
        last_week_ = last->number;
    }

    Ramp make() {
        Ramp ramp;
        ramp.pool = request_.pool;
        ramp.lap = lap(request_.pool);
        ramp.lengths_a_lap = problem_.lengths_a_lap;
        ramp.race_rep = problem_.race_rep;
        ramp.sessions = problem_.sessions;
        ramp.today_longest = static_cast<int>(problem_.today_longest);
        ramp.today_week = static_cast<int>(problem_.today_week);
        ramp.goal_week = static_cast<int>(goal_week(problem_));
        ramp.build_weeks = problem_.build_weeks;
        ramp.week_percent = static_cast<int>(climb_.growth.week);
        ramp.rep_by_third = !climb_.growth.rep;
        ramp.rep_percent = static_cast<int>(climb_.growth.rep.value_or(third_percent));
        for (auto const& week : calendar_.weeks) {
            ramp.weeks.push_back(week_of(week));
        }
        return ramp;
    }

  private:
    RampWeek week_of(CalendarWeek const& from) {
        RampWeek week;
        week.number = from.number;
        week.from = from.from;
        week.kind = from.kind;
        week.holds_race = from.holds_race;
        week.percent = from.percent;
        week.of_kind = ++of_kind_[static_cast<std::size_t>(from.kind)];
        built_ += from.kind == WeekKind::build ? 1 : 0;
        week.build = built_;
        if (from.kind == WeekKind::empty) {
            return week;
        }
        auto const shape = from.kind == WeekKind::build ? build(week) : easy(from);
        week.rep = shape.rep;
        week.laps = shape.laps;
        auto const sessions = from.days.size();
        auto const order = order_of(sessions, from.number == last_week_);
        for (std::size_t i = 0; i < sessions; ++i) {
            auto const last = from.number == last_week_ && i + 1 == sessions;
            week.days.push_back(
                {from.days[i], order[i], laps_of(order[i], shape, static_cast<int>(sessions)), last});
        }
        return week;
    }

    Shape build(RampWeek& week) const {
        auto const w = static_cast<std::size_t>(built_ - 1);
        auto const& step = climb_.steps[w];
        auto const before = w == 0 ? Step{} : climb_.steps[w - 1];
        auto const need = day_need(problem_, step.rep, built_);
        auto const day = long_day(problem_, step.laps, problem_.sessions, step.rep, need).value_or(0);
        auto choice = choice_of(problem_, climb_.growth, before, step, built_);
        choice.least_rep = least_reps_[w];
        choice.long_day = reason(problem_, step.laps, need, day);
        week.choice = choice;
        return {step.rep, step.laps, day};
    }

    /// The share of the last build week, in the taper of the highest (which is the last); before the
    /// first one that of the smaller of it and today. Fewer sessions have their part of it.
    [[nodiscard]] Shape easy(CalendarWeek const& week) const {
        auto const sessions = static_cast<int>(week.days.size());
        auto const u = problem_.lengths_a_lap;
        auto const& step = climb_.steps[static_cast<std::size_t>(std::max(built_, 1) - 1)];
        auto lengths = std::int64_t{u} * step.laps;
        auto rep = std::int64_t{step.rep};
        if (built_ == 0) {
            lengths = std::min(lengths, problem_.today_week);
            rep = std::min(rep, problem_.today_longest / u);
        }
        auto const share = lengths * week.percent * sessions / (std::int64_t{100} * problem_.sessions * u);
        auto const most = week.kind == WeekKind::taper ? problem_.race_rep / 2
                                                       : easy_rep(lap(request_.pool), static_cast<int>(rep));
        return easy_shape(problem_, std::max(static_cast<int>(share), fewest_laps * sessions), sessions,
                          most);
    }

    Request const& request_;
    Calendar calendar_;
    Problem const& problem_;
    Climb climb_;
    std::vector<int> least_reps_;
    int last_week_ = 0; ///< its number
    int built_ = 0;
    std::array<int, 5> of_kind_{};
};

// --- what the slot asks for --------------------------------------------------------------

bool all_fit(Ramp const& ramp, Duration threshold, Duration slot) {
    SessionTimes const times{ramp.pool, threshold};
    std::set<std::tuple<DayKind, int, int>> seen;
    for (auto const& week : ramp.weeks) {
        for (auto const& day : week.days) {
            auto const kind = day.kind == DayKind::long_day ? day.kind : DayKind::pace;
            auto const rep = kind == DayKind::long_day ? week.rep : 1;
            if (seen.insert({kind, day.laps, rep}).second && times.of(kind, day.laps, rep) > slot) {
                return false;
            }
        }
    }
    return true;
}

std::optional<Duration> slowest_that_fits(Ramp const& ramp, Duration slot) {
    auto const second = Duration::seconds(1).ms();
    std::int64_t fits = 0;
    for (auto too_slow = slowest.ms() / second + 1; too_slow - fits > 1;) {
        auto const middle = fits + (too_slow - fits) / 2;
        (all_fit(ramp, Duration::seconds(middle), slot) ? fits : too_slow) = middle;
    }
    return fits > 0 ? std::optional{Duration::seconds(fits)} : std::nullopt;
}

bool over_full_today(Request const& request, Problem const& problem) {
    auto const laps = static_cast<int>(Distance::whole(request.session, lap(request.pool)));
    if (!request.threshold || laps < fewest_laps) {
        return false;
    }
    auto const rep = static_cast<int>(problem.today_longest / problem.lengths_a_lap);
    return SessionTimes{request.pool, *request.threshold}.of(
               DayKind::long_day, laps, std::clamp(rep, 1, laps - 3)) > usable_slot(request);
}

} // namespace

bool short_at_any_pace(Request const& request, Ramp const& ramp) {
    return !request.threshold && ramp.slowest_threshold.value_or(Duration{}) < calc::fastest_threshold;
}

bool holds_race_distance(Request const& request, RampWeek const& week) {
    return week.rep * lap(request.pool) >= request.race.distance;
}

std::optional<Ramp> ramp_of(Request const& request) {
    auto calendar = calendar_of(request);
    auto const problem = problem_of(request, calendar.build_weeks);
    auto climb = best_climb(problem);
    if (!climb) {
        return std::nullopt;
    }
    auto ramp = Maker{request, std::move(calendar), problem, std::move(*climb)}.make();
    ramp.over_full_today = over_full_today(request, problem);
    if (!request.threshold) {
        ramp.slowest_threshold = slowest_that_fits(ramp, usable_slot(request));
    }
    return ramp;
}

} // namespace lengthwise::compose
