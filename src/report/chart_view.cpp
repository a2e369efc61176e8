#include "report/chart_view.hpp"

#include "calc/growth.hpp"
#include "calc/totals.hpp"
#include "check/progress.hpp"
#include "report/choose.hpp"
#include "report/choose_swimmer.hpp"
#include "report/tally_parts.hpp"

#include <algorithm>
#include <array>

namespace lengthwise::report {
namespace {

constexpr std::int64_t recovery_percent = 80; // common practice, no published source

/// The highest volume of the weeks behind each one; 0 behind the last.
std::vector<Distance> highest_to_come(std::vector<ChartWeek> const& weeks) {
    std::vector<Distance> highest(weeks.size());
    for (auto i = weeks.size(); i-- > 1;) {
        highest[i - 1] = std::max(highest[i], weeks[i].volume.value_or(Distance{}));
    }
    return highest;
}

void mark_recovery(std::vector<ChartWeek>& weeks) {
    auto const to_come = highest_to_come(weeks);
    Distance highest;
    for (std::size_t i = 0; i < weeks.size(); ++i) {
        auto const volume = weeks[i].volume.value_or(Distance{});
        if (weeks[i].kind == ChartWeek::Kind::build && volume * 100 <= highest * recovery_percent &&
            to_come[i] > volume) {
            weeks[i].kind = ChartWeek::Kind::recovery;
        }
        highest = std::max(highest, volume);
    }
}

/// The last weeks before the race, as many as are eased, as long as the rule `taper` would find nothing in
/// them. `weeks` ends with one for each of `swum`.
void mark_taper(std::vector<ChartWeek>& weeks, plan::Plan const& plan,
                std::vector<check::SwumWeek> const& swum, int lane) {
    auto const limit = check::file_limit(plan, "taper");
    auto const percent = limit ? limit->low : calc::usual::taper;
    auto left = std::min(calc::taper_weeks(plan.race->distance, swum.size()), swum.size());
    for (auto i = swum.size(); i-- > 1 && left > 0; --left) {
        auto& week = weeks[weeks.size() - swum.size() + i];
        if (!check::near_race(plan, *swum[i].week) ||
            week.volume > check::eased(swum, swum[i], lane, percent).top) {
            return;
        }
        week.kind = ChartWeek::Kind::taper;
    }
}

Pool pool_of(plan::Plan const& plan) {
    return plan.sessions.empty() ? Pool{} : plan.pool_of(plan.sessions.front());
}

std::vector<std::string> title_of(plan::Plan const& plan, ChartOptions const& options, int lane) {
    std::vector<std::string> title{plan_label(plan)};
    if (options.swimmer != nullptr) {
        title.push_back(swimmer_label(*options.swimmer));
    }
    if (lane != 0) {
        title.push_back("lane " + std::to_string(lane));
    }
    return title;
}

} // namespace

Chart chart_view(plan::Plan const& plan, ChartOptions const& options) {
    auto const lane = options.lane.value_or(calc::lowest(calc::lanes_of(plan)));
    auto const pool = pool_of(plan);
    Chart chart{title_of(plan, options, lane), {}, plan.race, pool.unit, pool.length};
    if (plan.before) {
        chart.weeks.push_back({ChartWeek::Kind::before, "before", plan.before->longest, plan.before->week});
    }
    calc::Reckoner sums{plan};
    auto const swum = check::swum_weeks(plan, sums);
    for (auto const& week : swum) {
        auto const totals = week.sums.swum(lane);
        chart.weeks.push_back(
            {ChartWeek::Kind::build, week_label(*week.week), totals.longest, totals.distance});
    }
    if (plan.race) {
        mark_taper(chart.weeks, plan, swum, lane);
    }
    mark_recovery(chart.weeks);
    return chart;
}

std::string word_of(ChartWeek::Kind kind) {
    using Kind = ChartWeek::Kind;
    return kind == Kind::recovery ? "recovery" : kind == Kind::taper ? "taper" : "";
}

Distance mark_for(Distance most, Distance unit, std::int64_t room) {
    constexpr std::array<std::int64_t, 4> steps{1, 2, 4, 5};
    for (std::int64_t ten = 1;; ten *= 10) {
        for (auto const step : steps) {
            auto const mark = unit * (ten * step);
            if (Distance::ceiling(most, mark) <= room) {
                return mark;
            }
        }
    }
}

} // namespace lengthwise::report
