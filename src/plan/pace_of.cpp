#include "plan/pace_of.hpp"

#include "units/pace.hpp"

namespace lengthwise::plan {
namespace {

/// A time is below 2^27 ms (24 h), the distance it is for below 2^48 units, the terms of a share of a
/// length below 2^25 and of a course ratio below 2^50: products of these three stay below 2^126.
__extension__ typedef __int128 Wide;

/// Which needs more time for a distance where every pool is alike: T / P / K(course).
bool slower(Threshold const& a, Threshold const& b) {
    auto const share_a = swum_share(a.course);
    auto const share_b = swum_share(b.course);
    return Wide{a.time.ms()} * share_a.denominator * b.per.units() * share_b.numerator >
           Wide{b.time.ms()} * share_b.denominator * a.per.units() * share_a.numerator;
}

} // namespace

LanePaces::LanePaces(Plan const& plan) {
    for (auto const& swimmer : plan.swimmers) {
        if (!swimmer.lane || !swimmer.threshold || *swimmer.lane >= by_lane_.size()) {
            continue;
        }
        auto& slowest = by_lane_[*swimmer.lane];
        if (slowest == nullptr || slower(*swimmer.threshold, *slowest)) {
            slowest = &*swimmer.threshold;
        }
    }
    for (int lane = 1; lane < static_cast<int>(by_lane_.size()); ++lane) {
        if (of(lane) != nullptr) {
            lanes_.push_back(lane);
        }
    }
}

Threshold const* LanePaces::of(int lane) const {
    return lane > 0 && lane < static_cast<int>(by_lane_.size()) ? by_lane_[static_cast<std::size_t>(lane)]
                                                                : nullptr;
}

Threshold const* pace_of(Plan const& plan, LanePaces const& lanes, Session const& session, int lane) {
    if (auto const* const own = lanes.of(lane)) {
        return own;
    }
    return session.threshold == no_index ? nullptr : &plan.thresholds[session.threshold];
}

bool takes_all(Threshold const& threshold, Pool const& pool, Duration minus) {
    auto const ratio = course_ratio(pool, threshold.course);
    auto const hundred = (one(pool.unit) * 100).units();
    return Wide{threshold.time.ms()} * ratio.numerator * hundred <=
           Wide{minus.ms()} * threshold.per.units() * ratio.denominator;
}

} // namespace lengthwise::plan
