#include "calc/lane_swimmers.hpp"

#include "calc/reps.hpp"

#include <algorithm>
#include <set>

namespace lengthwise::calc {
namespace {

constexpr int most_items = 1000; ///< nobody swims that in a line; a file may say it in many

/// Goes into groups, sets and the variants of rounds, once each.
class LineReader {
  public:
    explicit LineReader(plan::Plan const& plan) : plan_(plan) {}

    void read(plan::Index index) {
        auto const& item = plan_.items[index];
        if (++items_ > most_items) {
            return;
        }
        if (item.is_leaf()) {
            auto const reps = lane_reps(plan_, index);
            reps_.insert(reps_.end(), reps.begin(), reps.end());
        } else if (item.is_swum()) {
            body(item, item.body);
            auto const run = plan_.terms[item.terms].selections;
            for (auto i = run.first; i < run.end(); ++i) {
                body(item, plan_.selections[i].body);
            }
        }
    }

    [[nodiscard]] std::vector<LaneRep> take() { return std::move(reps_); }

  private:
    void body(plan::Item const& item, plan::Index first) {
        if (first == plan::no_index || !seen_.insert(first).second) {
            return;
        }
        if (item.kind == plan::Item::Kind::use) {
            read(first);
            return;
        }
        auto const items = items_from(plan_, first);
        for (auto at = items.begin(); at != items.end(); ++at) {
            read(at.index());
        }
    }

    plan::Plan const& plan_;
    std::set<plan::Index> seen_;
    int items_ = 0;
    std::vector<LaneRep> reps_;
};

} // namespace

std::vector<plan::Index> lane_order(plan::Plan const& plan, int lane, Pool const& pool) {
    struct Place {
        plan::Index swimmer;
        Exact rate;
    };
    Factors const factors;
    std::vector<Place> places;
    for (plan::Index i = 0; i < plan.swimmers.size(); ++i) {
        auto const& swimmer = plan.swimmers[i];
        if (swimmer.lane && *swimmer.lane == lane && swimmer.threshold) {
            places.push_back({i, Pacing{&*swimmer.threshold, pool, factors}.rate()});
        }
    }
    std::ranges::stable_sort(places, [](Place const& a, Place const& b) { return a.rate < b.rate; });
    std::vector<plan::Index> order;
    for (auto const& place : places) {
        order.push_back(place.swimmer);
    }
    return order;
}

std::vector<LaneRep> lane_reps(plan::Plan const& plan, plan::Index leaf) {
    std::vector<LaneRep> reps;
    auto const& item = plan.items[leaf];
    if (item.is_timed()) {
        return reps;
    }
    each_rep(plan, item, [&](std::int64_t amount, plan::Terms const& terms, std::int64_t) {
        LaneRep const rep{leaf, static_cast<plan::Index>(&terms - plan.terms.data()),
                          Distance::units(amount)};
        bool const known =
            !reps.empty() && reps.back().distance == rep.distance && reps.back().terms == rep.terms;
        if (terms.broken.piece == 0 && !known) {
            reps.push_back(rep);
        }
    });
    return reps;
}

std::vector<LaneRep> lane_reps_of_line(plan::Plan const& plan, plan::Index line) {
    LineReader reader{plan};
    reader.read(line);
    return reader.take();
}

std::optional<LaneSwim> swim_of(plan::Plan const& plan, Pacing const& around, plan::Swimmer const& swimmer,
                                LaneRep const& rep) {
    Pacing const own{&*swimmer.threshold, around.pool(), around.factors()};
    auto const time = rep_time(plan, own, plan.terms[rep.terms], rep.distance.units(), false);
    if (!time.timed || time.swim.expected.ms() <= 0) {
        return std::nullopt;
    }
    auto const share = rep.distance.units() * swimmer.share.value_or(100) / 100;
    return LaneSwim{Exact{time.swim.expected.ms(), rep.distance.units()}, Distance::units(share)};
}

} // namespace lengthwise::calc
