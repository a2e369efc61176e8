#include "support/plain_ramp.hpp"

#include "compose/calendar.hpp"

#include <algorithm>
#include <array>

namespace lengthwise::support {

using namespace compose;

namespace {

int between(std::mt19937& random, int low, int high) {
    return low + static_cast<int>(random() % static_cast<unsigned>(high - low + 1));
}

int need(int rep) {
    return std::max(rep + 3, (4 * rep + 2) / 3);
}

/// The days of a week of about `laps`, the long one with room for `rep`.
std::vector<Day> days_of(std::vector<Date> const& dates, int laps, int rep, bool last_week) {
    auto const count = static_cast<int>(dates.size());
    auto const longest = std::max((laps + count - 1) / count, need(rep));
    auto rest = std::max(laps - longest, 4 * (count - 1));
    std::vector<Day> days;
    std::vector<DayKind> kinds{DayKind::pace, DayKind::long_day, DayKind::third, DayKind::fourth};
    kinds.resize(static_cast<std::size_t>(count));
    if (count == 1) {
        kinds = {DayKind::long_day};
    } else if (last_week) {
        std::rotate(kinds.begin(), kinds.begin() + 1, kinds.end());
    }
    auto others = count - 1;
    for (std::size_t i = 0; i < dates.size(); ++i) {
        auto const is_long = kinds[i] == DayKind::long_day;
        auto const size = is_long ? longest : (rest + others - 1) / others;
        rest -= is_long ? 0 : size;
        others -= is_long ? 0 : 1;
        days.push_back(
            {.date = dates[i], .kind = kinds[i], .laps = size, .last = last_week && i + 1 == dates.size()});
    }
    return days;
}

} // namespace

Request random_request(std::mt19937& random) {
    std::array const pools{
        Pool::of(Distance::metres(25), Unit::metre), Pool::of(Distance::yards(25), Unit::yard),
        Pool::of(Distance::units(1'000'000), Unit::metre), Pool::of(Distance::metres(50), Unit::metre)};
    std::array const races{300, 400, 750, 1000, 1500, 1900, 3800};
    Request request;
    request.pool = pools[static_cast<std::size_t>(between(random, 0, 3))];
    request.race.distance = Distance::metres(races[static_cast<std::size_t>(between(random, 0, 6))]);
    request.from = Date{std::chrono::days{20'570 + between(random, 0, 6)}};
    request.race.on = request.from + std::chrono::days{between(random, 3 * 7, 40 * 7)};
    for (std::uint8_t day = 0; day < 7; ++day) {
        request.days.push_back(day);
    }
    std::shuffle(request.days.begin(), request.days.end(), random);
    request.days.resize(static_cast<std::size_t>(between(random, 1, 4)));
    std::ranges::sort(request.days);
    request.slot = Duration::minutes(90);
    if (random() % 2 == 0) {
        request.threshold = Duration::seconds(between(random, 80, 180));
    }
    request.longest = request.pool.length * between(random, 1, 30);
    request.session = request.longest + request.pool.length * between(random, 4, 40);
    request.kit = {.board = random() % 3 != 0, .buoy = random() % 3 != 0};
    request.race_in_pool = random() % 3 == 0;
    for (auto closed = between(random, 0, 6) - 3; closed > 0; --closed) {
        request.closed.push_back(request.from + std::chrono::days{between(random, 0, 100)});
    }
    return request;
}

Ramp plain_ramp(Request const& request) {
    auto const calendar = calendar_of(request);
    Ramp ramp;
    ramp.pool = request.pool;
    ramp.lap = lap(request.pool);
    ramp.lengths_a_lap = static_cast<int>(lengths_a_lap(request.pool));
    ramp.race_rep = static_cast<int>(race_rep_laps(request));
    ramp.sessions = static_cast<int>(request.days.size());
    ramp.today_longest = static_cast<int>(Distance::whole(request.longest, request.pool.length));
    ramp.today_week = static_cast<int>(Distance::whole(request.session * ramp.sessions, request.pool.length));
    ramp.build_weeks = calendar.build_weeks;
    auto rep = std::clamp(ramp.today_longest / ramp.lengths_a_lap, 1, ramp.race_rep);
    auto laps = std::max(ramp.today_week / ramp.lengths_a_lap, 4 * ramp.sessions);
    auto left = calendar.build_weeks;
    std::array<int, 5> of_kind{};
    for (auto const& week : calendar.weeks) {
        RampWeek next;
        next.number = week.number;
        next.from = week.from;
        next.kind = week.kind;
        next.holds_race = week.holds_race;
        next.percent = week.percent;
        next.of_kind = ++of_kind[static_cast<std::size_t>(week.kind)];
        if (week.kind == WeekKind::build) {
            rep = --left == 0 ? ramp.race_rep
                              : std::min({ramp.race_rep, std::max(rep + 1, rep + rep / 3),
                                          std::max(rep, ramp.race_rep - left)});
            auto const enough = std::max(laps, ramp.sessions * (need(ramp.race_rep) + 2));
            laps = std::max(std::min(laps + ramp.sessions, enough), need(rep) + 4 * (ramp.sessions - 1));
            next.rep = rep;
            next.build = ramp.build_weeks - left;
        } else {
            next.rep = std::max(1, week.kind == WeekKind::taper ? ramp.race_rep / 2 : rep * 7 / 10);
        }
        auto const percent = week.kind == WeekKind::build ? 100 : week.percent;
        if (!week.days.empty()) {
            auto const share = percent * static_cast<int>(week.days.size());
            next.days = days_of(week.days, laps * share / (100 * ramp.sessions), next.rep,
                                &week == &calendar.weeks.back());
        }
        for (auto const& day : next.days) {
            next.laps += day.laps;
        }
        ramp.weeks.push_back(std::move(next));
    }
    return ramp;
}

} // namespace lengthwise::support
