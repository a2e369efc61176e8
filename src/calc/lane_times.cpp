#include "calc/lane_times.hpp"

#include <algorithm>

namespace lengthwise::calc {
namespace {

constexpr auto by_lane = &std::pair<int, SectionTimes>::first;

} // namespace

SectionTimes const& LaneTimes::of(int lane) const {
    auto const at = std::ranges::lower_bound(lanes_, lane, {}, by_lane);
    return at != lanes_.end() && at->first == lane ? at->second : others_;
}

void LaneTimes::set(int lane, SectionTimes const& times) {
    if (lane == 0) {
        others_ = times;
        return;
    }
    auto const at = std::ranges::lower_bound(lanes_, lane, {}, by_lane);
    if (at != lanes_.end() && at->first == lane) {
        at->second = times;
    } else {
        lanes_.insert(at, {lane, times});
    }
}

void LaneTimes::add(LaneTimes const& more) {
    for (auto const& lane : more.lanes_) {
        set(lane.first, SectionTimes{of(lane.first)});
    }
    for (auto& [lane, times] : lanes_) {
        times.add(more.of(lane));
    }
    others_.add(more.others_);
}

std::vector<LaneTimes> const& LaneClock::sections(plan::Index session, LaneSet const& named) {
    sections_.clear();
    if (only_) {
        time(session, *only_, 0);
        return sections_;
    }
    time(session, 0, 0);
    auto lanes = named;
    for (int const lane : clock_.paced_lanes()) {
        lanes.set(static_cast<std::size_t>(lane));
    }
    if (lanes.any()) {
        for (int const lane : numbers(lanes)) {
            time(session, lane, lane);
        }
    }
    return sections_;
}

void LaneClock::time(plan::Index session, int lane, int as) {
    clock_.sections(session, lane, of_lane_);
    sections_.resize(of_lane_.size());
    for (std::size_t i = 0; i < of_lane_.size(); ++i) {
        sections_[i].set(as, of_lane_[i]);
    }
}

} // namespace lengthwise::calc
