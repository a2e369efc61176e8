#include "report/summary.hpp"

#include <algorithm>
#include <map>
#include <utility>

namespace lengthwise::report {
namespace {

void put_first(std::vector<PoolLengths>& pools, std::optional<Pool> const& of_file) {
    auto const usual = std::find_if(pools.begin(), pools.end(),
                                    [&](PoolLengths const& p) { return of_file && p.pool == *of_file; });
    auto const most = std::max_element(pools.begin(), pools.end(),
                                       [](auto const& a, auto const& b) { return a.lengths < b.lengths; });
    if (auto const first = usual != pools.end() ? usual : most; first != pools.end()) {
        std::rotate(pools.begin(), first, first + 1);
    }
}

} // namespace

Figures figures_of(calc::Totals const& totals) {
    Figures figures{totals, std::nullopt, std::nullopt};
    if (totals.reps == 0) {
        figures.time = Band<Duration>{};
    }
    if (totals.timed_reps == totals.treading_reps) {
        figures.estimated = Distance{};
    }
    return figures;
}

Tally::Tally(calc::Sums sums, calc::LaneSet lanes) : sums_(std::move(sums)), lanes_(lanes) {}

void Tally::add(Tally const& more) {
    sums_.add(more.sums_);
    lanes_ |= more.lanes_;
}

Figures Tally::swum(int lane) const {
    return figures_of(sums_.swum(lane));
}

Figures Tally::if_time(int lane) const {
    return figures_of(sums_.if_time(lane));
}

Summary::Summary(plan::Plan const& plan, Scope scope, std::optional<int> lane)
    : plan_(plan), scope_(scope), lane_(lane), reckoner_(plan) {}

plan::Run Summary::weeks() const {
    switch (scope_.kind) {
    case Scope::Kind::week:
        return {scope_.index, 1};
    case Scope::Kind::session:
        return {plan_.sessions[scope_.index].week, 1};
    case Scope::Kind::plan:
        break;
    }
    return {0, static_cast<plan::Index>(plan_.weeks.size())};
}

plan::Run Summary::sessions(plan::Index week) const {
    return scope_.kind == Scope::Kind::session ? plan::Run{scope_.index, 1} : plan_.weeks[week].sessions;
}

Tally Summary::tally(calc::Sums sums) const {
    auto lanes = sums.lanes();
    if (lane_) {
        lanes.reset();
        lanes.set(static_cast<std::size_t>(*lane_));
    }
    return {std::move(sums), lanes};
}

Tally Summary::whole() {
    calc::Sums sums;
    each_session([&](plan::Index session) { reckoner_.add_session(plan_.sessions[session], sums); });
    return tally(std::move(sums));
}

Tally Summary::week(plan::Index week) {
    calc::Sums sums;
    auto const run = sessions(week);
    for (auto session = run.first; session < run.end(); ++session) {
        reckoner_.add_session(plan_.sessions[session], sums);
    }
    return tally(std::move(sums));
}

Tally Summary::session(plan::Index session) {
    return tally(reckoner_.of_session(plan_.sessions[session]));
}

Tally Summary::section(plan::Index session, plan::Index section, calc::LaneSet const& lanes) {
    return {reckoner_.of_section(plan_.sessions[session], plan_.sections[section]), lanes};
}

calc::Breakdown Summary::by(calc::By by, int lane) const {
    calc::Breakdown breakdown;
    calc::BreakdownReader reader{plan_, by, lane};
    each_session([&](plan::Index session) { reader.add_session(plan_.sessions[session], breakdown); });
    return breakdown;
}

Unit Summary::unit(plan::Index session) const {
    return plan_.pool_of(plan_.sessions[session]).unit;
}

Unit Summary::unit() const {
    bool yards = false;
    bool metres = false;
    each_session([&](plan::Index session) { (unit(session) == Unit::yard ? yards : metres) = true; });
    return yards && !metres ? Unit::yard : Unit::metre;
}

bool Summary::has_several_pools() const {
    std::optional<Pool> first;
    bool several = false;
    each_session([&](plan::Index session) {
        auto const& pool = plan_.pool_of(plan_.sessions[session]);
        several = several || (first && pool != *first);
        first = pool;
    });
    return several;
}

std::vector<PoolLengths> Summary::pools(int lane) {
    std::map<std::pair<Distance, Unit>, std::int64_t> by_pool;
    each_session([&](plan::Index session) {
        auto const& pool = plan_.pool_of(plan_.sessions[session]);
        if (pool.has_length()) {
            by_pool[{pool.length, pool.unit}] +=
                reckoner_.of_session(plan_.sessions[session]).swum(lane).lengths;
        }
    });
    std::vector<PoolLengths> pools;
    for (auto const& [pool, lengths] : by_pool) {
        pools.push_back({Pool::of(pool.first, pool.second), lengths});
    }
    put_first(pools, plan_.settings[plan_.file_settings].pool);
    return pools;
}

} // namespace lengthwise::report
