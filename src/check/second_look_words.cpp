#include "check/comparison.hpp"
#include "check/drilled.hpp"
#include "check/heirs.hpp"
#include "check/second_look.hpp"
#include "check/seen.hpp"
#include "check/walk.hpp"
#include "check/words.hpp"

#include <fmt/core.h>

#include <cstdint>
#include <optional>
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

void idle_selectors(Inquiry& inquiry, Met const& met) {
    auto const& plan = inquiry.plan;
    auto const& own = plan.terms[met.item.terms];
    for (auto i = own.selections.first; i < own.selections.end(); ++i) {
        auto const& selection = plan.selections[i];
        auto const& terms = plan.terms[selection.terms];
        Comparison comparison{plan};
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

void idle_modifiers(Inquiry& inquiry, Met const& met) {
    auto const& said = inquiry.plan.terms[met.item.terms].said;
    for (auto const what : classes) {
        if (!says(said, what)) {
            continue;
        }
        auto taken = false;
        Heirs{inquiry.plan, what}.inside(met.item, [&](Item const&) { taken = true; });
        if (!taken) {
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

/// The distances of reps, as far as it matters whether they are one.
class Distances {
  public:
    void add(Plan const& plan, Item const& leaf) {
        if (leaf.kind == Item::Kind::reps) {
            add(leaf.amount);
        } else if (leaf.kind == Item::Kind::ladder) {
            for (plan::Index i = 0; i < leaf.count; ++i) {
                add(plan.rungs[leaf.body + i]);
            }
        }
    }
    [[nodiscard]] bool several() const { return several_; }

  private:
    void add(std::int64_t amount) {
        several_ = several_ || (first_ && *first_ != amount);
        first_ = amount;
    }
    std::optional<std::int64_t> first_;
    bool several_ = false;
};

void say_hold(Inquiry& inquiry, Span span, std::vector<Related> related = {}) {
    inquiry.note(span, "hold is one time for reps of different distances",
                 "for one pace: at 1:55 per 100; or a hold on each line", std::move(related));
}

void hold(Inquiry& inquiry, Met const& met) {
    if (!holds(inquiry.plan.terms[met.item.terms].said)) {
        return;
    }
    Distances distances;
    auto const collect = [&](Item const& leaf) { distances.add(inquiry.plan, leaf); };
    if (met.item.is_leaf()) {
        collect(met.item);
    } else {
        Heirs{inquiry.plan, Class::effort}.inside(met.item, collect);
    }
    if (distances.several()) {
        say_hold(inquiry, met.item.span, used(met));
    }
}

// --- headings ------------------------------------------------------------------------

void heading(Inquiry& inquiry, plan::Section const& section, Drilled& drilled) {
    if (section.kind == SectionKind::drill && !inquiry.plan.heading_of(section).name.empty() &&
        section.body != plan::no_index && !drilled.section(section)) {
        inquiry.note(section.span(),
                     fmt::format("\"{}\" names the section, no line below it is swum as a drill",
                                 inquiry.plan.heading_of(section).name),
                     "try: 4 x 50 drill \"fist\"");
    }
    low_percent(inquiry, inquiry.plan.heading_of(section).said.effort, section.span(), {});
    if (holds(inquiry.plan.heading_of(section).said)) {
        Distances distances;
        Heirs{inquiry.plan, Class::effort}.of_section(
            section, [&](Item const& leaf) { distances.add(inquiry.plan, leaf); });
        if (distances.several()) {
            say_hold(inquiry, section.span());
        }
    }
}

void look_at(Inquiry& inquiry, Met const& met, SeenInSets& seen) {
    if (!met.item.is_swum() || !seen.first_time(met)) {
        return;
    }
    idle_selectors(inquiry, met);
    hold(inquiry, met);
    low_percents(inquiry, met);
    if (met.item.is_leaf()) {
        last_part(inquiry, met);
        unnamed_drill(inquiry, met);
    } else {
        idle_modifiers(inquiry, met);
    }
}

} // namespace

void words(Inquiry& inquiry) {
    Walk walk{inquiry.plan};
    SeenInSets seen;
    Drilled drilled{inquiry.plan};
    for (auto const& session : inquiry.plan.sessions) {
        if (inquiry.waived(session)) {
            continue;
        }
        walk.once(session, {}, [&](Met const& met) { look_at(inquiry, met, seen); });
        for (auto i = session.sections.first; i < session.sections.end(); ++i) {
            heading(inquiry, inquiry.plan.sections[i], drilled);
        }
    }
}

} // namespace lengthwise::check::second_look_at
