#include "check/drilled.hpp"

#include "calc/reps.hpp"

namespace lengthwise::check {

using plan::Item;

bool Drilled::any(plan::Index body, bool single) {
    if (single) {
        return item(plan_.items[body]);
    }
    auto found = false;
    for (auto const& inner : plan::items_from(plan_, body)) {
        found = found || item(inner);
    }
    return found;
}

bool Drilled::item(Item const& item) {
    if (!item.is_swum()) {
        return false;
    }
    if (item.is_leaf()) {
        return leaf(item);
    }
    auto found = known(item.body, item.kind == Item::Kind::use);
    auto const selections = plan_.terms[item.terms].selections;
    for (auto i = selections.first; i < selections.end() && !found; ++i) {
        auto const body = plan_.selections[i].body;
        found = body != plan::no_index && known(body, item.kind == Item::Kind::use);
    }
    return found;
}

bool Drilled::known(plan::Index body, bool single) {
    if (auto const found = bodies_.find(body); found != bodies_.end()) {
        return found->second;
    }
    auto const found = any(body, single);
    bodies_.emplace(body, found);
    return found;
}

bool Drilled::leaf(Item const& leaf) const {
    auto found = false;
    calc::each_rep(plan_, leaf, [&](std::int64_t, plan::Terms const& terms, std::int64_t) {
        found = found || (terms.parts.empty() && terms.manner.mode == Mode::drill);
        for (auto i = terms.parts.first; i < terms.parts.end(); ++i) {
            found = found || plan_.parts[i].manner.mode == Mode::drill;
        }
    });
    return found;
}

} // namespace lengthwise::check
