#include "compose/problem.hpp"

#include "calc/growth.hpp"
#include "compose/session_time.hpp"

#include <algorithm>

namespace lengthwise::compose {

namespace {

constexpr auto fewest_laps = static_cast<int>(calc::fewest_laps);

/// No day of a plan is longer; what its slot could hold beyond is of no matter.
constexpr int longest_day = 4000;

/// From one length on this share is more than any rep or week of a plan.
constexpr std::int64_t any_percent = 1'000'000;

constexpr int ceiling(int a, int b) {
    return (a + b - 1) / b;
}

int need_of(int rep) {
    return static_cast<int>(calc::session_need(rep));
}

Room all_room(int race_rep) {
    return {std::vector<int>(static_cast<std::size_t>(race_rep) + 1, Room::all), Room::all};
}

Room room_in(Request const& request, Duration slot, int race_rep, int from_rep) {
    auto room = all_room(race_rep);
    if (request.threshold) {
        SessionTimes const times{request.pool, *request.threshold};
        for (auto rep = from_rep; rep <= race_rep; ++rep) {
            room.long_day[static_cast<std::size_t>(rep)] =
                times.largest(DayKind::long_day, rep, slot, longest_day);
        }
        room.other_day = times.largest(DayKind::pace, 1, slot, longest_day);
    }
    return room;
}

} // namespace

Problem problem_of(Request const& request, int build_weeks) {
    Problem problem;
    auto const length = request.pool.length;
    auto const slot = usable_slot(request);
    problem.build_weeks = build_weeks;
    problem.lengths_a_lap = static_cast<int>(lengths_a_lap(request.pool));
    problem.sessions = static_cast<int>(request.days.size());
    problem.race_rep = static_cast<int>(race_rep_laps(request));
    problem.today_longest = Distance::whole(request.longest, length);
    problem.today_week = Distance::whole(problem.sessions * request.session, length);
    if (auto const percent = limit(request, "rep-step")) {
        problem.rep_step = std::min(*percent, any_percent);
    }
    problem.week_growth = std::min(limit_or(request, "week-growth", calc::usual::week_growth), any_percent);
    auto const floor = Distance::units(limit_or(request, "session-floor", 0));
    problem.session_floor = static_cast<int>(Distance::ceiling(floor, lap(request.pool)));
    problem.room = room_in(request, slot, problem.race_rep, 1);
    problem.tight = room_in(request, Duration::ms(slot.ms() * 95 / 100), problem.race_rep, problem.race_rep);
    return problem;
}

int next_rep(Problem const& problem, int rep, std::optional<std::int64_t> percent) {
    std::int64_t const lap = problem.lengths_a_lap;
    auto const longest = std::max<std::int64_t>(problem.today_longest, lap * rep);
    auto const next = calc::next_rep(Distance::units(longest), Distance::units(lap), percent);
    return static_cast<int>(next.units() / lap);
}

int next_week(Problem const& problem, int laps, std::int64_t percent) {
    std::int64_t const lap = problem.lengths_a_lap;
    auto const highest = std::max<std::int64_t>(problem.today_week, lap * laps);
    auto const next =
        calc::next_week(Distance::units(highest), Distance::units(lap * problem.sessions), percent);
    return static_cast<int>(next.units() / lap);
}

int day_need(Problem const& problem, int rep, int build) {
    return build == problem.build_weeks ? std::max(need_of(rep), problem.session_floor) : need_of(rep);
}

int least_week(Problem const& problem, int rep, int build) {
    auto const k = problem.sessions;
    auto const need = day_need(problem, rep, build);
    auto const others = fewest_laps * (k - 1);
    // The long day is at most 1/k + 1/10 of the week, and never all of it but alone.
    auto const by_share = k == 1 ? need : ceiling(10 * k * need, 10 + k);
    return std::max({fewest_laps * k, need + others, by_share});
}

int most_week(Problem const& problem, Room const& room, int rep, int build) {
    auto const k = problem.sessions;
    auto const day = room.long_day[static_cast<std::size_t>(rep)];
    if (day < day_need(problem, rep, build) || (k > 1 && room.other_day < fewest_laps)) {
        return 0;
    }
    if (k == 1) {
        return day;
    }
    // The long day is at least an even share, and what the other days cannot hold; at most 1/k + 1/10.
    auto const others = (k - 1) * room.other_day;
    return std::min({k * day, day + others, static_cast<int>(10LL * k * others / (9 * k - 10))});
}

std::optional<int> long_day(Problem const& problem, int laps, int sessions, int rep, int need) {
    auto const others = sessions - 1;
    auto const& room = problem.room;
    auto const kept =
        others == 0 ? 0
                    : static_cast<int>(std::min<std::int64_t>(laps, std::int64_t{others} * room.other_day));
    auto const least = std::max({ceiling(laps, sessions), need, laps - kept});
    auto const most = std::min({laps * (10 + sessions) / (10 * sessions), laps - fewest_laps * others,
                                room.long_day[static_cast<std::size_t>(rep)]});
    return least <= most ? std::optional{least} : std::nullopt;
}

std::int64_t goal_week(Problem const& problem) {
    auto const u = std::int64_t{problem.lengths_a_lap};
    auto const need = u * need_of(problem.race_rep);
    auto const least = u * least_week(problem, problem.race_rep, problem.build_weeks);
    auto const today = problem.today_week;
    auto const most = u * most_week(problem, problem.tight, problem.race_rep, problem.build_weeks);
    auto const longer = std::max(today, std::min(today * 5 / 4, problem.sessions * 3 / 2 * need));
    return std::max(std::min(std::max({2 * need, least, longer}), most), least);
}

} // namespace lengthwise::compose
