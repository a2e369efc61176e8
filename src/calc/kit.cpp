#include "calc/kit.hpp"

#include "calc/reps.hpp"

namespace lengthwise::calc {

using plan::Item;

void KitReader::add(Item const& item) {
    auto const index = static_cast<plan::Index>(&item - plan_.items.data());
    if (!item.is_swum() || !seen_.insert(index).second) {
        return;
    }
    if (item.is_leaf()) {
        each_rep(plan_, item,
                 [&](std::int64_t, plan::Terms const& terms, std::int64_t) { add_terms(terms); });
        return;
    }
    std::int64_t left = item.count;
    auto const selections = plan_.terms[item.terms].selections;
    for (auto i = selections.first; i < selections.end(); ++i) {
        add_items(item, plan_.selections[i].body);
        left -= plan_.selections[i].count;
    }
    if (left > 0) {
        add_items(item, item.body);
    }
}

void KitReader::add_items(Item const& item, plan::Index body) {
    if (item.kind == Item::Kind::use) {
        add(plan_.items[body]);
        return;
    }
    for (Item const& inner : items_from(plan_, body)) {
        add(inner);
    }
}

void KitReader::add_terms(plan::Terms const& terms) {
    auto const add_set = [&](plan::GearSet const& gear) {
        kit_.words = static_cast<std::uint8_t>(kit_.words | gear.words);
        kit_.said = kit_.said || gear.said;
    };
    if (terms.parts.empty()) {
        add_set(terms.manner.gear);
    }
    for (auto i = terms.parts.first; i < terms.parts.end(); ++i) {
        add_set(plan_.parts[i].manner.gear);
    }
}

} // namespace lengthwise::calc
