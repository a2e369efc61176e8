#include "plan/spell_items.hpp"

#include <algorithm>

namespace lengthwise::plan {
namespace {

using grammar::Kind;
using grammar::WrittenUnit;

constexpr std::uint32_t longest_line = 2000; ///< nodes from which on no set is expanded

} // namespace

void ItemSpeller::line(Item const& item, Pool const& pool) {
    switch (item.kind) {
    case Item::Kind::pause:
        tree_.time(Kind::pause, item.duration());
        if (item.body != no_index) {
            tree_.string(Kind::note, plan_.texts[item.body]);
        }
        return;
    case Item::Kind::note:
        return tree_.string(Kind::note_line, plan_.texts[item.body]);
    default:
        return this->item({{&item, &pool}});
    }
}

void ItemSpeller::item(Versions<Item> const& written) {
    auto const item = expanded(written);
    auto const& what = words(item);
    auto const node = tree_.open_item(what.is_ladder() ? 1 : what.count);
    if (style_.labels) {
        labels(words(written));
    }
    amount_or_group(item);
    modifiers_.behind_item(each(item, [&](Item const& i) -> Terms const& { return terms_of(i); }));
    tree_.close(node);
}

void ItemSpeller::labels(Item const& item) {
    if (item.has_lanes()) {
        tree_.leaf(Kind::lane_label, item.first_lane | std::uint32_t{item.last_lane} << 16U);
    }
    if (item.optional) {
        tree_.leaf(Kind::if_time);
    }
}

void ItemSpeller::amount_or_group(Versions<Item> const& item) {
    auto const& what = words(item);
    switch (what.kind) {
    case Item::Kind::timed_reps:
        return tree_.time(Kind::time, what.duration());
    case Item::Kind::ladder:
        return ladder(item);
    case Item::Kind::timed_ladder:
        for (Index k = 0; k < what.count; ++k) {
            tree_.time(Kind::time, Duration::ms(plan_.rungs[what.body + k]));
        }
        return;
    case Item::Kind::group:
        return group(item);
    case Item::Kind::use:
        return use(item);
    default:
        return modifiers_.amount(Kind::distance, item, what.unit, [](Item const& i) { return i.amount; });
    }
}

void ItemSpeller::ladder(Versions<Item> const& item) {
    auto const& what = words(item);
    std::vector<std::vector<Measured>> steps;
    std::vector<WrittenUnit> units;
    for (Index k = 0; k < what.count; ++k) {
        steps.push_back(measured(item, [&](Item const& i) { return plan_.rungs[i.body + k]; }));
        units.push_back(plan_.rung_units[what.body + k]);
    }
    for (auto number : spell_ladder(steps, units)) {
        number.kind = Kind::distance;
        tree_.node(number);
    }
}

void ItemSpeller::group(Versions<Item> const& item) {
    auto const group = tree_.open(Kind::group);
    children(inside(item));
    tree_.leaf(Kind::group_end);
    tree_.close(group);
}

/// What an expanded use holds stands in the parentheses that it means; those of the set's own
/// text, if they say nothing more, are not doubled.
void ItemSpeller::use(Versions<Item> const& item) {
    if (!expands(words(item))) {
        tree_.leaf(Kind::use);
        return tree_.string(Kind::name, plan_.set_of(words(item)).name);
    }
    auto const held = expanded(inside(item));
    bool const parenthesised = words(held).kind == Item::Kind::group && is_plain(words(held));
    group(parenthesised ? held : item);
}

void ItemSpeller::children(Versions<Item> item) {
    for (;;) {
        this->item(item);
        if (words(item).last) {
            return;
        }
        item = each(item, [&](Item const& i) -> Item const& {
            return plan_.items[plan_.after(static_cast<Index>(&i - plan_.items.data()))];
        });
    }
}

Versions<Item> ItemSpeller::inside(Versions<Item> const& item) const {
    return each(item, [&](Item const& i) -> Item const& { return plan_.items[i.body]; });
}

/// What a use that says nothing more holds, when sets are to be expanded; else the item itself.
Versions<Item> ItemSpeller::expanded(Versions<Item> item) const {
    while (expands(words(item)) && is_plain(words(item))) {
        item = inside(item);
    }
    return item;
}

/// Sets of sets could make a line without end; from some length on their names have to do.
bool ItemSpeller::expands(Item const& item) const {
    return style_.expand_sets && item.kind == Item::Kind::use && tree_.size() < longest_line;
}

/// Nothing but the parentheses or the use is written.
bool ItemSpeller::is_plain(Item const& item) const {
    auto const& terms = terms_of(item);
    return item.count == 1 && terms.said == Manner{} && terms.shape == Shape{} &&
           terms.said_recovery.kind == Recovery::Kind::none && terms.notes.empty() &&
           terms.selections.empty();
}

} // namespace lengthwise::plan
