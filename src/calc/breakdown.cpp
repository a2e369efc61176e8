#include "calc/breakdown.hpp"

#include "calc/reps.hpp"

#include <algorithm>
#include <array>

namespace lengthwise::calc {
namespace {

constexpr std::array<std::string_view, 5> names{"stroke", "mode", "effort", "gear", "section"};

constexpr std::uint32_t unsaid = 0xFF'0000;
constexpr int kind_bits = 16;

std::uint32_t effort_key(plan::Effort const& effort) {
    using Kind = plan::Effort::Kind;
    switch (effort.kind) {
    case Kind::unsaid:
        return unsaid;
    case Kind::word:
        return static_cast<std::uint32_t>(effort.word);
    case Kind::percent:
    case Kind::rpe:
        return static_cast<std::uint32_t>(effort.kind) << kind_bits | effort.number;
    case Kind::pace:
    case Kind::hold:
        return static_cast<std::uint32_t>(effort.kind) << kind_bits;
    }
    return unsaid;
}

std::string effort_word(std::uint32_t key) {
    using Kind = plan::Effort::Kind;
    auto const number = std::to_string(key & 0xFFFFU);
    switch (static_cast<Kind>(key >> kind_bits)) {
    case Kind::percent:
        return "at " + number + "%";
    case Kind::rpe:
        return "rpe " + number;
    case Kind::pace:
        return "at a pace";
    case Kind::hold:
        return "hold";
    default:
        return std::string{spelling(word_of(static_cast<EffortWord>(key)))};
    }
}

std::string gear_words_of(std::uint32_t key) {
    plan::GearSet const gear{static_cast<std::uint8_t>(key), true};
    std::string words;
    for (int i = 0; i < gear_words; ++i) {
        if (gear.has(static_cast<Gear>(i))) {
            words.append(words.empty() ? "" : ", ").append(spelling(word_of(static_cast<Gear>(i))));
        }
    }
    return words.empty() ? "nothing" : words;
}

/// What one rep has of one word.
struct Portion {
    std::uint32_t key = 0;
    std::int64_t amount = 0; ///< Distance units or milliseconds
    bool treads = true;
};

/// A rep by its words: one portion, or those of its parts, which may repeat.
std::vector<Portion> portions(plan::Plan const& plan, plan::Terms const& terms, By by, std::int64_t rep) {
    if (terms.parts.empty() || by == By::gear) {
        return {{key_of(by, terms.manner), rep, only_treads(plan, terms)}};
    }
    std::vector<Portion> result;
    std::int64_t once = 0;
    for (auto i = terms.parts.first; i < terms.parts.end(); ++i) {
        auto const& part = plan.parts[i];
        auto const key = key_of(by, part.manner);
        auto found = std::find_if(result.begin(), result.end(), [&](auto const& p) { return p.key == key; });
        if (found == result.end()) {
            found = result.insert(result.end(), Portion{key, 0, true});
        }
        found->amount += part.amount;
        found->treads = found->treads && part.manner.mode == Mode::tread;
        once += part.amount;
    }
    for (auto& portion : result) {
        portion.amount *= rep / once;
    }
    return result;
}

Totals of_portion(Portion const& portion, bool timed, Pool const& pool) {
    Totals totals;
    totals.reps = 1;
    if (timed) {
        totals.timed = Duration::ms(portion.amount);
        totals.timed_reps = 1;
        totals.treading_reps = portion.treads ? 1 : 0;
    } else {
        totals.distance = Distance::units(portion.amount);
        totals.lengths = lengths_of(totals.distance, pool).value_or(0);
    }
    return totals;
}

} // namespace

std::uint32_t key_of(By by, plan::Manner const& manner) {
    switch (by) {
    case By::stroke:
        return manner.stroke == Stroke::unsaid ? unsaid : static_cast<std::uint32_t>(manner.stroke);
    case By::mode:
        return static_cast<std::uint32_t>(manner.mode == Mode::unsaid ? Mode::swim : manner.mode);
    case By::effort:
        return effort_key(manner.effort);
    case By::gear:
        return manner.gear.words;
    case By::section:
        break; // no property of a rep
    }
    return unsaid;
}

std::optional<By> find_by(std::string_view word) {
    auto const found = std::find(names.begin(), names.end(), word);
    return found == names.end() ? std::nullopt : std::optional{static_cast<By>(found - names.begin())};
}

std::string_view spelling(By by) {
    return names[static_cast<std::size_t>(by)];
}

Totals& Breakdown::of(std::uint32_t key) {
    auto const at = std::lower_bound(words.begin(), words.end(), key,
                                     [](WordTotals const& word, std::uint32_t k) { return word.key < k; });
    if (at != words.end() && at->key == key) {
        return at->totals;
    }
    return words.insert(at, WordTotals{key, {}})->totals;
}

void Breakdown::add(Breakdown const& more, std::int64_t rounds) {
    for (auto const& word : more.words) {
        of(word.key).add(word.totals, rounds);
    }
}

std::string word_of(By by, std::uint32_t key) {
    if (key == unsaid) {
        return "unsaid";
    }
    switch (by) {
    case By::stroke:
        return std::string{spelling(lengthwise::word_of(static_cast<Stroke>(key)))};
    case By::mode:
        return std::string{spelling(lengthwise::word_of(static_cast<Mode>(key)))};
    case By::effort:
        return effort_word(key);
    case By::gear:
        return gear_words_of(key);
    case By::section:
        return std::string{spelling(lengthwise::word_of(static_cast<SectionKind>(key)))};
    }
    return {};
}

void BreakdownReader::Measure::add(plan::Plan const& plan, plan::Item const& item, Pool const& pool,
                                   std::int64_t rounds, Breakdown& sum) const {
    each_rep(plan, item, [&](std::int64_t rep, plan::Terms const& terms, std::int64_t times) {
        auto const shares = portions(plan, terms, by, rep);
        for (auto const& portion : shares) {
            auto totals = of_portion(portion, item.is_timed(), pool);
            if (shares.size() == 1 && !item.is_timed()) {
                totals.longest = unbroken(plan, terms, totals.distance);
            }
            sum.of(portion.key).add(totals, times * rounds);
        }
    });
}

BreakdownReader::BreakdownReader(plan::Plan const& plan, By by, int lane)
    : plan_(plan), by_(by), lane_(lane), walk_(plan, Measure{by}), sections_(plan) {}

void BreakdownReader::add_session(plan::Session const& session, Breakdown& breakdown) {
    for (auto i = session.sections.first; i < session.sections.end(); ++i) {
        auto const& section = plan_.sections[i];
        for (plan::Item const& item : items_from(plan_, section.body)) {
            if (item.optional || !item.is_swum() || !item.swum_by(lane_)) {
                continue;
            }
            if (by_ == By::section) {
                breakdown.of(static_cast<std::uint32_t>(section.kind)).add(sections_.of_item(session, item));
            } else {
                walk_.add(item, session.pool, 1, breakdown);
            }
        }
    }
}

} // namespace lengthwise::calc
