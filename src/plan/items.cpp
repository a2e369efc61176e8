#include "plan/items.hpp"

#include "grammar/limits.hpp"
#include "plan/amounts.hpp"
#include "plan/rep_checks.hpp"
#include "units/spell.hpp"

#include <fmt/core.h>

#include <algorithm>
#include <string>

namespace lengthwise::plan {

using grammar::Kind;
using grammar::Tree;
using grammar::WrittenUnit;

void ItemReader::begin_session(Index threshold, Index factors) {
    session_ = {};
    threshold_ = threshold;
    factors_ = factors;
    ++session_number_;
    readings_.begin_session();
    stopped_ = false;
}

Index ItemReader::lines(Tree const& tree, std::uint32_t first, std::uint32_t end, ContextId context) {
    auto const body = static_cast<Index>(work_.plan.items.size());
    std::optional<Index> last;
    for (auto i = first; i < end; i = tree.next(i)) {
        if (auto const read = line(tree, i, context)) {
            last = read;
        }
    }
    if (!last) {
        return no_index;
    }
    work_.plan.items[*last].last = true;
    return body;
}

std::optional<Index> ItemReader::line(Tree const& tree, std::uint32_t node, ContextId context) {
    switch (tree.nodes[node].kind) {
    case Kind::item: {
        auto const index = static_cast<Index>(work_.plan.items.size());
        auto const load = item(tree, node, {context, 0});
        weigh(load, work_.plan.items[index].span);
        return index;
    }
    case Kind::pause:
        return pause(tree, node);
    case Kind::note_line:
        return note(tree, node);
    default: // a pause's note, a line that could not be read
        return std::nullopt;
    }
}

Index ItemReader::pause(Tree const& tree, std::uint32_t node) {
    Item item;
    item.kind = Item::Kind::pause;
    item.span = tree.span(node);
    item.set(duration_of(tree.nodes[node]));
    if (node + 1 < tree.size() && tree.nodes[node + 1].kind == Kind::note) {
        item.body = static_cast<Index>(work_.plan.texts.size());
        work_.plan.texts.push_back(work_.text_of(tree, node + 1));
    }
    weigh({0, 0, item.amount, 0}, item.span);
    work_.plan.items.push_back(item);
    return close(static_cast<Index>(work_.plan.items.size() - 1), item);
}

Index ItemReader::note(Tree const& tree, std::uint32_t node) {
    Item item;
    item.kind = Item::Kind::note;
    item.span = tree.span(node);
    item.body = static_cast<Index>(work_.plan.texts.size());
    work_.plan.texts.push_back(work_.text_of(tree, node));
    work_.plan.items.push_back(item);
    return close(static_cast<Index>(work_.plan.items.size() - 1), item);
}

/// Stores an item whose inside, if it has one, now stands behind it.
Index ItemReader::close(Index index, Item item) {
    if (item.kind == Item::Kind::group) {
        item.amount = static_cast<Index>(work_.plan.items.size());
    }
    work_.plan.items[index] = item;
    return index;
}

Load ItemReader::item(Tree const& tree, std::uint32_t node, Here here) {
    auto const index = static_cast<Index>(work_.plan.items.size());
    auto const end = tree.next(node);
    Item item;
    item.count = std::max<std::uint16_t>(tree.nodes[node].length, 1);
    item.span = {tree.nodes[node].begin, tree.span(end - 1).end};

    auto head = node + 1;
    for (;; ++head) {
        auto const& label = tree.nodes[head];
        if (label.kind == Kind::lane_label) {
            item.first_lane = static_cast<std::uint8_t>(label.value & 0xFFFFU);
            item.last_lane = static_cast<std::uint8_t>(label.value >> 16);
        } else if (label.kind == Kind::if_time) {
            item.optional = true;
        } else {
            break;
        }
    }
    work_.plan.items.push_back(item);
    if (!may_read(item.span)) {
        (void)close(index, item);
        return {};
    }
    switch (tree.nodes[head].kind) {
    case Kind::group:
        return group({tree, tree.next(head), end, Owner::group, item.count}, head, index, here);
    case Kind::use:
        return use({tree, head + 2, end, Owner::group, item.count}, head + 1, index, here);
    default:
        return reps({tree, head, end, Owner::item, item.count}, head, index, here);
    }
}

// --- reps ---------------------------------------------------------------------

Load ItemReader::reps(Behind behind, std::uint32_t first, Index index, Here here) {
    auto const& tree = behind.tree;
    auto const pool = work_.plan.pools[work_.contexts.at(here.context).pool];
    while (behind.first < behind.end &&
           (tree.nodes[behind.first].kind == Kind::distance || tree.nodes[behind.first].kind == Kind::time)) {
        ++behind.first;
    }
    auto item = work_.plan.items[index];
    auto sound = true;
    if (behind.first - first > 1) {
        sound = ladder(tree, first, behind.first, item, pool);
        behind.count = item.count;
    } else {
        auto const& node = tree.nodes[first];
        item.kind = node.kind == Kind::time ? Item::Kind::timed_reps : Item::Kind::reps;
        item.unit = node.kind == Kind::time ? WrittenUnit::bare : node.unit();
        auto const read = amount(tree, first, item.unit, pool);
        sound = read.has_value();
        item.amount = static_cast<std::uint32_t>(read.value_or(0));
    }
    item.terms = terms_.of_reps(behind, here.context);
    (void)close(index, item);
    auto const& gist = terms_.gist(item.terms);
    if (sound && gist.plain && !item.is_ladder() && !(item.is_timed() && gist.longest > 0)) [[likely]] {
        auto const ms = std::max<std::int64_t>(item.is_timed() ? item.amount : 0, gist.longest) + gist.rest;
        return {item.is_timed() ? 0 : std::int64_t{item.amount} * item.count, item.count, ms * item.count, 0};
    }
    auto const& terms = work_.plan.terms[item.terms];
    check_count(work_, terms, behind);
    if (!sound) {
        return {};
    }
    check_reps(work_, item, behind, pool);
    return load_of(work_.plan, item, terms);
}

/// Units stand on all rungs, on none, or on the last only, which then governs all.
bool ItemReader::ladder(Tree const& tree, std::uint32_t first, std::uint32_t end, Item& item,
                        Pool const& pool) {
    auto const& last = tree.nodes[end - 1];
    auto const timed = last.kind == Kind::time;
    auto const unit_of = [&](std::uint32_t i) { return timed ? WrittenUnit::bare : tree.nodes[i].unit(); };
    auto const governing = unit_of(end - 1);
    auto const shared = governing != WrittenUnit::bare && unit_of(first) == WrittenUnit::bare;
    item.kind = timed ? Item::Kind::timed_ladder : Item::Kind::ladder;
    item.count = static_cast<std::uint16_t>(end - first); // a line has not that many bytes
    item.body = static_cast<Index>(work_.plan.rungs.size());
    auto sound = true;
    for (auto i = first; i < end; ++i) {
        if ((tree.nodes[i].kind == Kind::time) != timed) {
            work_.report.error(code::pairing, span_of(tree.nodes[i]),
                               "a ladder holds distances or times, not both", "write two lines");
            return false;
        }
        if (i + 1 < end && (unit_of(i) == WrittenUnit::bare) != (shared || governing == WrittenUnit::bare)) {
            work_.report.error(code::amount, span_of(tree.nodes[i]),
                               "a ladder's units stand on all numbers, on none, or on the last only",
                               "100, 200, 100m");
            return false;
        }
        auto const read = amount(tree, i, shared ? governing : unit_of(i), pool);
        sound = sound && read.has_value();
        work_.plan.rungs.push_back(read.value_or(0));
        work_.plan.rung_units.push_back(shared ? governing : unit_of(i));
    }
    return sound;
}

std::optional<std::int64_t> ItemReader::amount(Tree const& tree, std::uint32_t node, WrittenUnit unit,
                                               Pool const& pool) {
    auto const& written = tree.nodes[node];
    if (written.kind == Kind::time) {
        if (written.value == 0) {
            work_.report.error(code::amount, span_of(written), "a time of 0 is not swum",
                               "write how long: 10min");
            return std::nullopt;
        }
        return duration_of(written).ms();
    }
    auto const distance = distance_in(work_.report, pool, written, unit);
    if (!distance) {
        return std::nullopt;
    }
    if (*distance > Distance::metres(limits::rep_km * 1000)) {
        work_.report.error(code::limit, span_of(written),
                           fmt::format("a rep of {}; one rep may be {} km",
                                       spell::distance(*distance, pool.unit), limits::rep_km));
        return std::nullopt;
    }
    return distance->units();
}

} // namespace lengthwise::plan
