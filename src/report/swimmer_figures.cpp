#include "report/swimmer_figures.hpp"

#include "report/scope_pace.hpp"
#include "tailor/swimmer.hpp"

#include <fmt/core.h>

#include <algorithm>

namespace lengthwise::report {
namespace {

bool swims_in(plan::Swimmer const& swimmer, std::optional<int> lane) {
    return !lane || !swimmer.lane || *swimmer.lane == *lane;
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
    auto const pace = scope_pace(summary, result.lane);
    result.pace = pace.pace;
    result.several_paces = pace.several;
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
