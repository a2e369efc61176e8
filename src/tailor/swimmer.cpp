#include "tailor/swimmer.hpp"

#include "plan/pace_of.hpp"
#include "tailor/amounts.hpp"
#include "tailor/fitter.hpp"

namespace lengthwise::tailor {
namespace {

using plan::Index;
using plan::Plan;

constexpr std::uint32_t all = 100;

Distance race_of(Plan const& plan) {
    return plan.race ? plan.race->distance : Distance{};
}

/// What the group swims today is made of reps too; a week is no rep of race distance.
void fit_before(Plan& plan, std::uint32_t percent) {
    if (!plan.before) {
        return;
    }
    auto const pool = plan.settings[plan.file_settings].pool.value_or(Pool{});
    auto& before = *plan.before;
    before.longest = rep(before.longest, {pool, pool, percent, race_of(plan)});
    if (before.week) {
        before.week = rep(*before.week, {pool, pool, percent, Distance{}});
    }
}

/// The pace of a swimmer: his own, else that of his lane.
std::optional<plan::Threshold> pace_of(Plan const& plan, plan::Swimmer const& swimmer) {
    if (swimmer.threshold || !swimmer.lane) {
        return swimmer.threshold;
    }
    auto const* const lane = plan::LanePaces{plan}.of(*swimmer.lane);
    return lane == nullptr ? std::nullopt : std::optional{*lane};
}

/// Leaves one swimmer of `whole` in a plan that was made of it.
void leave_alone(Plan& plan, Plan const& whole, Index index) {
    auto swimmer = whole.swimmers[index];
    swimmer.threshold = pace_of(whole, swimmer);
    swimmer.share.reset();
    plan.swimmers = {swimmer};
    if (!swimmer.threshold) {
        return;
    }
    auto const place = static_cast<Index>(plan.thresholds.size());
    plan.thresholds.push_back(*swimmer.threshold);
    for (auto& session : plan.sessions) {
        session.threshold = place;
    }
}

} // namespace

Plan share_of(Plan const& plan, std::uint32_t percent) {
    auto result = plan;
    if (percent == all) {
        return result;
    }
    Changes changes;
    Fitter fitter{result, changes};
    for (auto const& session : plan.sessions) {
        auto const& pool = plan.pool_of(session);
        fitter.session(session, {pool, pool, percent, race_of(plan)});
    }
    fit_before(result, percent);
    return result;
}

Plan swum_by(Plan const& plan, Index swimmer) {
    auto result = share_of(plan, plan.swimmers[swimmer].share.value_or(all));
    leave_alone(result, plan, swimmer);
    return result;
}

Tailored fit(Plan const& plan, Index session, Index swimmer, std::optional<Pool> const& pool) {
    auto const percent = plan.swimmers[swimmer].share.value_or(all);
    auto result = fit(plan, session, {.pool = pool, .percent = percent});
    leave_alone(result.plan, plan, swimmer);
    return result;
}

} // namespace lengthwise::tailor
