#include "check/rules.hpp"
#include "check/walk.hpp"

#include <fmt/core.h>

#include <algorithm>
#include <array>
#include <span>
#include <string_view>

namespace lengthwise::check {

namespace {

/// One danger: words that name it in a coach's notes, and what to keep in mind.
struct Danger {
    std::string_view name;
    std::string_view caution;
    std::span<std::string_view const> words;
};

constexpr std::array<std::string_view, 12> breath_words{
    "hold your breath", "hold the breath",   "hold breath",    "holding your breath",
    "breath hold",      "breath-hold",       "breath holding", "breath-holding",
    "no breath",        "without breathing", "hypoxic",        "without a breath",
};
constexpr std::array<std::string_view, 6> open_words{"open water", "lake", "river", "sea", "ocean", "surf"};
constexpr std::array<std::string_view, 4> cold_words{"cold", "ice", "icy", "winter swim"};

constexpr std::array dangers{
    Danger{"breath-holding",
           "best left out; never alone, never after fast or deep breathing, a lifeguard watching",
           breath_words},
    Danger{"open water",
           "never alone, a bright cap, a boat or a watcher ashore, the water's temperature known",
           open_words},
    Danger{"cold water",
           "go in slowly, stay short, out before the shivering; with a weak heart ask a doctor first",
           cold_words},
};
constexpr auto& open_water = dangers[1];

constexpr char folded(char c) {
    return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
}

constexpr bool is_letter(char c) {
    return (folded(c) >= 'a' && folded(c) <= 'z') || static_cast<unsigned char>(c) >= 0x80;
}

/// Does the text begin with the word, and the word end there? ASCII case folded.
bool begins_with(std::string_view text, std::string_view word) {
    auto const same = [](char a, char b) { return a == folded(b); };
    return text.size() >= word.size() && std::equal(word.begin(), word.end(), text.begin(), same) &&
           (text.size() == word.size() || !is_letter(text[word.size()]));
}

/// Does the text hold one of the danger's words on its own?
bool names(std::string_view text, Danger const& danger) {
    for (std::size_t i = 0; i < text.size(); ++i) {
        auto const begins = is_letter(text[i]) && (i == 0 || !is_letter(text[i - 1]));
        if (begins && std::ranges::any_of(danger.words, [rest = text.substr(i)](std::string_view word) {
                return begins_with(rest, word);
            })) {
            return true;
        }
    }
    return false;
}

/// Warns once a danger.
class Judge {
  public:
    explicit Judge(Inquiry& inquiry) : inquiry_(inquiry) {}

    void look_at(plan::Session const& session) {
        if (inquiry_.plan.pool_of(session).kind == Pool::Kind::open_water) {
            raise(open_water, session.span);
        }
        read(session.name, session.span);
        for (auto const& note : inquiry_.plan.settings[session.settings].notes) {
            read(note, session.span);
        }
        for (auto i = session.sections.first; i < session.sections.end(); ++i) {
            read(inquiry_.plan.heading_of(inquiry_.plan.sections[i]).name, inquiry_.plan.sections[i].span());
        }
    }

    void look_at(plan::Item const& item) {
        auto const& plan = inquiry_.plan;
        if (item.kind == plan::Item::Kind::note || item.kind == plan::Item::Kind::pause) {
            if (item.body != plan::no_index) {
                read(plan.texts[item.body], item.span);
            }
            return;
        }
        auto const& terms = plan.terms[item.terms];
        read_terms(terms, item.span);
        for (auto i = terms.selections.first; i < terms.selections.end(); ++i) {
            read_terms(plan.terms[plan.selections[i].terms], plan.selections[i].span);
        }
    }

  private:
    void read_terms(plan::Terms const& terms, Span span) {
        auto const& plan = inquiry_.plan;
        read(terms.said.drill, span);
        read_all(terms.notes, span);
        for (auto i = terms.parts.first; i < terms.parts.end(); ++i) {
            read(plan.parts[i].said.drill, plan.parts[i].span);
            read_all(plan.parts[i].notes, plan.parts[i].span);
        }
    }

    void read_all(plan::Run notes, Span span) {
        for (auto i = notes.first; i < notes.end(); ++i) {
            read(inquiry_.plan.texts[i], span);
        }
    }

    void read(std::string_view text, Span span) {
        for (auto const& danger : dangers) {
            if (!raised(danger) && names(text, danger)) {
                raise(danger, span);
            }
        }
    }

    bool& raised(Danger const& danger) { return raised_[static_cast<std::size_t>(&danger - dangers.data())]; }

    void raise(Danger const& danger, Span span) {
        if (!raised(danger)) {
            inquiry_.note(span, fmt::format("{}: {}", danger.name, danger.caution));
        }
        raised(danger) = true;
    }

    Inquiry& inquiry_;
    std::array<bool, dangers.size()> raised_{};
};

void judge(Inquiry& inquiry) {
    Walk walk{inquiry.plan};
    Judge judge{inquiry};
    for (auto const& session : inquiry.plan.sessions) {
        if (!inquiry.waived(session)) {
            judge.look_at(session);
            walk.once(session, {}, [&](Met const& met) { judge.look_at(met.item); });
        }
    }
}

} // namespace

Rule const caution{
    .name = "caution",
    .severity = Severity::note,
    .measures = "breath-holding, open water, cold water",
    .limit = "",
    .meaning =
        "\"pool open water\", or a word in a name or note that speaks of breath-holding, open water or "
        "cold, brings up the usual cautions, once each. Its words: hold your breath, hold the breath, hold "
        "breath, holding your breath, breath hold, breath-hold, breath holding, breath-holding, no breath, "
        "without breathing, hypoxic, without a breath, open water, lake, river, sea, ocean, surf, cold, ice, "
        "icy, winter swim.",
    .why = "breath-holding kills in pools too, and cold water takes the breath before the strength.",
    .source =
        "CDC, MMWR 22 May 2015 (breath-holding); American Red Cross and YMCA, statement of 27 May 2015; "
        "House 2017, J R Nav Med Serv 103:189-193 (cold shock)",
    .good = "",
    .bad = "25 crawl \"hold your breath\"",
    .mend = "keep the caution in mind; where it is kept: allow caution \"how\"",
    .judge = judge,
};

} // namespace lengthwise::check
