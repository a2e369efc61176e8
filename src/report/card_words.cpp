#include "report/card_words.hpp"

#include "grammar/words.hpp"
#include "report/width.hpp"
#include "units/spell.hpp"

namespace lengthwise::report {
namespace {

using plan::Effort;
using plan::Manner;

std::string word(Word word) {
    return std::string{spelling(word)};
}

std::string effort_words(Effort const& effort, Pool const& pool) {
    switch (effort.kind) {
    case Effort::Kind::unsaid:
        return {};
    case Effort::Kind::word: {
        auto text = word(word_of(effort.word));
        if (!effort.shift.zero()) {
            bool const slower = effort.shift > Duration{};
            auto const by = slower ? effort.shift : Duration{} - effort.shift;
            text += (slower ? " plus " : " minus ") + spell::duration(by);
        }
        return text;
    }
    case Effort::Kind::percent:
        return "at " + std::to_string(effort.number) + "%";
    case Effort::Kind::pace:
        return "at " + spell::clock(effort.time) + " per " + spell::number(effort.per, pool.unit);
    case Effort::Kind::hold:
        return "hold " + spell::clock(effort.time);
    case Effort::Kind::rpe:
        return "rpe " + std::to_string(effort.number);
    }
    return {};
}

std::string gear_list(plan::GearSet gear) {
    std::vector<std::string> words;
    for (int i = 0; i < gear_words; ++i) {
        if (gear.has(static_cast<Gear>(i))) {
            words.push_back(word(word_of(static_cast<Gear>(i))));
        }
    }
    return "with " + (words.empty() ? word(Word::nothing) : joined(words, ", "));
}

std::string mode_words(Manner const& manner) {
    return manner.mode == Mode::drill && !manner.drill.empty() ? visible(manner.drill)
                                                               : word(word_of(manner.mode));
}

bool same_mode(Manner const& a, Manner const& b) {
    auto const swims = [](Mode mode) { return mode == Mode::unsaid ? Mode::swim : mode; };
    return swims(a.mode) == swims(b.mode) && a.drill == b.drill;
}

/// What is worn, unsaid or nothing alike.
bool same_gear(plan::GearSet a, plan::GearSet b) {
    return a.words == b.words;
}

std::string ordinal(std::uint32_t number) {
    auto const last = number % 10;
    bool const teen = number % 100 / 10 == 1;
    auto const* const ending = teen || last > 3 || last == 0 ? "th"
                               : last == 1                   ? "st"
                               : last == 2                   ? "nd"
                                                             : "rd";
    return std::to_string(number) + ending;
}

std::string chosen(plan::Selection const& selection) {
    auto text = word(selection.word);
    if (selection.word == Word::every) {
        return text + " " + ordinal(selection.number);
    }
    return selection.number == 0 ? text : text + " " + std::to_string(selection.number);
}

} // namespace

std::string joined(std::vector<std::string> const& parts, std::string_view between) {
    std::string text;
    for (auto const& part : parts) {
        text.append(text.empty() || part.empty() ? std::string_view{} : between).append(part);
    }
    return text;
}

std::string amount_words(Distance distance, plan::WrittenUnit unit, Pool const& pool) {
    if (unit == plan::WrittenUnit::metres && pool.unit != Unit::metre) {
        return spell::number(distance, Unit::metre) + "m";
    }
    if (unit == plan::WrittenUnit::yards && pool.unit != Unit::yard) {
        return spell::number(distance, Unit::yard) + "yd";
    }
    return spell::number(distance, pool.unit);
}

std::vector<std::string> manner_words(Manner const& manner, Manner const& held, Pool const& pool) {
    std::vector<std::string> words;
    if (manner.stroke != held.stroke && manner.stroke != Stroke::unsaid) {
        words.push_back(word(word_of(manner.stroke)));
    }
    if (!same_mode(manner, held)) {
        words.push_back(manner.mode == Mode::unsaid ? word(Word::swim) : mode_words(manner));
    }
    if (manner.effort != held.effort) {
        words.push_back(effort_words(manner.effort, pool));
    }
    if (!same_gear(manner.gear, held.gear)) {
        words.push_back(gear_list(manner.gear));
    }
    if (words.empty() && manner.mode == Mode::swim && held == Manner{}) {
        words.push_back(word(Word::swim));
    }
    return words;
}

std::string rest_words(Range<Duration> const& rest) {
    return "rest " + spell::range(rest);
}

std::string recovery_words(plan::Plan const& plan, plan::Recovery const& recovery) {
    switch (recovery.kind) {
    case plan::Recovery::Kind::none:
        return {};
    case plan::Recovery::Kind::rest:
        return rest_words(recovery.rest);
    case plan::Recovery::Kind::as_needed:
        return "rest as needed";
    case plan::Recovery::Kind::breaths:
        return "rest " + std::to_string(recovery.number) + (recovery.number == 1 ? " breath" : " breaths");
    case plan::Recovery::Kind::on: {
        std::vector<std::string> steps;
        for (plan::Index step = 0; step < recovery.steps; ++step) {
            steps.push_back(spell::clock(plan.send_offs[recovery.first_step + step]));
        }
        return "on " + joined(steps, ", ");
    }
    }
    return {};
}

std::string selector_words(plan::Plan const& plan, plan::Terms const& terms, Pool const& pool) {
    std::vector<std::string> texts;
    for (auto i = terms.selections.first; i < terms.selections.end(); ++i) {
        auto const& selection = plan.selections[i];
        auto const& said = plan.terms[selection.terms];
        auto words = manner_words(said.said, {}, pool);
        if (said.said.gear.said && said.said.gear.words == 0) {
            words.push_back("with nothing");
        }
        if (said.shape.kind == plan::Shape::Kind::build && said.shape != terms.shape) {
            words.push_back("build");
        }
        if (said.stops && !terms.stops) {
            words.push_back("with stops");
        }
        for (auto& note : note_words(plan, said.notes)) {
            words.push_back(std::move(note));
        }
        texts.push_back(chosen(selection) + " " + joined(words, " "));
    }
    return joined(texts, ", ");
}

std::string shape_words(plan::Shape const& shape) {
    switch (shape.kind) {
    case plan::Shape::Kind::descend:
        return shape.last == 0 ? "descend"
                               : "descend " + std::to_string(shape.first) + "–" + std::to_string(shape.last);
    case plan::Shape::Kind::negative_split:
        return "negative split";
    case plan::Shape::Kind::none:
    case plan::Shape::Kind::build:
        break;
    }
    return {};
}

std::string broken_words(plan::Broken const& broken, Pool const& pool) {
    if (broken.piece == 0) {
        return {};
    }
    auto const piece = broken.timed ? spell::duration(Duration::ms(broken.piece))
                                    : amount_words(Distance::units(broken.piece), broken.unit, pool);
    return "broken at " + piece + " for " + spell::with_unit(broken.pause);
}

std::vector<std::string> note_words(plan::Plan const& plan, plan::Run notes) {
    std::vector<std::string> texts;
    for (auto i = notes.first; i < notes.end(); ++i) {
        if (!plan.texts[i].empty()) {
            texts.push_back(visible(plan.texts[i]));
        }
    }
    return texts;
}

} // namespace lengthwise::report
