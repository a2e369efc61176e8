#include "plan/terms.hpp"

#include "plan/amounts.hpp"

#include <fmt/core.h>

#include <string>

namespace lengthwise::plan {
namespace {

using grammar::Kind;
using grammar::Tree;

/// What a selector chooses here.
std::string_view one_of(Behind const& behind) {
    return behind.owner == Owner::item ? "rep" : "round";
}

TermsReader::Gist gist_of(Plan const& plan, Terms const& terms) {
    TermsReader::Gist gist;
    gist.plain = terms.parts.empty() && terms.broken.piece == 0 && terms.selections.empty() &&
                 terms.manner.mode != Mode::tread && terms.manner.effort.kind != Effort::Kind::hold &&
                 terms.recovery.steps <= 1 && terms.shape.last == 0;
    if (terms.recovery.kind == Recovery::Kind::rest) {
        gist.rest = static_cast<std::uint32_t>(terms.recovery.rest.high.ms());
    }
    if (terms.recovery.steps == 1) {
        gist.longest = static_cast<std::uint32_t>(plan.send_offs[terms.recovery.first_step].ms());
    }
    return gist;
}

std::string_view words_of(Behind const& behind) {
    if (behind.first == behind.end) {
        return {};
    }
    auto const& tree = behind.tree;
    return tree.slice({tree.nodes[behind.first].begin, tree.span(behind.end - 1).end});
}

} // namespace

std::uint32_t Behind::first_selector() const {
    auto i = first;
    while (i < end && tree.nodes[i].kind != Kind::selector) {
        i = tree.next(i);
    }
    return i;
}

template <typename Make>
Index TermsReader::known_or(TermsMemo::Key const& key, Make const& make) {
    if (auto const known = known_.find(key); known != no_index) {
        return known;
    }
    auto const errors = work_.report.errors();
    Index const index = make();
    if (work_.report.errors() == errors) { // what is wrong is said again at each place
        known_.remember(key, index);
    }
    return index;
}

Index TermsReader::of_reps(Behind const& behind, ContextId context) {
    auto const selectors = behind.first_selector() != behind.end;
    return known_or({words_of(behind), context,
                     (selectors ? behind.count * 8 : 0) + static_cast<std::uint32_t>(behind.owner)},
                    [&] {
                        auto const index = add(read(behind, context));
                        if (selectors) {
                            attach(index, choose(behind, index, context));
                        }
                        gists_.resize(work_.plan.terms.size());
                        gists_[index] = gist_of(work_.plan, work_.plan.terms[index]);
                        return index;
                    });
}

Index TermsReader::of_rounds(Behind const& behind, ContextId context) {
    if (behind.first_selector() != behind.end) { // its selections will have bodies of this place
        return add(read(behind, context));
    }
    return known_or({words_of(behind), context, static_cast<std::uint32_t>(behind.owner)},
                    [&] { return add(read(behind, context)); });
}

Index TermsReader::add(Terms const& terms) {
    work_.plan.terms.push_back(terms);
    return static_cast<Index>(work_.plan.terms.size() - 1);
}

Terms TermsReader::read(Behind const& behind, ContextId id) {
    // A copy: reading may add contexts' neighbours, not contexts, but views of vectors are not worth the
    // doubt.
    auto const context = work_.contexts.at(id);
    auto const pool = work_.plan.pools[context.pool];
    auto const said = read_modifiers(work_, behind.tree, behind.first, behind.end, pool, behind.owner);

    Terms terms;
    terms.said = said.manner;
    terms.manner = over(context.manner, said.manner);
    terms.shape = said.shape;
    terms.stops = said.stops;
    terms.said_recovery = said.recovery;
    terms.recovery = said.recovery;
    if (behind.owner == Owner::item && said.recovery.kind == Recovery::Kind::none && context.rest) {
        terms.recovery.kind = Recovery::Kind::rest;
        terms.recovery.rest = *context.rest;
    }
    terms.broken = said.broken;
    terms.notes = said.notes;
    if (said.split) {
        terms.parts = parts_of(behind.tree, *said.split, pool, terms.manner);
    }
    return terms;
}

Run TermsReader::parts_of(Tree const& tree, std::uint32_t split, Pool const& pool, Manner const& manner) {
    Run parts{static_cast<Index>(work_.plan.parts.size()), 0};
    auto const end = tree.next(split);
    for (auto i = split + 1; i < end;) {
        auto const next = part_end(tree, i, end);
        auto const& node = tree.nodes[i];
        auto const said = read_modifiers(work_, tree, i + 1, next, pool, Owner::part);
        Part part;
        part.said = said.manner;
        part.manner = over(manner, said.manner);
        part.build = said.shape.kind == Shape::Kind::build;
        part.notes = said.notes;
        part.span = span_of(node);
        if (node.kind == Kind::part_time) {
            part.timed = true;
            part.amount = duration_of(node).ms();
        } else if (auto const distance = distance_in(work_.report, pool, node)) {
            part.amount = distance->units();
            part.unit = node.unit();
        }
        work_.plan.parts.push_back(part);
        ++parts.count;
        i = next;
    }
    return parts;
}

/// The same parts with other modifiers coming down.
Run TermsReader::under(Run parts, Manner const& manner) {
    Run copies{static_cast<Index>(work_.plan.parts.size()), parts.count};
    for (auto i = parts.first; i < parts.end(); ++i) {
        auto part = work_.plan.parts[i];
        part.manner = over(manner, part.said);
        work_.plan.parts.push_back(part);
    }
    return copies;
}

std::vector<Selection> TermsReader::choose(Behind const& behind, Index base, ContextId context) {
    std::vector<Selection> chosen;
    std::vector<std::uint16_t> chooser(behind.count + 1, 0); // of each rep: its selection, counted from 1
    std::uint32_t next = 1;
    for (auto i = behind.first_selector(); i < behind.end; i = behind.tree.next(i)) {
        auto selection = this->selection(behind, i, next);
        for (std::uint32_t k = 0; k < selection.count; ++k) {
            auto& taken = chooser[selection.first + k * selection.step];
            if (taken != 0) {
                work_.report.error(code::selector, selection.span,
                                   fmt::format("{} {} is chosen twice", one_of(behind),
                                               selection.first + k * selection.step),
                                   "let each be chosen once",
                                   {{chosen[taken - 1U].span, "it is chosen here already"}});
                return chosen;
            }
            taken = static_cast<std::uint16_t>(chosen.size() + 1);
        }
        if (selection.count == 0) {
            continue;
        }
        if (selection.word == Word::first || selection.word == Word::next) {
            next = selection.first + selection.count;
        }
        selection.terms = laid_over(behind, base, i, context);
        chosen.push_back(selection);
    }
    return chosen;
}

/// Which reps a selector chooses; `count` 0, and an error, when it cannot.
Selection TermsReader::selection(Behind const& behind, std::uint32_t node, std::uint32_t next) {
    auto const& tree = behind.tree;
    auto const numbered = node + 1 < tree.next(node) && tree.nodes[node + 1].kind == Kind::selector_number;
    auto const number = numbered ? tree.nodes[node + 1].value : 0;
    auto const all = behind.count;
    auto const asked = numbered ? number : 1;

    Selection s;
    s.word = tree.nodes[node].as_word();
    s.number = number;
    s.span = tree.span(node);
    s.count = 0;
    switch (s.word) {
    case Word::odds:
        s.step = 2;
        s.count = (all + 1) / 2;
        break;
    case Word::evens:
        s.first = 2;
        s.step = 2;
        s.count = all / 2;
        break;
    case Word::every:
        s.first = number;
        s.step = number;
        s.count = number == 0 ? 0 : all / number;
        break;
    case Word::last:
        s.first = asked <= all ? all - asked + 1 : 1;
        s.count = asked <= all ? asked : 0;
        break;
    default: // first, next
        s.first = s.word == Word::next ? next : 1;
        s.count = asked <= all && s.first - 1 <= all - asked ? asked : 0;
        break;
    }
    if (s.count == 0) {
        auto const said =
            numbered ? fmt::format("{} {}", spelling(s.word), number) : std::string{spelling(s.word)};
        work_.report.error(code::selector, s.span,
                           fmt::format("{} of {} {}{}: there are not so many", said, all, one_of(behind),
                                       all == 1 ? "" : "s"),
                           "choose among those that are there");
    }
    return s;
}

/// The terms of the chosen reps: the item's, with the selector's modifiers in the place of their classes.
Index TermsReader::laid_over(Behind const& behind, Index base, std::uint32_t node, ContextId context) {
    auto const& tree = behind.tree;
    auto const pool = work_.plan.pools[work_.contexts.at(context).pool];
    auto const said = read_modifiers(work_, tree, node + 1, tree.next(node), pool, Owner::selector);
    if (behind.owner == Owner::group && said.stops) {
        work_.report.error(code::pairing, tree.span(node),
                           "with stops stands behind reps, not behind a group",
                           "write it on the lines that are swum with stops");
    }
    auto terms = work_.plan.terms[base];
    terms.said = said.manner;
    terms.manner = over(terms.manner, said.manner);
    terms.notes = said.notes;
    terms.selections = {};
    terms.stops = said.nothing ? false : terms.stops || said.stops;
    if (said.shape.kind != Shape::Kind::none) {
        terms.shape = said.shape;
    }
    if (!terms.parts.empty()) {
        terms.parts = under(terms.parts, terms.manner);
    }
    return add(terms);
}

void TermsReader::attach(Index terms, std::vector<Selection> const& selections) {
    auto& all = work_.plan.selections;
    work_.plan.terms[terms].selections = {static_cast<Index>(all.size()),
                                          static_cast<Index>(selections.size())};
    all.insert(all.end(), selections.begin(), selections.end());
}

} // namespace lengthwise::plan
