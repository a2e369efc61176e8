#include "calc/stretches.hpp"

#include "calc/band.hpp"

namespace lengthwise::calc {
namespace {

/// The number of the last rep or round that it chooses.
std::uint32_t last_of(plan::Selection const& selection) {
    return selection.first + (selection.count - 1) * selection.step;
}

} // namespace

Stretch Stretches::of(plan::Index index, PacingId pacing) {
    auto const& item = plan_.items[index];
    if (!item.is_leaf()) {
        return repeated(item, [&](plan::Selection const* selection, std::uint32_t) {
            return round(index, selection, pacing);
        });
    }
    return repeated(item, [&](plan::Selection const* selection, std::uint32_t number) {
        auto const amount = item.is_ladder() ? plan_.rungs[item.body + number] : item.amount;
        auto const terms = selection != nullptr ? selection->terms : item.terms;
        return stretch_of(paces_.rep(pacing, terms, amount, item.is_timed()), index);
    });
}

Stretch Stretches::round(plan::Index index, plan::Selection const* selection, PacingId pacing) {
    return body(index, selection != nullptr ? selection->body : plan_.items[index].body, pacing);
}

/// All reps or rounds of an item. `once(selection, number)` is one of them without what follows it:
/// `selection` is null for those that no selector chooses, `number` counts the rungs of a ladder from 0.
template <typename Once>
Stretch Stretches::repeated(plan::Item const& item, Once once) const {
    auto const& terms = plan_.terms[item.terms];
    if (item.is_ladder() || terms.recovery.steps > 1) {
        return one_by_one(item, once);
    }
    if (!terms.selections.empty()) {
        return by_kind(item, once);
    }
    auto one = once(nullptr, 0);
    recover(one, plan_, item, 0);
    return item.count == 1 ? one : one.times(item.count);
}

/// Only the last one's place matters, so those that are swum alike are taken together.
template <typename Once>
Stretch Stretches::by_kind(plan::Item const& item, Once once) const {
    auto const& selections = plan_.terms[item.terms].selections;
    Stretch all;
    Stretch last;
    std::int64_t left = item.count;
    bool has_last = false;
    auto const take = [&](plan::Selection const* selection, std::int64_t count, bool is_last) {
        auto one = once(selection, 0);
        recover(one, plan_, item, 0);
        auto const before_last = count - (is_last ? 1 : 0);
        if (before_last > 0) {
            all.then(one.times(before_last));
        }
        if (is_last) {
            last = one;
            has_last = true;
        }
        left -= count;
    };
    for (auto i = selections.first; i < selections.end(); ++i) {
        auto const& selection = plan_.selections[i];
        take(&selection, selection.count, last_of(selection) == item.count);
    }
    if (left > 0) {
        take(nullptr, left, !has_last);
    }
    all.then(last);
    return all;
}

/// For ladders, and where each has a send-off of its own.
template <typename Once>
Stretch Stretches::one_by_one(plan::Item const& item, Once once) const {
    auto const chooser = choosers(item);
    std::unordered_map<plan::Selection const*, Stretch> known; // rounds and equal reps, by selection
    Stretch all;
    for (std::uint32_t number = 0; number < item.count; ++number) {
        auto const* const selection = chooser.empty() ? nullptr : chooser[number];
        Stretch one;
        if (item.is_ladder()) {
            one = once(selection, number);
        } else {
            auto const [at, is_new] = known.try_emplace(selection);
            if (is_new) {
                at->second = once(selection, number);
            }
            one = at->second;
        }
        recover(one, plan_, item, number);
        all.then(one);
    }
    return all;
}

/// The selection of each rep or round, null where there is none; empty if there are no selections.
std::vector<plan::Selection const*> Stretches::choosers(plan::Item const& item) const {
    auto const& selections = plan_.terms[item.terms].selections;
    std::vector<plan::Selection const*> chooser(selections.empty() ? 0 : item.count, nullptr);
    for (auto i = selections.first; i < selections.end(); ++i) {
        auto const& selection = plan_.selections[i];
        for (auto number = selection.first; number <= last_of(selection); number += selection.step) {
            chooser[number - 1] = &selection;
        }
    }
    return chooser;
}

/// A group's own items follow it and are reached from nowhere else; any other body may be reached
/// on many ways and is remembered.
Stretch Stretches::body(plan::Index index, plan::Index first, PacingId pacing) {
    if (first == index + 1) {
        return siblings(index, first, pacing);
    }
    auto const key = std::uint64_t{pacing} << 32U | first;
    if (auto const known = shared_.find(key); known != shared_.end()) {
        return known->second;
    }
    auto const once = siblings(index, first, pacing);
    shared_.emplace(key, once);
    return once;
}

Stretch Stretches::siblings(plan::Index index, plan::Index first, PacingId pacing) {
    if (plan_.items[index].kind == plan::Item::Kind::use) {
        return of(first, pacing);
    }
    Stretch row;
    for (auto at = first; at != plan::no_index;
         at = plan_.items[at].last ? plan::no_index : plan_.after(at)) {
        row.then(of(at, pacing));
    }
    return row;
}

} // namespace lengthwise::calc
