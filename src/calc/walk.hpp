#pragma once

#include "plan/plan.hpp"

#include <cstdint>
#include <unordered_map>
#include <utility>

namespace lengthwise::calc {

/// Adds up something over the tree without unrolling it: rounds multiply, and what
/// several places share is added up once for each pool. Recursion goes no deeper
/// than the notation nests (32).
///
/// `Measure` has a type `Sum` with `void add(Sum const&, std::int64_t rounds)`, and
/// `void add(Plan const&, Item const& leaf, Pool const&, std::int64_t rounds, Sum&)`
/// that adds the reps of one leaf, `rounds` times.
template <typename Measure>
class Walk {
  public:
    using Sum = typename Measure::Sum;

    explicit Walk(plan::Plan const& plan, Measure measure = {}) : plan_(plan), measure_(std::move(measure)) {}

    /// Adds `rounds` times what is inside `item`, swum in Plan::pools[pool].
    void add(plan::Item const& item, plan::Index pool, std::int64_t rounds, Sum& sum) {
        if (item.is_leaf()) {
            measure_.add(plan_, item, plan_.pools[pool], rounds, sum);
        } else if (item.is_swum()) {
            add_rounds(item, pool, rounds, sum);
        }
    }

  private:
    void add_rounds(plan::Item const& item, plan::Index pool, std::int64_t rounds, Sum& sum) {
        auto const& selections = plan_.terms[item.terms].selections;
        std::int64_t left = item.count;
        for (auto i = selections.first; i < selections.end(); ++i) {
            auto const& selection = plan_.selections[i];
            add_body(item, selection.body, pool, rounds * selection.count, sum);
            left -= selection.count;
        }
        if (left > 0) {
            add_body(item, item.body, pool, rounds * left, sum);
        }
    }

    /// A group's own items follow it and are reached from nowhere else; any other
    /// body may be reached on many ways and is remembered.
    void add_body(plan::Item const& item, plan::Index body, plan::Index pool, std::int64_t rounds, Sum& sum) {
        if (body == index_of(item) + 1) {
            add_items(item, body, pool, rounds, sum);
            return;
        }
        auto const key = std::uint64_t{pool} << 32U | body;
        if (auto const found = shared_.find(key); found != shared_.end()) {
            sum.add(found->second, rounds);
            return;
        }
        Sum once{};
        add_items(item, body, pool, 1, once);
        sum.add(once, rounds);
        shared_.emplace(key, std::move(once));
    }

    void add_items(plan::Item const& item, plan::Index body, plan::Index pool, std::int64_t rounds,
                   Sum& sum) {
        if (item.kind == plan::Item::Kind::use) {
            add(plan_.items[body], pool, rounds, sum);
            return;
        }
        for (plan::Item const& inner : items_from(plan_, body)) {
            add(inner, pool, rounds, sum);
        }
    }

    [[nodiscard]] plan::Index index_of(plan::Item const& item) const {
        return static_cast<plan::Index>(&item - plan_.items.data());
    }

    plan::Plan const& plan_;
    Measure measure_;
    std::unordered_map<std::uint64_t, Sum> shared_; ///< by pool and body
};

} // namespace lengthwise::calc
