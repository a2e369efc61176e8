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

/// What its slowest lane takes, high. Unknown where the pace is too fast for a `threshold minus`.
std::optional<Duration> longest(plan::Plan const& plan, Clock& clock, plan::Index session) {
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

enum class Fit : std::uint8_t { fits, too_slow, too_fast };

struct Wanted {
    plan::Index session = 0;
    Duration slot;
};

Fit fit(plan::Plan const& plan, std::vector<Wanted> const& wanted, int seconds) {
    auto const threshold = assumed(plan, plan.sessions[wanted.front().session], seconds);
    Clock clock{plan, &threshold};
    auto fit = Fit::fits;
    for (auto const& [session, slot] : wanted) {
        auto const time = longest(plan, clock, session);
        if (time && *time > slot) {
            return Fit::too_slow;
        }
        fit = time ? fit : Fit::too_fast;
    }
    return fit;
}

/// Slower paces take longer, so the paces that fit end at one.
std::optional<Duration> slowest_fitting(plan::Plan const& plan, std::vector<Wanted> const& wanted) {
    int fits = fastest - 1;
    int too_slow = slowest + 1;
    while (too_slow - fits > 1) {
        auto const seconds = (fits + too_slow) / 2;
        (fit(plan, wanted, seconds) == Fit::too_slow ? too_slow : fits) = seconds;
    }
    return fits >= fastest && fit(plan, wanted, fits) == Fit::fits ? std::optional{Duration::seconds(fits)}
                                                                   : std::nullopt;
}

} // namespace

std::optional<Duration> slowest_fitting(plan::Plan const& plan, plan::Index session, Duration slot) {
    return slowest_fitting(plan, std::vector<Wanted>{{session, slot}});
}

std::optional<Duration> slowest_fitting(plan::Plan const& plan, std::vector<plan::Index> const& sessions) {
    std::vector<Wanted> wanted;
    for (auto const session : sessions) {
        wanted.push_back({session, plan.sessions[session].slot().value_or(Duration{})});
    }
    return slowest_fitting(plan, wanted);
}

} // namespace lengthwise::calc
