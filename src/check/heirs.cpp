#include "check/heirs.hpp"

#include <algorithm>

namespace lengthwise::check {

bool says(plan::Manner const& manner, Class what) {
    switch (what) {
    case Class::stroke:
        return manner.stroke != Stroke::unsaid;
    case Class::mode:
        return manner.mode != Mode::unsaid;
    case Class::gear:
        return manner.gear.said;
    case Class::effort:
        return manner.effort.said();
    }
    return false;
}

void Heirs::add(plan::Plan const& plan, plan::Item const& leaf) {
    any = true;
    if (leaf.kind == plan::Item::Kind::reps) {
        add(leaf.amount);
    } else if (leaf.kind == plan::Item::Kind::ladder) {
        for (plan::Index i = 0; i < leaf.count; ++i) {
            add(plan.rungs[leaf.body + i]);
        }
    }
}

void Heirs::add(std::int64_t rep) {
    several = several || (amount && *amount != rep);
    amount = rep;
}

void Heirs::add(Heirs const& more) {
    any = any || more.any;
    several = several || more.several;
    if (more.amount) {
        add(*more.amount);
    }
}

Heirs HeirFinder::of_section(plan::Section const& section) {
    Heirs found;
    for (auto const& item : plan::items_from(plan_, section.body)) {
        found.add(of(item));
    }
    return found;
}

Heirs HeirFinder::inside(plan::Item const& group) {
    if (auto const known = known_.find(group.body); known != known_.end()) {
        return known->second;
    }
    Heirs found;
    if (group.kind == plan::Item::Kind::use) {
        found = of(plan_.items[group.body]);
    } else {
        for (auto const& item : plan::items_from(plan_, group.body)) {
            found.add(of(item));
        }
    }
    return known_.emplace(group.body, found).first->second;
}

Heirs HeirFinder::of(plan::Item const& item) {
    Heirs found;
    if (!item.is_swum() || says(plan_.terms[item.terms].said, what_)) {
        return found;
    }
    if (!item.is_leaf()) {
        return inside(item);
    }
    if (takes(item)) {
        found.add(plan_, item);
    }
    return found;
}

/// A split takes it only through a part that says nothing itself.
bool HeirFinder::takes(plan::Item const& leaf) const {
    auto const parts = plan_.terms[leaf.terms].parts;
    auto const first = plan_.parts.begin() + parts.first;
    return parts.empty() || std::any_of(first, first + parts.count,
                                        [this](plan::Part const& part) { return !says(part.said, what_); });
}

} // namespace lengthwise::check
