#pragma once

#include "plan/plan.hpp"
#include "units/distance.hpp"
#include "units/pool.hpp"

#include <cstdint>
#include <optional>
#include <vector>

/// One rep: what it is worth, and the reps of an item one kind at a time.
namespace lengthwise::calc {

/// Lengths of one rep: distance over pool, rounded up; nothing without a pool length.
[[nodiscard]] constexpr std::optional<std::int64_t> lengths_of(Distance rep, Pool const& pool) {
    return pool.has_length() ? std::optional{Distance::ceiling(rep, pool.length)} : std::nullopt;
}

/// Swum as a race is swum: in swim mode, with at most snorkel and wetsuit, without
/// stops, and so in every part of a split.
[[nodiscard]] bool qualifies(plan::Plan const& plan, plan::Terms const& terms);

/// What a rep of this distance counts for as the longest: itself, its longest piece
/// when broken, 0 when it does not qualify.
[[nodiscard]] Distance unbroken(plan::Plan const& plan, plan::Terms const& terms, Distance rep);

/// True for a timed rep that does nothing but tread.
[[nodiscard]] bool only_treads(plan::Plan const& plan, plan::Terms const& terms);

/// For each rep of a ladder the Plan::terms it is swum with: the item's, or its selector's.
[[nodiscard]] std::vector<plan::Index> terms_of_rungs(plan::Plan const& plan, plan::Item const& item);

/// Calls `visit(amount, terms, times)` for the reps of a leaf: equal reps of a count
/// come together, the reps of a ladder one by one in their order. `amount` is in
/// Distance units or milliseconds, as the item's kind says.
template <typename Visit>
void each_rep(plan::Plan const& plan, plan::Item const& item, Visit visit) {
    auto const& own = plan.terms[item.terms];
    if (item.is_ladder()) {
        if (own.selections.empty()) {
            for (plan::Index i = 0; i < item.count; ++i) {
                visit(plan.rungs[item.body + i], own, std::int64_t{1});
            }
            return;
        }
        auto const terms = terms_of_rungs(plan, item);
        for (plan::Index i = 0; i < item.count; ++i) {
            visit(plan.rungs[item.body + i], plan.terms[terms[i]], std::int64_t{1});
        }
        return;
    }
    std::int64_t left = item.count;
    for (auto i = own.selections.first; i < own.selections.end(); ++i) {
        auto const& selection = plan.selections[i];
        visit(item.amount, plan.terms[selection.terms], std::int64_t{selection.count});
        left -= selection.count;
    }
    if (left > 0) {
        visit(item.amount, own, left);
    }
}

} // namespace lengthwise::calc
