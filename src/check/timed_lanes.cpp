#include "check/timed_lanes.hpp"

#include "calc/totals.hpp"
#include "check/words.hpp"

namespace lengthwise::check {

TimedLanes::TimedLanes(plan::Plan const& plan) : plan_(plan) {
    auto lanes = calc::lanes_of(plan);
    for (auto const& swimmer : plan.swimmers) {
        if (swimmer.lane) {
            lanes.set(*swimmer.lane);
        }
    }
    all_ = calc::numbers(lanes);
    if (all_.empty()) {
        all_.push_back(0);
    }
}

std::vector<int> TimedLanes::of(plan::Session const& session) const {
    auto named = calc::numbers(calc::lanes_of(plan_, session));
    return named.empty() ? all_ : named;
}

std::vector<std::vector<int>> TimedLanes::by_pace(calc::Clock& clock, plan::Index session) const {
    std::vector<std::vector<int>> groups;
    for (int const lane : of(plan_.sessions[session])) {
        auto const* const pacing = &clock.pacing(session, lane);
        auto group = groups.begin();
        while (group != groups.end() && &clock.pacing(session, group->front()) != pacing) {
            ++group;
        }
        (group == groups.end() ? groups.emplace_back() : *group).push_back(lane);
    }
    return groups;
}

std::string TimedLanes::in(std::vector<int> const& lanes, plan::Session const& session) const {
    return lanes.size() == of(session).size() ? std::string{} : " in " + lanes_named(lanes);
}

} // namespace lengthwise::check
