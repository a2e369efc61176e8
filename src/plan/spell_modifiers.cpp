#include "plan/spell_modifiers.hpp"

namespace lengthwise::plan {
namespace {

using grammar::Kind;
using grammar::WrittenUnit;

/// A string right behind `drill` would be its name; notes then stand before it.
bool notes_come_first(Manner const& said, Run notes) {
    return said.mode == Mode::drill && said.drill.empty() && !notes.empty();
}

/// Bare, as in `per 100`, where a pool says what that is.
WrittenUnit unit_of_per(Distance per, Pool const& pool) {
    if (pool.kind != Pool::Kind::unsaid) {
        return WrittenUnit::bare;
    }
    bool const yards =
        Distance::divides(Distance::yards(1), per) && !Distance::divides(Distance::metres(1), per);
    return yards ? WrittenUnit::yards : WrittenUnit::metres;
}

} // namespace

/// Notes behind a part would be that part's, and what stands before `as` need not end the split.
void ModifierSpeller::behind_item(Versions<Terms> const& terms) {
    auto const& said = words(terms);
    bool const notes_first = notes_come_first(said.said, said.notes);
    bool const is_split = !said.parts.empty();
    if (notes_first) {
        notes(said.notes);
    }
    stroke_mode_effort(each(terms, [](Terms const& t) -> Manner const& { return t.said; }));
    shape(said.shape);
    broken(terms);
    if (is_split && !notes_first) {
        notes(said.notes);
    }
    parts(terms);
    gear(said.said.gear);
    if (said.stops) {
        tree_.word(Kind::with, Word::stops);
    }
    recovery(said.said_recovery);
    if (!is_split && !notes_first) {
        notes(said.notes);
    }
    selections(terms);
}

void ModifierSpeller::manner(Versions<Manner> const& said) {
    stroke_mode_effort(said);
    gear(words(said).gear);
}

void ModifierSpeller::stroke_mode_effort(Versions<Manner> const& said) {
    auto const& manner = words(said);
    if (manner.stroke != Stroke::unsaid) {
        tree_.word(Kind::stroke, word_of(manner.stroke));
    }
    if (manner.mode != Mode::unsaid) {
        tree_.word(Kind::mode, word_of(manner.mode));
        if (!manner.drill.empty()) {
            tree_.string(Kind::name, manner.drill);
        }
    }
    effort(said);
}

void ModifierSpeller::effort(Versions<Manner> const& said) {
    auto const& effort = words(said).effort;
    switch (effort.kind) {
    case Effort::Kind::unsaid:
        return;
    case Effort::Kind::word:
        tree_.word(Kind::effort, word_of(effort.word));
        if (!effort.shift.zero()) {
            bool const slower = effort.shift > Duration{};
            tree_.word(Kind::effort_shift, slower ? Word::plus : Word::minus);
            tree_.time(Kind::shift_time, slower ? effort.shift : Duration{} - effort.shift);
        }
        return;
    case Effort::Kind::percent:
        return tree_.leaf(Kind::at_percent, effort.number);
    case Effort::Kind::pace:
        tree_.time(Kind::at_pace, effort.time, TimeStyle::clock);
        return amount(Kind::at_per, said, unit_of_per(effort.per, *said.front().pool),
                      [](Manner const& m) { return m.effort.per.units(); });
    case Effort::Kind::hold:
        return tree_.time(Kind::hold, effort.time, TimeStyle::clock);
    case Effort::Kind::rpe:
        return tree_.leaf(Kind::rpe, effort.number);
    }
}

void ModifierSpeller::shape(Shape const& shape) {
    switch (shape.kind) {
    case Shape::Kind::none:
        return;
    case Shape::Kind::build:
        return tree_.leaf(Kind::build);
    case Shape::Kind::descend:
        return tree_.leaf(Kind::descend, shape.first | std::uint32_t{shape.last} << 16U);
    case Shape::Kind::negative_split:
        return tree_.leaf(Kind::negative_split);
    }
}

void ModifierSpeller::broken(Versions<Terms> const& terms) {
    auto const& broken = words(terms).broken;
    if (broken.piece == 0) {
        return;
    }
    if (broken.timed) {
        tree_.time(Kind::broken_time, Duration::ms(broken.piece));
    } else {
        amount(Kind::broken, terms, broken.unit, [](Terms const& t) { return t.broken.piece; });
    }
    tree_.time(Kind::broken_for, broken.pause, TimeStyle::with_unit);
}

void ModifierSpeller::parts(Versions<Terms> const& terms) {
    auto const count = words(terms).parts.count;
    if (count == 0) {
        return;
    }
    auto const split = tree_.open(Kind::split);
    for (Index k = 0; k < count; ++k) {
        part(each(terms, [&](Terms const& t) -> Part const& { return plan_.parts[t.parts.first + k]; }));
    }
    tree_.close(split);
}

void ModifierSpeller::part(Versions<Part> const& part) {
    auto const& said = words(part);
    if (said.timed) {
        tree_.time(Kind::part_time, Duration::ms(said.amount));
    } else {
        amount(Kind::part, part, said.unit, [](Part const& p) { return p.amount; });
    }
    bool const notes_first = notes_come_first(said.said, said.notes);
    if (notes_first) {
        notes(said.notes);
    }
    stroke_mode_effort(each(part, [](Part const& p) -> Manner const& { return p.said; }));
    if (said.build) {
        tree_.leaf(Kind::build);
    }
    if (!notes_first) {
        notes(said.notes);
    }
}

void ModifierSpeller::gear(GearSet gear) {
    auto kind = Kind::with;
    for (int i = 0; i < gear_words; ++i) {
        if (gear.has(static_cast<Gear>(i))) {
            tree_.word(kind, word_of(static_cast<Gear>(i)));
            kind = Kind::with_more;
        }
    }
    if (gear.said && gear.words == 0) {
        tree_.word(Kind::with, Word::nothing);
    }
}

void ModifierSpeller::recovery(Recovery const& recovery) {
    switch (recovery.kind) {
    case Recovery::Kind::none:
        return;
    case Recovery::Kind::rest:
        return tree_.range(Kind::rest, Kind::rest_to, recovery.rest);
    case Recovery::Kind::as_needed:
        return tree_.leaf(Kind::rest_as_needed);
    case Recovery::Kind::breaths:
        return tree_.leaf(Kind::rest_breaths, recovery.number);
    case Recovery::Kind::on:
        for (Index step = 0; step < recovery.steps; ++step) {
            tree_.time(step == 0 ? Kind::on : Kind::on_more, plan_.send_offs[recovery.first_step + step],
                       TimeStyle::clock);
        }
    }
}

void ModifierSpeller::notes(Run notes) {
    for (auto i = notes.first; i < notes.end(); ++i) {
        tree_.string(Kind::note, plan_.texts[i]);
    }
}

void ModifierSpeller::selections(Versions<Terms> const& terms) {
    for (Index k = 0; k < words(terms).selections.count; ++k) {
        selection(each(terms,
                       [&](Terms const& t) -> Selection const& {
                           return plan_.selections[t.selections.first + k];
                       }),
                  words(terms));
    }
}

/// A selection's terms are the item's with the selector's laid over: what differs was said by it.
void ModifierSpeller::selection(Versions<Selection> const& selections, Terms const& item) {
    auto const terms =
        each(selections, [&](Selection const& s) -> Terms const& { return plan_.terms[s.terms]; });
    auto const& said = words(terms);
    auto const selector = tree_.open(Kind::selector, words(selections).word);
    if (words(selections).number != 0) {
        tree_.leaf(Kind::selector_number, words(selections).number);
    }
    auto const unmodified = tree_.size();
    bool const notes_first = notes_come_first(said.said, said.notes);
    if (notes_first) {
        notes(said.notes);
    }
    stroke_mode_effort(each(terms, [](Terms const& t) -> Manner const& { return t.said; }));
    if (said.shape != item.shape) {
        tree_.leaf(Kind::build);
    }
    gear(said.said.gear);
    if (said.stops && !item.stops) {
        tree_.word(Kind::with, Word::stops);
    }
    if (!notes_first) {
        notes(said.notes);
    }
    if (tree_.size() == unmodified) { // it says again what the item says
        said.stops ? tree_.word(Kind::with, Word::stops) : tree_.leaf(Kind::build);
    }
    tree_.close(selector);
}

void ModifierSpeller::distance(Kind kind, std::vector<Measured> const& readings, WrittenUnit unit) {
    auto number = spell_number(readings, unit);
    number.kind = kind;
    tree_.node(number);
}

} // namespace lengthwise::plan
