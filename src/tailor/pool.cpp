#include "tailor/pool.hpp"

#include "tailor/fitter.hpp"

#include <utility>

namespace lengthwise::tailor {
namespace {

using plan::Index;
using plan::Plan;

/// Takes every other session out.
void leave_alone(Plan& plan, Index session) {
    auto chosen = plan.sessions[session];
    auto week = plan.weeks[chosen.week];
    week.sessions = {0, 1};
    week.said_from = week.number.has_value() && week.from.has_value();
    chosen.week = 0;
    plan.weeks = {week};
    plan.sessions = {chosen};
}

/// A copy of settings that can be changed.
plan::Settings& own_settings(Plan& plan, Index& index) {
    plan.settings.push_back(plan.settings[index]);
    index = static_cast<Index>(plan.settings.size() - 1);
    return plan.settings.back();
}

/// A threshold of the session was fixed in the pool it had. Without a pool its course is
/// unknown, which only a place without one can say: it goes up to the file.
void keep_threshold(Plan& plan) {
    auto& session = plan.sessions.front();
    auto& threshold = plan.settings[session.settings].threshold;
    if (!threshold) {
        return;
    }
    threshold->said_per = true;
    threshold->said_in = threshold->course.kind != Pool::Kind::unsaid;
    if (!threshold->said_in) {
        auto const moved = *std::exchange(threshold, std::nullopt);
        own_settings(plan, plan.weeks.front().settings).threshold.reset();
        own_settings(plan, plan.file_settings).threshold = moved;
    }
}

void move_to(Plan& plan, Pool const& pool) {
    auto& session = plan.sessions.front();
    own_settings(plan, session.settings).pool = pool;
    keep_threshold(plan);
    session.pool = static_cast<Index>(plan.pools.size());
    plan.pools.push_back(pool);
}

} // namespace

Tailored fit(Plan const& plan, Index session, Wanted const& wanted) {
    Tailored result{plan, {}, wanted.percent, {}};
    auto const from = plan.pool_of(plan.sessions[session]);
    Fit const fit{from, wanted.pool.value_or(from), wanted.percent,
                  plan.race ? plan.race->distance : Distance{}};
    leave_alone(result.plan, session);
    if (!fit.idle()) {
        if (fit.to != fit.from) {
            move_to(result.plan, fit.to);
        }
        Changes changes;
        Fitter fitter{result.plan, changes};
        fitter.session(result.session(), fit);
        fitter.keep_used_sets();
        result.changed = std::move(changes.changed);
        result.timed = std::move(changes.timed);
    }
    return result;
}

} // namespace lengthwise::tailor
