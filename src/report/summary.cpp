#include "report/summary.hpp"

#include "calc/work_by.hpp"

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

calc::LaneSet only(int lane) {
    calc::LaneSet lanes;
    lanes.set(static_cast<std::size_t>(lane));
    return lanes;
}

/// What is not known of a word is not known from the start.
calc::Times as_times(calc::WordTime const& word) {
    calc::Times times;
    times.time = word.swimming;
    times.swimming = word.swimming;
    times.estimated = word.estimated;
    times.untimed = word.known ? plan::no_index : 0;
    times.unmeasured = word.measured ? plan::no_index : 0;
    return times;
}

} // namespace

Tally::Tally(calc::Sums sums, calc::LaneTimes times, calc::LaneSet lanes)
    : sums_(std::move(sums)), times_(std::move(times)), lanes_(lanes) {}

void Tally::add(Tally const& more) {
    sums_.add(more.sums_);
    times_.add(more.times_);
    lanes_ |= more.lanes_;
}

Figures Tally::swum(int lane) const {
    return {sums_.swum(lane), times_.of(lane).swum};
}

Figures Tally::if_time(int lane) const {
    return {sums_.if_time(lane), times_.of(lane).if_time};
}

Summary::Summary(plan::Plan const& plan, Scope scope, std::optional<int> lane)
    : plan_(plan), scope_(scope), lane_(lane), reckoner_(plan), clock_(plan, lane), kit_(plan) {}

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

void Summary::read(plan::Index index) {
    if (read_ == index) {
        return;
    }
    read_ = index;
    sections_.clear();
    auto const& session = plan_.sessions[index];
    calc::LaneSet named;
    sums_.clear();
    for (auto i = session.sections.first; i < session.sections.end(); ++i) {
        sums_.push_back(reckoner_.of_section(session, plan_.sections[i]));
        named |= sums_.back().lanes();
    }
    auto const lanes = lane_ ? only(*lane_) : named;
    auto const& times = clock_.sections(index, named);
    session_ = {sums_.empty() ? reckoner_.of_session(session) : calc::Sums{}, {}, lanes};
    for (std::size_t i = 0; i < sums_.size(); ++i) {
        sections_.emplace_back(std::move(sums_[i]), times[i], lanes);
        session_.add(sections_.back());
    }
}

Tally Summary::whole() {
    Tally sum;
    each_session([&](plan::Index session) { sum.add(this->session(session)); });
    return sum;
}

Tally Summary::week(plan::Index week) {
    Tally sum;
    auto const run = sessions(week);
    for (auto session = run.first; session < run.end(); ++session) {
        sum.add(this->session(session));
    }
    return sum;
}

Tally const& Summary::session(plan::Index session) {
    read(session);
    return session_;
}

std::vector<Tally> const& Summary::sections(plan::Index session) {
    read(session);
    return sections_;
}

/// Both readers find the same words, as both look at the same reps.
std::vector<WordFigures> Summary::by(calc::By by, int lane) {
    if (by == calc::By::section) {
        return by_section(lane);
    }
    calc::Breakdown totals;
    calc::WordTimes times;
    calc::BreakdownReader totals_of{plan_, by, lane};
    calc::WorkReader times_of{plan_, by, lane};
    each_session([&](plan::Index session) {
        totals_of.add_session(plan_.sessions[session], totals);
        times_of.add_session(plan_.sessions[session], times);
    });
    std::vector<WordFigures> words;
    for (auto const& word : totals.words) {
        words.push_back({word.key, {word.totals, as_times(times.of(word.key))}});
    }
    return words;
}

std::vector<WordFigures> Summary::by_section(int lane) {
    std::map<std::uint32_t, Figures> by_kind;
    each_session([&](plan::Index session) {
        auto section = plan_.sessions[session].sections.first;
        for (auto const& tally : sections(session)) {
            auto const swum = tally.swum(lane);
            if (swum.totals.reps > 0) {
                auto& sum = by_kind[static_cast<std::uint32_t>(plan_.sections[section].kind)];
                sum.totals.add(swum.totals);
                sum.times.add(swum.times);
            }
            ++section;
        }
    });
    std::vector<WordFigures> words;
    for (auto const& [key, figures] : by_kind) {
        words.push_back({key, figures});
    }
    return words;
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
