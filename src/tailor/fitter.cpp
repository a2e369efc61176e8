#include "tailor/fitter.hpp"

#include "tailor/reading.hpp"
#include "tailor/terms.hpp"

#include <algorithm>
#include <utility>

namespace lengthwise::tailor {

using plan::Index;
using plan::Item;
using plan::Terms;
using plan::WrittenUnit;

Fitter::Fitter(plan::Plan& plan, Changes& changes)
    : plan_(plan), changes_(changes), seen_(plan.items.size(), Change::unknown),
      set_bodies_(plan.sets.size(), plan::no_index) {}

void Fitter::session(plan::Session const& session, Fit const& fit) {
    for (auto i = session.sections.first; i < session.sections.end(); ++i) {
        auto const items = plan::items_from(plan_, plan_.sections[i].body);
        for (auto item = items.begin(); item != items.end(); ++item) {
            note(item.index(), change_of(item.index(), fit));
        }
    }
}

void Fitter::note(Index line, Change change) {
    if (change >= Change::figures) {
        changes_.changed.push_back(line);
    }
    if (change == Change::figures_under_a_time) {
        changes_.timed.push_back(line);
    }
}

/// Fits an item and all inside it, once.
Fitter::Change Fitter::change_of(Index index, Fit const& fit) {
    if (seen_[index] == Change::unknown) {
        auto& item = plan_.items[index];
        auto change = Change::none;
        if (item.is_leaf()) {
            change = leaf(item, fit) ? Change::figures : Change::none;
        } else if (item.is_swum()) {
            change = rounds(item, fit);
        }
        bool const under_a_time = change != Change::none && has_times(plan_.terms[item.terms]);
        seen_[index] = under_a_time ? Change::figures_under_a_time : change;
    }
    return seen_[index];
}

Fitter::Change Fitter::rounds(Item const& item, Fit const& fit) {
    auto change = body(item, item.body, fit);
    auto const selections = plan_.terms[item.terms].selections;
    for (auto i = selections.first; i < selections.end(); ++i) {
        if (plan_.selections[i].body != plan::no_index) {
            change = std::max(change, body(item, plan_.selections[i].body, fit));
        }
    }
    return change;
}

Fitter::Change Fitter::body(Item const& item, Index first, Fit const& fit) {
    if (item.kind == Item::Kind::use) {
        auto& of_set = set_bodies_[plan_.uses[item.amount].set];
        of_set = of_set == plan::no_index ? first : of_set;
        return change_of(first, fit);
    }
    auto change = Change::none;
    auto const items = plan::items_from(plan_, first);
    for (auto inner = items.begin(); inner != items.end(); ++inner) {
        change = std::max(change, change_of(inner.index(), fit));
    }
    return change;
}

bool Fitter::leaf(Item& item, Fit const& fit) {
    switch (item.kind) {
    case Item::Kind::reps:
        return reps(item, fit);
    case Item::Kind::ladder:
        return ladder(item, fit);
    default:
        return false;
    }
}

bool Fitter::reps(Item& item, Fit const& fit) {
    Reading const was{item.distance(), item.unit};
    auto const now = rep_today(was, fit);
    item.set(now.amount);
    item.unit = now.unit;
    bool const inside = fit_terms(plan_, item.terms, was.amount, now.amount, fit);
    return inside || !same_reading(was, now, fit);
}

bool Fitter::ladder(Item& item, Fit const& fit) {
    std::vector<Reading> rungs;
    bool other = false;
    bool by_length = false;
    for (Index i = item.body; i < item.body + item.count; ++i) {
        Reading const was{Distance::units(plan_.rungs[i]), plan_.rung_units[i]};
        rungs.push_back(rep_today(was, fit));
        by_length |= rungs.back().unit == WrittenUnit::lengths;
    }
    auto const first = static_cast<Index>(plan_.rungs.size());
    for (Index i = 0; i < item.count; ++i) {
        auto& now = rungs[i];
        now.unit = by_length ? WrittenUnit::lengths : now.unit; // one unit governs a ladder
        Reading const was{Distance::units(plan_.rungs[item.body + i]), plan_.rung_units[item.body + i]};
        other |= !same_reading(was, now, fit);
        plan_.rungs.push_back(now.amount.units());
        plan_.rung_units.push_back(now.unit);
    }
    item.body = first;
    return other;
}

bool Fitter::has_times(Terms const& of) const {
    auto const held = [](Terms const& some) {
        return some.recovery.kind == plan::Recovery::Kind::on ||
               some.manner.effort.kind == plan::Effort::Kind::hold;
    };
    bool any = held(of);
    for (auto i = of.selections.first; i < of.selections.end(); ++i) {
        any |= held(plan_.terms[plan_.selections[i].terms]);
    }
    return any;
}

void Fitter::keep_used_sets() {
    std::vector<plan::NamedSet> used;
    std::vector<Index> places(set_bodies_.size(), 0);
    for (std::size_t i = 0; i < set_bodies_.size(); ++i) {
        if (set_bodies_[i] != plan::no_index) {
            places[i] = static_cast<Index>(used.size());
            used.push_back(plan_.sets[i]);
            used.back().body = set_bodies_[i];
        }
    }
    for (std::size_t i = 0; i < seen_.size(); ++i) {
        auto const& item = plan_.items[i];
        if (seen_[i] != Change::unknown && item.kind == Item::Kind::use) {
            auto& set = plan_.uses[item.amount].set;
            set = places[set];
        }
    }
    plan_.sets = std::move(used);
}

} // namespace lengthwise::tailor
