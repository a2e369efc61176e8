#include "report/swimmer_figures.hpp"

#include "plan/pace_of.hpp"
#include "tailor/swimmer.hpp"

#include <fmt/core.h>

#include <algorithm>
#include <tuple>

namespace lengthwise::report {
namespace {

bool swims_in(plan::Swimmer const& swimmer, std::optional<int> lane) {
    return !lane || !swimmer.lane || *swimmer.lane == *lane;
}

bool same_pace(plan::Threshold const* a, plan::Threshold const* b) {
    auto const what = [](plan::Threshold const& pace) {
        return std::tuple{pace.time, pace.per, pace.per_unit, pace.course, pace.about};
    };
    return a == nullptr || b == nullptr ? a == b : what(*a) == what(*b);
}

void find_pace(plan::Plan const& own, Summary const& summary, SwimmerFigures& figures) {
    plan::LanePaces const lanes{own};
    bool first = true;
    plan::Threshold const* before = nullptr;
    auto const weeks = summary.weeks();
    for (auto week = weeks.first; week < weeks.end(); ++week) {
        auto const run = summary.sessions(week);
        for (auto i = run.first; i < run.end(); ++i) {
            auto const* const pace = plan::pace_of(own, lanes, own.sessions[i], figures.lane);
            figures.several_paces = figures.several_paces || (!first && !same_pace(pace, before));
            before = pace;
            first = false;
        }
    }
    if (before != nullptr && !figures.several_paces) {
        figures.pace = *before;
    }
}

SwimmerFigures figures_of(plan::Plan const& plan, plan::Index index, Scope scope, std::optional<int> lane) {
    auto const& swimmer = plan.swimmers[index];
    auto const own = tailor::swum_by(plan, index);
    auto const his = swimmer.lane ? std::optional{int{*swimmer.lane}} : lane;
    Summary summary{own, scope, his};
    auto const whole = summary.whole();
    SwimmerFigures result{.swimmer = &swimmer,
                          .lane = whole.lane(),
                          .figures = whole.swum(whole.lane()),
                          .has_lengths = whole.has_lengths(),
                          .has_lanes = whole.has_lane_lines()};
    find_pace(own, summary, result);
    return result;
}

} // namespace

std::vector<SwimmerFigures> swimmer_figures(plan::Plan const& plan, Scope scope, std::optional<int> lane,
                                            plan::Swimmer const* only) {
    std::vector<SwimmerFigures> all;
    for (plan::Index i = 0; i < plan.swimmers.size(); ++i) {
        auto const& swimmer = plan.swimmers[i];
        if (only != nullptr ? only == &swimmer : swims_in(swimmer, lane)) {
            all.push_back(figures_of(plan, i, scope, lane));
        }
    }
    return all;
}

std::string no_swimmers(plan::Plan const& plan, std::optional<int> lane) {
    if (plan.swimmers.empty()) {
        return "the plan names no swimmer; at its head: swimmer \"Ann\" threshold 1:55";
    }
    bool const any =
        std::ranges::any_of(plan.swimmers, [&](auto const& swimmer) { return swims_in(swimmer, lane); });
    return any ? std::string{} : fmt::format("no swimmer swims in lane {}", lane.value_or(0));
}

} // namespace lengthwise::report
