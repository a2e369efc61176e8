#include "calc/fits.hpp"

#include "calc/timeline.hpp"
#include "calc/totals.hpp"

#include <algorithm>

namespace lengthwise::calc {
namespace {

constexpr int fastest = 30; // seconds for 100
constexpr int slowest = 600;

plan::Threshold assumed(plan::Plan const& plan, plan::Session const& session, int seconds) {
    auto const& pool = plan.pool_of(session);
    plan::Threshold threshold;
    threshold.time = Duration::seconds(seconds);
    threshold.per = one(pool.unit) * 100;
    threshold.per_unit = pool.unit;
    threshold.course = pool;
    return threshold;
}

/// The longest of its lanes at this threshold. Unknown where it is too fast for a `threshold minus`.
std::optional<Duration> longest(plan::Plan const& plan, plan::Index session, int seconds) {
    auto const threshold = assumed(plan, plan.sessions[session], seconds);
    Clock clock{plan, &threshold};
    auto lanes = numbers(lanes_of(plan, plan.sessions[session]));
    if (lanes.empty()) {
        lanes.push_back(0);
    }
    Duration longest;
    for (int const lane : lanes) {
        auto const time = clock.session(session, lane).total();
        if (!time) {
            return std::nullopt;
        }
        longest = std::max(longest, time->high);
    }
    return longest;
}

} // namespace

/// Slower paces take longer, so the paces that fit end at one.
std::optional<Duration> slowest_fitting(plan::Plan const& plan, plan::Index session, Duration slot) {
    int fits = fastest - 1;
    int too_slow = slowest + 1;
    while (too_slow - fits > 1) {
        auto const seconds = (fits + too_slow) / 2;
        auto const time = longest(plan, session, seconds);
        (!time || *time <= slot ? fits : too_slow) = seconds;
    }
    return fits >= fastest && longest(plan, session, fits) ? std::optional{Duration::seconds(fits)}
                                                           : std::nullopt;
}

} // namespace lengthwise::calc
