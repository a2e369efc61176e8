#include "report/scope_pace.hpp"

#include <tuple>

namespace lengthwise::report {
namespace {

bool same(plan::Threshold const* a, plan::Threshold const* b) {
    auto const what = [](plan::Threshold const& pace) {
        return std::tuple{pace.time, pace.per, pace.per_unit, pace.course, pace.about};
    };
    return a == nullptr || b == nullptr ? a == b : what(*a) == what(*b);
}

} // namespace

ScopePace scope_pace(Summary& summary, int lane) {
    ScopePace result;
    bool first = true;
    plan::Threshold const* before = nullptr;
    auto const weeks = summary.weeks();
    for (auto week = weeks.first; week < weeks.end(); ++week) {
        auto const run = summary.sessions(week);
        for (auto i = run.first; i < run.end(); ++i) {
            auto const* const pace = summary.clock().pacing(i, lane).threshold();
            result.several = result.several || (!first && !same(pace, before));
            before = pace;
            first = false;
        }
    }
    if (before != nullptr && !result.several) {
        result.pace = *before;
    }
    return result;
}

} // namespace lengthwise::report
