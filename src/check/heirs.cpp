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

void Heirs::of_section(plan::Section const& section, Visit const& visit) {
    for (auto const& item : plan::items_from(plan_, section.body)) {
        at(item, visit);
    }
}

void Heirs::inside(plan::Item const& group, Visit const& visit) {
    if (!met_.insert(group.body).second) {
        return;
    }
    if (group.kind == plan::Item::Kind::use) {
        at(plan_.items[group.body], visit);
        return;
    }
    for (auto const& item : plan::items_from(plan_, group.body)) {
        at(item, visit);
    }
}

void Heirs::at(plan::Item const& item, Visit const& visit) {
    if (!item.is_swum() || says(plan_.terms[item.terms].said, what_)) {
        return;
    }
    if (!item.is_leaf()) {
        inside(item, visit);
    } else if (takes(item)) {
        visit(item);
    }
}

/// A split takes it only through a part that says nothing itself.
bool Heirs::takes(plan::Item const& leaf) const {
    auto const parts = plan_.terms[leaf.terms].parts;
    auto const first = plan_.parts.begin() + parts.first;
    return parts.empty() || std::any_of(first, first + parts.count,
                                        [this](plan::Part const& part) { return !says(part.said, what_); });
}

} // namespace lengthwise::check
