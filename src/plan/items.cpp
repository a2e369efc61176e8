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

// --- groups and sets ------------------------------------------------------------

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

// --- limits ---------------------------------------------------------------------

bool ItemReader::fits(int depth, Span at) {
    if (depth <= limits::nesting) {
        return true;
    }
    work_.report.error(
        code::limit, at,
        fmt::format("parentheses and uses stand {} deep here; {} are read", depth, limits::nesting),
        "write the inner sets on lines of their own");
    return false;
}

bool ItemReader::may_read(Span at) {
    if (stopped_) {
        return false;
    }
    if (readings_.count()) {
        return true;
    }
    stopped_ = true;
    auto const session = readings_.session_passed();
    work_.report.error(code::limit, reading_.empty() ? at : reading_,
                       fmt::format("the shared sets of {} would be read in more than {} further ways",
                                   session ? "this session" : "this file",
                                   session ? limits::session_contexts : limits::file_contexts),
                       "use fewer sets inside sets, or say less around them");
    return false;
}

/// Says, at the line that passes a limit, that the session is larger than is read.
void ItemReader::weigh(Load const& more, Span at) {
    auto const before = session_;
    session_.add(more);
    auto const passed = [](std::int64_t was, std::int64_t is, std::int64_t limit) {
        return was <= limit && is > limit;
    };
    auto const say = [&](std::string_view what, std::int64_t is, std::int64_t limit, std::int64_t scale,
                         std::string_view unit) {
        work_.report.error(code::limit, at,
                           fmt::format("with this line the session's {} comes to {} {}; {} {} are read", what,
                                       is / scale + (is % scale != 0 ? 1 : 0), unit, limit / scale, unit));
    };
    constexpr auto kilometre = 1000 * Distance::per_metre;
    constexpr auto hour = Duration::hours(1).ms();
    if (passed(before.units, session_.units, limits::session_km * kilometre)) {
        say("distance", session_.units, limits::session_km * kilometre, kilometre, "km");
    } else if (passed(before.reps, session_.reps, limits::session_reps)) {
        say("number of reps", session_.reps, limits::session_reps, 1, "reps");
    } else if (passed(before.ms, session_.ms, limits::session_hours * hour)) {
        say("time", session_.ms, limits::session_hours * hour, hour, "h");
    }
}

} // namespace lengthwise::plan
