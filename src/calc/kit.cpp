#include "calc/kit.hpp"

#include "calc/reps.hpp"

namespace lengthwise::calc {

using plan::GearSet;
using plan::Item;

namespace {

void join(GearSet& kit, GearSet const& more) {
    kit.words = static_cast<std::uint8_t>(kit.words | more.words);
    kit.said = kit.said || more.said;
}

} // namespace

void KitReader::add(Item const& item) {
    join(kit_, of(item));
}

GearSet KitReader::of(Item const& item) {
    GearSet kit;
    if (!item.is_swum()) {
        return kit;
    }
    if (item.is_leaf()) {
        each_rep(plan_, item,
                 [&](std::int64_t, plan::Terms const& terms, std::int64_t) { join(kit, of_terms(terms)); });
        return kit;
    }
    std::int64_t left = item.count;
    auto const selections = plan_.terms[item.terms].selections;
    for (auto i = selections.first; i < selections.end(); ++i) {
        join(kit, of_items(item, plan_.selections[i].body));
        left -= plan_.selections[i].count;
    }
    if (left > 0) {
        join(kit, of_items(item, item.body));
    }
    return kit;
}

GearSet KitReader::of_items(Item const& item, plan::Index body) {
    GearSet kit;
    if (item.kind != Item::Kind::use) {
        for (Item const& inner : items_from(plan_, body)) {
            join(kit, of(inner));
        }
        return kit;
    }
    if (auto const known = sets_.find(body); known != sets_.end()) {
        return known->second;
    }
    kit = of(plan_.items[body]);
    sets_.emplace(body, kit);
    return kit;
}

GearSet KitReader::of_terms(plan::Terms const& terms) const {
    GearSet kit;
    if (terms.parts.empty()) {
        join(kit, terms.manner.gear);
    }
    for (auto i = terms.parts.first; i < terms.parts.end(); ++i) {
        join(kit, plan_.parts[i].manner.gear);
    }
    return kit;
}

} // namespace lengthwise::calc
