#include "plan/items.hpp"

#include "plan/rep_checks.hpp"

/// Groups and named sets: what comes down to their inside, and that no inside is read twice for the same.
namespace lengthwise::plan {

using grammar::Kind;
using grammar::Tree;

template <typename ReadBody>
Load ItemReader::rounds(Behind const& behind, Index index, Here here, ReadBody const& body) {
    auto const base = terms_.of_rounds(behind, here.context);
    auto item = work_.plan.items[index];
    item.kind = Item::Kind::group;
    item.terms = base;
    check_count(work_, work_.plan.terms[base], behind);

    auto const inside = [&](Index terms) {
        auto context = work_.contexts.at(here.context);
        context.manner = work_.plan.terms[terms].manner;
        return Here{work_.contexts.id_of(context), here.depth + 1};
    };
    auto const plain = inside(base);
    Body const read = body(plain, false);
    item.body = read.first;

    auto selections = terms_.choose(behind, base, here.context);
    for (auto& selection : selections) {
        auto const changed = inside(selection.terms);
        auto const outer = reading_;
        reading_ = selection.span;
        selection.body = changed.context == plain.context ? read.first : Body{body(changed, true)}.first;
        reading_ = outer;
    }
    if (!selections.empty()) {
        terms_.attach(base, selections);
    }
    (void)close(index, item);

    auto load = read.load.times(item.count);
    load.height = read.load.height + 1;
    return load;
}

Load ItemReader::group(Behind const& behind, std::uint32_t node, Index index, Here here) {
    auto const& tree = behind.tree;
    if (!fits(here.depth + 1, tree.span(node))) {
        (void)close(index, work_.plan.items[index]);
        return {};
    }
    return rounds(behind, index, here, [&](Here inside, bool changed) {
        return changed ? group_body(tree, node, inside) : children(tree, node + 1, tree.next(node), inside);
    });
}

ItemReader::Body ItemReader::children(Tree const& tree, std::uint32_t first, std::uint32_t end, Here here) {
    Body body{static_cast<Index>(work_.plan.items.size()), {}};
    auto last = no_index;
    for (auto i = first; i < end; i = tree.next(i)) {
        if (tree.nodes[i].kind == Kind::item) {
            last = static_cast<Index>(work_.plan.items.size());
            body.load.add(item(tree, i, here));
        }
    }
    if (last == no_index) {
        return {};
    }
    work_.plan.items[last].last = true;
    return body;
}

/// The inside of a group for rounds to which something else comes down.
ItemReader::Body ItemReader::group_body(Tree const& tree, std::uint32_t node, Here here) {
    Place const place{tree.nodes[node].begin, here.context, threshold_, factors_};
    if (auto const known = group_bodies_.find(place); known != group_bodies_.end()) {
        return known->second;
    }
    Readings::Again const again{readings_, true, true};
    auto const body = children(tree, node + 1, tree.next(node), here);
    group_bodies_.emplace(place, body);
    return body;
}

Load ItemReader::use(Behind const& behind, std::uint32_t name, Index index, Here here) {
    auto const& tree = behind.tree;
    auto const at = tree.span(name);
    auto const set = sets_.find(tree, name);
    if (!set && in_sets_ == 0) { // inside sets, Sets has said so
        sets_.report_missing(tree, name);
    }
    if (!set || !fits(here.depth + 1, at)) {
        (void)close(index, work_.plan.items[index]);
        return {};
    }
    auto const load =
        rounds(behind, index, here, [&](Here inside, bool) { return set_body(*set, inside, at); });
    auto& item = work_.plan.items[index];
    auto const next = work_.plan.after(index);
    item.kind = Item::Kind::use;
    item.amount = static_cast<Index>(work_.plan.uses.size());
    work_.plan.uses.push_back({*sets_.at(*set).in_plan, next});
    return load;
}

/// What a set holds, read once in each context: so all that is reckoned from the plan, times too, costs
/// no more than the plan is large.
ItemReader::Body ItemReader::set_body(std::uint32_t set, Here here, Span use) {
    auto& entry = sets_.at(set);
    auto const seen = entry.seen_session == session_number_;
    entry.seen_session = session_number_;
    Place const place{set, here.context, threshold_, factors_};
    if (auto const known = set_bodies_.find(place); known != set_bodies_.end()) {
        return fits(here.depth + known->second.load.height, use) ? known->second : Body{};
    }
    Report::Inside const inside{work_.report, use};
    Readings::Again const again{readings_, seen, entry.in_plan.has_value()};
    if (!entry.in_plan) {
        entry.in_plan = static_cast<Index>(work_.plan.sets.size());
        work_.plan.sets.push_back(
            {work_.text_of(*entry.tree, entry.name), no_index, entry.tree->span(entry.name)});
    }
    auto const in_plan = *entry.in_plan;
    auto const outer = reading_;
    reading_ = use;
    ++in_sets_;
    auto const body = children(*entry.tree, entry.item(), entry.end, here);
    --in_sets_;
    reading_ = outer;
    if (work_.plan.sets[in_plan].body == no_index) {
        work_.plan.sets[in_plan].body = body.first;
    }
    set_bodies_.emplace(place, body);
    return body;
}

} // namespace lengthwise::plan
