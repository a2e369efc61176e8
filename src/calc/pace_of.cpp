#include "calc/pace_of.hpp"

#include "calc/exact.hpp"
#include "units/pace.hpp"

namespace lengthwise::calc {
namespace {

/// Time for a unit of distance where every pool is alike: T / P / K(course).
Exact anywhere(plan::Threshold const& threshold) {
    return Exact{threshold.time.ms(), threshold.per.units()} / swum_share(threshold.course);
}

} // namespace

LanePaces::LanePaces(plan::Plan const& plan) {
    for (auto const& swimmer : plan.swimmers) {
        if (!swimmer.lane || !swimmer.threshold || *swimmer.lane >= by_lane_.size()) {
            continue;
        }
        auto& slowest = by_lane_[*swimmer.lane];
        if (slowest == nullptr || anywhere(*slowest) < anywhere(*swimmer.threshold)) {
            slowest = &*swimmer.threshold;
        }
    }
}

plan::Threshold const* LanePaces::of(int lane) const {
    return lane > 0 && lane < static_cast<int>(by_lane_.size()) ? by_lane_[static_cast<std::size_t>(lane)]
                                                                : nullptr;
}

std::vector<int> LanePaces::lanes() const {
    std::vector<int> lanes;
    for (int lane = 1; lane < static_cast<int>(by_lane_.size()); ++lane) {
        if (of(lane) != nullptr) {
            lanes.push_back(lane);
        }
    }
    return lanes;
}

plan::Threshold const* pace_of(plan::Plan const& plan, LanePaces const& lanes, plan::Session const& session,
                               int lane) {
    if (auto const* const own = lanes.of(lane)) {
        return own;
    }
    return session.threshold == plan::no_index ? nullptr : &plan.thresholds[session.threshold];
}

} // namespace lengthwise::calc
