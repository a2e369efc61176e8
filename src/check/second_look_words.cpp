#include "check/comparison.hpp"
#include "check/drilled.hpp"
#include "check/heirs.hpp"
#include "check/second_look.hpp"
#include "check/seen.hpp"
#include "check/walk.hpp"
#include "check/words.hpp"

#include <fmt/core.h>

#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace lengthwise::check::second_look_at {

namespace {

using plan::Item;
using plan::Plan;

bool holds(plan::Manner const& manner) {
    return manner.effort.kind == plan::Effort::Kind::hold;
}

// --- selectors that change no rep ------------------------------------------------

void idle_selectors(Inquiry& inquiry, Met const& met, Comparison& comparison) {
    auto const& plan = inquiry.plan;
    auto const& own = plan.terms[met.item.terms];
    for (auto i = own.selections.first; i < own.selections.end(); ++i) {
        auto const& selection = plan.selections[i];
        auto const& terms = plan.terms[selection.terms];
        auto const idle =
            terms.notes.empty() && (met.item.is_leaf() ? comparison.alike(own, terms)
                                                       : comparison.alike(met.item.body, selection.body,
                                                                          met.item.kind == Item::Kind::use));
        if (idle) {
            inquiry.warn(selection.span,
                         fmt::format("this changes no {}", met.item.is_leaf() ? "rep" : "round"),
                         "they are swum so anyway", used(met));
        }
    }
}

// --- modifiers that change less than they seem to -----------------------------------

/// "easy", "crawl", as a class has it; "the gear" where it is a list.
std::string word_of_class(plan::Manner const& manner, Class what) {
    switch (what) {
    case Class::stroke:
        return std::string{spelling(word_of(manner.stroke))};
    case Class::mode:
        return std::string{spelling(word_of(manner.mode))};
    case Class::gear:
        return "the gear";
    case Class::effort:
        break;
    }
    return manner.effort.kind == plan::Effort::Kind::word ? std::string{spelling(word_of(manner.effort.word))}
                                                          : "the effort";
}

/// For every class a finder of its own.
class HeirFinders {
  public:
    explicit HeirFinders(Plan const& plan) {
        for (auto const what : classes) {
            finders_.emplace_back(plan, what);
        }
    }
    HeirFinder& of(Class what) { return finders_[static_cast<std::size_t>(what)]; }

  private:
    std::vector<HeirFinder> finders_;
};

void idle_modifiers(Inquiry& inquiry, Met const& met, HeirFinders& heirs) {
    auto const& said = inquiry.plan.terms[met.item.terms].said;
    for (auto const what : classes) {
        if (says(said, what) && !heirs.of(what).inside(met.item).any) {
            inquiry.note(met.item.span,
                         fmt::format("{} behind the {} changes nothing", word_of_class(said, what),
                                     met.item.kind == Item::Kind::use ? "set" : "group"),
                         "each line inside says its own", used(met));
        }
    }
}

/// `4 x 100 as 50 kick / 50 crawl easy`: an effort behind the last part alone.
void last_part(Inquiry& inquiry, Met const& met) {
    auto const& terms = inquiry.plan.terms[met.item.terms];
    if (terms.parts.count < 2 || terms.said.effort.said()) {
        return;
    }
    auto const& parts = inquiry.plan.parts;
    for (auto i = terms.parts.first; i + 1 < terms.parts.end(); ++i) {
        if (parts[i].said.effort.said()) {
            return;
        }
    }
    auto const& last = parts[terms.parts.end() - 1];
    if (last.said.effort.said()) {
        auto const word = word_of_class(last.said, Class::effort);
        inquiry.note(last.span, fmt::format("only this last part is {}", word == "the effort" ? "so" : word),
                     "for the whole rep the effort stands before as", used(met));
    }
}

void unnamed_drill(Inquiry& inquiry, Met const& met) {
    auto const& terms = inquiry.plan.terms[met.item.terms];
    if (terms.said.mode == Mode::drill && terms.said.drill.empty() && !terms.notes.empty()) {
        inquiry.note(
            place(met.item),
            fmt::format("\"{}\" is a note here, not the drill's name", inquiry.plan.texts[terms.notes.first]),
            "a name follows drill at once: drill \"fist\" crawl", used(met));
    }
}

/// `at 70%` is a share of threshold speed.
constexpr std::uint32_t slow_percent = 85;

void low_percent(Inquiry& inquiry, plan::Effort const& effort, Span span, std::vector<Related> related) {
    if (effort.kind == plan::Effort::Kind::percent && effort.number < slow_percent) {
        inquiry.note(span, fmt::format("at {}% is a share of threshold speed, very slow", effort.number),
                     "for how hard it feels: easy, steady, rpe 4", std::move(related));
    }
}

void low_percents(Inquiry& inquiry, Met const& met) {
    auto const& plan = inquiry.plan;
    auto const& terms = plan.terms[met.item.terms];
    low_percent(inquiry, terms.said.effort, place(met.item), used(met));
    for (auto i = terms.parts.first; i < terms.parts.end(); ++i) {
        low_percent(inquiry, plan.parts[i].said.effort, plan.parts[i].span, used(met));
    }
    for (auto i = terms.selections.first; i < terms.selections.end(); ++i) {
        low_percent(inquiry, plan.terms[plan.selections[i].terms].said.effort, plan.selections[i].span,
                    used(met));
    }
}

// --- hold over several distances ---------------------------------------------------

void say_hold(Inquiry& inquiry, Span span, std::vector<Related> related = {}) {
    inquiry.note(span, "hold is one time for reps of different distances",
                 "for one pace: at 1:55 per 100; or a hold on each line", std::move(related));
}

void hold(Inquiry& inquiry, Met const& met, HeirFinders& heirs) {
    if (!holds(inquiry.plan.terms[met.item.terms].said)) {
        return;
    }
    Heirs held;
    if (met.item.is_leaf()) {
        held.add(inquiry.plan, met.item);
    } else {
        held = heirs.of(Class::effort).inside(met.item);
    }
    if (held.several) {
        say_hold(inquiry, met.item.span, used(met));
    }
}

// --- headings ------------------------------------------------------------------------

/// What is known of sets that several places share.
struct Known {
    explicit Known(Plan const& plan) : comparison(plan), heirs(plan), drilled(plan) {}

    SeenInSets seen;
    Comparison comparison;
    HeirFinders heirs;
    Drilled drilled;
};

void heading(Inquiry& inquiry, plan::Section const& section, Known& known) {
    if (section.kind == SectionKind::drill && !inquiry.plan.heading_of(section).name.empty() &&
        section.body != plan::no_index && !known.drilled.section(section)) {
        inquiry.note(section.span(),
                     fmt::format("\"{}\" names the section, no line below it is swum as a drill",
                                 inquiry.plan.heading_of(section).name),
                     "try: 4 x 50 drill \"fist\"");
    }
    low_percent(inquiry, inquiry.plan.heading_of(section).said.effort, section.span(), {});
    if (holds(inquiry.plan.heading_of(section).said) &&
        known.heirs.of(Class::effort).of_section(section).several) {
        say_hold(inquiry, section.span());
    }
}

void look_at(Inquiry& inquiry, Met const& met, Known& known) {
    if (!met.item.is_swum() || !known.seen.first_time(met)) {
        return;
    }
    idle_selectors(inquiry, met, known.comparison);
    hold(inquiry, met, known.heirs);
    low_percents(inquiry, met);
    if (met.item.is_leaf()) {
        last_part(inquiry, met);
        unnamed_drill(inquiry, met);
    } else {
        idle_modifiers(inquiry, met, known.heirs);
    }
}

} // namespace

void words(Inquiry& inquiry) {
    Walk walk{inquiry.plan};
    Known known{inquiry.plan};
    for (auto const& session : inquiry.plan.sessions) {
        if (inquiry.waived(session)) {
            continue;
        }
        walk.once(session, {}, [&](Met const& met) { look_at(inquiry, met, known); });
        for (auto i = session.sections.first; i < session.sections.end(); ++i) {
            heading(inquiry, inquiry.plan.sections[i], known);
        }
    }
}

} // namespace lengthwise::check::second_look_at
