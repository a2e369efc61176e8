#include "check/progress.hpp"

#include "plan/rules.hpp"

#include <algorithm>
#include <utility>

namespace lengthwise::check {

bool before_race(plan::Plan const& plan, plan::Session const& session) {
    return !plan.race || !session.date || *session.date < plan.race->on;
}

std::vector<SwumWeek> swum_weeks(plan::Plan const& plan, calc::Reckoner& sums) {
    std::vector<SwumWeek> weeks;
    for (auto const& week : plan.weeks) {
        SwumWeek swum{.week = &week, .sums = {}, .sessions = 0, .laps = {}};
        for (auto i = week.sessions.first; i < week.sessions.end(); ++i) {
            auto const& session = plan.sessions[i];
            if (before_race(plan, session)) {
                sums.add_session(session, swum.sums);
                swum.laps += lap_of(plan, session);
                ++swum.sessions;
            }
        }
        if (swum.sessions > 0) {
            weeks.push_back(std::move(swum));
        }
    }
    return weeks;
}

bool near_race(plan::Plan const& plan, plan::Week const& week) {
    using std::chrono::days;
    return !week.from || plan.race->on - (*week.from + days{6}) <= days{calc::taper_reach};
}

Eased eased(std::vector<SwumWeek> const& weeks, SwumWeek const& week, int lane, std::int64_t percent) {
    Distance highest;
    for (std::size_t i = 0; i + 1 < weeks.size(); ++i) {
        highest = std::max(highest, weeks[i].sums.swum(lane).distance);
    }
    return {highest, calc::eased_week(highest, week.laps, percent)};
}

std::vector<int> lanes_to_judge(plan::Plan const& plan) {
    auto lanes = calc::numbers(calc::lanes_of(plan));
    if (lanes.empty()) {
        lanes.push_back(0);
    }
    return lanes;
}

std::optional<plan::Limit> file_limit(plan::Plan const& plan, std::string_view rule) {
    auto const& limits = plan.settings[plan.file_settings].limits;
    auto const found = std::ranges::find_if(
        limits, [rule](plan::Limit const& limit) { return plan::rules[limit.rule].name == rule; });
    return found == limits.end() ? std::nullopt : std::optional{*found};
}

RaceRep race_rep_asked(plan::Plan const& plan) {
    auto const limit = file_limit(plan, "race-rep");
    auto const percent = limit ? limit->low : calc::usual::race_rep;
    return {calc::race_rep(plan.race->distance, percent), percent};
}

Distance lap_of(plan::Plan const& plan, plan::Session const& session) {
    auto const& pool = plan.pool_of(session);
    return pool.has_length() ? lap(pool) : Distance::metres(50);
}

} // namespace lengthwise::check
