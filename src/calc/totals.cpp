#include "calc/totals.hpp"

#include "calc/reps.hpp"

#include <algorithm>

namespace lengthwise::calc {
namespace {

LaneSet lanes_of_item(plan::Item const& item) {
    LaneSet lanes;
    for (int lane = item.first_lane; lane != 0 && lane <= item.last_lane; ++lane) {
        lanes.set(static_cast<std::size_t>(lane));
    }
    return lanes;
}

void add_distances(plan::Plan const& plan, plan::Item const& item, Pool const& pool, std::int64_t rounds,
                   Totals& sum) {
    if (!item.is_ladder()) {
        auto const reps = rounds * item.count;
        sum.distance += item.distance() * reps;
        sum.lengths += lengths_of(item.distance(), pool).value_or(0) * reps;
        return;
    }
    for (plan::Index i = 0; i < item.count; ++i) {
        auto const rung = Distance::units(plan.rungs[item.body + i]);
        sum.distance += rung * rounds;
        sum.lengths += lengths_of(rung, pool).value_or(0) * rounds;
    }
}

/// The terms need a look only where a rep is longer than all before it.
void find_longest(plan::Plan const& plan, plan::Item const& item, Distance& longest) {
    if (!item.is_ladder() && item.distance() <= longest) {
        return;
    }
    each_rep(plan, item, [&](std::int64_t rep, plan::Terms const& terms, std::int64_t) {
        if (Distance::units(rep) > longest) {
            longest = std::max(longest, unbroken(plan, terms, Distance::units(rep)));
        }
    });
}

void add_times(plan::Plan const& plan, plan::Item const& item, std::int64_t rounds, Totals& sum) {
    sum.timed_reps += rounds * item.count;
    each_rep(plan, item, [&](std::int64_t rep, plan::Terms const& terms, std::int64_t times) {
        sum.timed += Duration::ms(rep) * (times * rounds);
        sum.treading_reps += only_treads(plan, terms) ? times * rounds : 0;
    });
}

} // namespace

void Totals::add(Totals const& more, std::int64_t rounds) {
    distance += more.distance * rounds;
    longest = std::max(longest, more.longest);
    lengths += more.lengths * rounds;
    reps += more.reps * rounds;
    timed_reps += more.timed_reps * rounds;
    treading_reps += more.treading_reps * rounds;
    timed += more.timed * rounds;
}

Totals sum(Totals a, Totals const& b) {
    a.add(b);
    return a;
}

std::vector<int> numbers(LaneSet const& lanes) {
    auto const count = lanes.count(); // none in most sessions
    std::vector<int> result;
    for (std::size_t lane = 1; result.size() < count; ++lane) {
        if (lanes.test(lane)) {
            result.push_back(static_cast<int>(lane));
        }
    }
    return result;
}

int lowest(LaneSet const& lanes) {
    std::size_t lane = lanes.none() ? lanes.size() : 1;
    while (lane < lanes.size() && !lanes.test(lane)) {
        ++lane;
    }
    return lane < lanes.size() ? static_cast<int>(lane) : 0;
}

void TotalsMeasure::add(plan::Plan const& plan, plan::Item const& item, Pool const& pool, std::int64_t rounds,
                        Totals& sum) const {
    sum.reps += rounds * item.count;
    if (item.is_timed()) {
        add_times(plan, item, rounds, sum);
    } else {
        add_distances(plan, item, pool, rounds, sum);
        find_longest(plan, item, sum.longest);
    }
}

Totals Sums::swum(int lane) const {
    auto const at = static_cast<std::size_t>(lane);
    return at < labelled_.size() ? sum(everyone_.swum, labelled_[at].swum) : everyone_.swum;
}

Totals Sums::if_time(int lane) const {
    auto const at = static_cast<std::size_t>(lane);
    return at < labelled_.size() ? sum(everyone_.if_time, labelled_[at].if_time) : everyone_.if_time;
}

void Sums::add(Sums const& more) {
    everyone_.swum.add(more.everyone_.swum);
    everyone_.if_time.add(more.everyone_.if_time);
    reach(more.labelled_.size());
    for (std::size_t lane = 0; lane < more.labelled_.size(); ++lane) {
        labelled_[lane].swum.add(more.labelled_[lane].swum);
        labelled_[lane].if_time.add(more.labelled_[lane].if_time);
    }
    lanes_ |= more.lanes_;
    has_lengths_ = has_lengths_ || more.has_lengths_;
}

void Sums::reach(std::size_t lanes) {
    if (labelled_.size() < lanes) {
        labelled_.resize(lanes);
    }
}

Totals Reckoner::of_item(plan::Session const& session, plan::Item const& item) {
    Totals totals;
    walk_.add(item, session.pool, 1, totals);
    return totals;
}

Sums Reckoner::of_section(plan::Session const& session, plan::Section const& section) {
    Sums sums;
    add_section(session, section, sums);
    return sums;
}

Sums Reckoner::of_session(plan::Session const& session) {
    Sums sums;
    add_session(session, sums);
    return sums;
}

Sums Reckoner::of_week(plan::Week const& week) {
    Sums sums;
    add_week(week, sums);
    return sums;
}

Sums Reckoner::of_plan() {
    Sums sums;
    for (auto const& session : plan_.sessions) {
        add_session(session, sums);
    }
    return sums;
}

void Reckoner::add_week(plan::Week const& week, Sums& sums) {
    for (auto i = week.sessions.first; i < week.sessions.end(); ++i) {
        add_session(plan_.sessions[i], sums);
    }
}

void Reckoner::add_session(plan::Session const& session, Sums& sums) {
    for (auto i = session.sections.first; i < session.sections.end(); ++i) {
        add_section(session, plan_.sections[i], sums);
    }
    sums.has_lengths_ = sums.has_lengths_ || plan_.pool_of(session).has_length();
}

void Reckoner::add_section(plan::Session const& session, plan::Section const& section, Sums& sums) {
    for (plan::Item const& item : items_from(plan_, section.body)) {
        if (!item.is_swum()) {
            continue;
        }
        if (!item.has_lanes()) {
            walk_.add(item, session.pool, 1, sums.everyone_.of(item.optional));
            continue;
        }
        auto const totals = of_item(session, item);
        sums.lanes_ |= lanes_of_item(item);
        sums.reach(std::size_t{item.last_lane} + 1);
        for (std::size_t lane = item.first_lane; lane <= item.last_lane; ++lane) {
            sums.labelled_[lane].of(item.optional).add(totals);
        }
    }
    sums.has_lengths_ = sums.has_lengths_ || plan_.pool_of(session).has_length();
}

LaneSet lanes_of(plan::Plan const& plan, plan::Session const& session) {
    LaneSet lanes;
    for (auto i = session.sections.first; i < session.sections.end(); ++i) {
        for (plan::Item const& item : items_from(plan, plan.sections[i].body)) {
            lanes |= lanes_of_item(item);
        }
    }
    return lanes;
}

LaneSet lanes_of(plan::Plan const& plan, plan::Week const& week) {
    LaneSet lanes;
    for (auto i = week.sessions.first; i < week.sessions.end(); ++i) {
        lanes |= lanes_of(plan, plan.sessions[i]);
    }
    return lanes;
}

LaneSet lanes_of(plan::Plan const& plan) {
    LaneSet lanes;
    for (auto const& session : plan.sessions) {
        lanes |= lanes_of(plan, session);
    }
    return lanes;
}

} // namespace lengthwise::calc
