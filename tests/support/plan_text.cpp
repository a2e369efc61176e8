#include "support/plan_text.hpp"

#include "units/spell.hpp"

#include <fmt/core.h>

#include <array>
#include <utility>

namespace lengthwise::support {
namespace {

using plan::Item;
using plan::Plan;

class Meaning {
  public:
    explicit Meaning(Plan const& plan) : plan_(plan) {}

    std::string of(Item const& item) const {
        std::string text;
        if (item.has_lanes()) {
            text += fmt::format("lane {}-{}: ", item.first_lane, item.last_lane);
        }
        if (item.optional) {
            text += "if time: ";
        }
        switch (item.kind) {
        case Item::Kind::pause:
            return text + "pause " + spell::duration(item.duration()) + note(item);
        case Item::Kind::note:
            return text + "note" + note(item);
        case Item::Kind::group:
        case Item::Kind::use:
            text += fmt::format("{} x {{{}}}", item.count, inside(item.body));
            break;
        default:
            text += reps(item);
            break;
        }
        text += terms(plan_.terms[item.terms], item.is_leaf());
        auto const selections = plan_.terms[item.terms].selections;
        for (auto i = selections.first; i < selections.end(); ++i) {
            text += chosen(item, plan_.selections[i]);
        }
        return text;
    }

  private:
    std::string note(Item const& item) const {
        return item.body == plan::no_index ? "" : fmt::format(" \"{}\"", plan_.texts[item.body]);
    }

    std::string inside(plan::Index body) const {
        std::string text;
        for (Item const& item : plan::items_from(plan_, body)) {
            text += (text.empty() ? "" : " + ") + of(item);
        }
        return text;
    }

    static std::string amount(bool timed, std::int64_t raw) {
        return timed ? spell::duration(Duration::ms(raw))
                     : spell::distance(Distance::units(raw), Unit::metre);
    }

    std::string reps(Item const& item) const {
        if (!item.is_ladder()) {
            return fmt::format("{} x {}", item.count, amount(item.is_timed(), item.amount));
        }
        std::string text;
        for (plan::Index i = 0; i < item.count; ++i) {
            text += (i > 0 ? ", " : "") + amount(item.is_timed(), plan_.rungs[item.body + i]);
        }
        return text;
    }

    std::string chosen(Item const& item, plan::Selection const& s) const {
        auto text = fmt::format(" [{}+{}k x{}:{}", s.first, s.step, s.count,
                                terms(plan_.terms[s.terms], item.is_leaf()));
        if (s.body != plan::no_index) {
            text += " {" + inside(s.body) + "}";
        }
        return text + "]";
    }

    std::string terms(plan::Terms const& terms, bool leaf) const {
        auto text = leaf ? manner(terms.manner) : "";
        static constexpr std::array shapes{"", " build", " descend", " negative split"};
        text += shapes[static_cast<std::size_t>(terms.shape.kind)];
        if (terms.shape.last > 0) {
            text += fmt::format(" {}-{}", terms.shape.first, terms.shape.last);
        }
        text += terms.stops ? " with stops" : "";
        for (auto i = terms.parts.first; i < terms.parts.end(); ++i) {
            auto const& part = plan_.parts[i];
            text +=
                fmt::format("{}{}{}{}", i == terms.parts.first ? " as " : " / ",
                            amount(part.timed, part.amount), manner(part.manner), part.build ? " build" : "");
        }
        if (terms.broken.piece > 0) {
            text += fmt::format(" broken at {} for {}", amount(terms.broken.timed, terms.broken.piece),
                                spell::duration(terms.broken.pause));
        }
        return text + recovery(terms.recovery) + notes(terms.notes);
    }

    std::string notes(plan::Run run) const {
        std::string text;
        for (auto i = run.first; i < run.end(); ++i) {
            text += fmt::format(" \"{}\"", plan_.texts[i]);
        }
        return text;
    }

    static std::string manner(plan::Manner const& manner) {
        std::string text;
        if (manner.stroke != Stroke::unsaid) {
            text += fmt::format(" {}", spelling(word_of(manner.stroke)));
        }
        if (manner.mode != Mode::unsaid) {
            text += fmt::format(" {}", spelling(word_of(manner.mode)));
            text += manner.drill.empty() ? "" : fmt::format(" \"{}\"", manner.drill);
        }
        text += effort(manner.effort);
        for (int g = 0; g < gear_words; ++g) {
            if (manner.gear.has(static_cast<Gear>(g))) {
                text += fmt::format(" {}", spelling(word_of(static_cast<Gear>(g))));
            }
        }
        return text;
    }

    static std::string effort(plan::Effort const& effort) {
        using Kind = plan::Effort::Kind;
        switch (effort.kind) {
        case Kind::unsaid:
            return "";
        case Kind::word:
            return fmt::format(" {}", spelling(word_of(effort.word))) +
                   (effort.shift.zero() ? "" : fmt::format(" {:+}ms", effort.shift.ms()));
        case Kind::percent:
            return fmt::format(" at {}%", effort.number);
        case Kind::pace:
            return fmt::format(" at {} per {}", spell::duration(effort.time),
                               spell::distance(effort.per, Unit::metre));
        case Kind::hold:
            return fmt::format(" hold {}", spell::duration(effort.time));
        case Kind::rpe:
            return fmt::format(" rpe {}", effort.number);
        }
        return "";
    }

    std::string recovery(plan::Recovery const& recovery) const {
        using Kind = plan::Recovery::Kind;
        switch (recovery.kind) {
        case Kind::none:
            return "";
        case Kind::rest:
            return " rest " + spell::range(recovery.rest, true);
        case Kind::as_needed:
            return " rest as needed";
        case Kind::breaths:
            return fmt::format(" rest {} breaths", recovery.number);
        case Kind::on:
            break;
        }
        std::string text = " on";
        for (auto i = recovery.first_step; i < recovery.first_step + recovery.steps; ++i) {
            text += " " + spell::clock(plan_.send_offs[i]);
        }
        return text;
    }

    Plan const& plan_;
};

} // namespace

std::string session_with(std::string_view lines, std::string_view head) {
    return std::string{head} + "session\n  main\n" + std::string{lines} + "\n";
}

std::vector<std::string> faults(std::string text, std::map<std::string, std::string> files) {
    auto const read = read_plan(std::move(text), std::move(files));
    Diagnostics all;
    all.append(read.bundle->findings);
    all.append(read.resolved.findings);
    all.sort_by_place();
    std::vector<std::string> lines;
    for (auto const& finding : all.kept()) {
        auto const& source = read.bundle->file_of(finding.span.begin).source;
        lines.push_back(
            fmt::format("{} | {} | {}", finding.rule, source.slice(finding.span), finding.message));
    }
    return lines;
}

std::vector<std::string> meanings(Plan const& plan) {
    std::vector<std::string> lines;
    if (plan.sections.empty()) {
        return lines;
    }
    for (Item const& item : plan::items_from(plan, plan.sections.front().body)) {
        lines.push_back(Meaning{plan}.of(item));
    }
    return lines;
}

} // namespace lengthwise::support
