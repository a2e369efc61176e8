#include "calc/factors.hpp"

#include "calc/band.hpp"

#include <algorithm>

namespace lengthwise::calc {
namespace {

struct Entry {
    Word word = Word::none;
    Quarters low = 100; ///< in percent here
    Quarters expected = 100;
    Quarters high = 100;
};

/// Percent of the time that crawl at threshold pace takes. "Practice" is common practice
/// without a published source.
constexpr std::array table{
    // Effort.
    Entry{Word::easy, 110, 115, 120},   // practice
    Entry{Word::steady, 104, 107, 110}, // practice
    // Wakayoshi et al. 1993, Eur J Appl Physiol 66:90-95: lactate is steady at 98 to 102 % of
    // critical speed. Dekerle et al. 2002, IJSM 23:93-98: 30 minutes are swum 3.2 % slower.
    Entry{Word::threshold, 98, 100, 103},
    Entry{Word::hard, 91, 95, 98}, // practice
    // Practice. World records against their own critical speed, with dives: 50 m 71-76, 100 m 79-83
    // (computed).
    Entry{Word::sprint, 78, 85, 92},

    // Stroke. Expected: world records of 100 and 200 m in back, breast and fly against crawl (computed:
    // 110, 123, 107); the ends, and adults' fly, are practice. Medley and choice follow from these.
    Entry{Word::crawl, 100, 100, 100},
    Entry{Word::back, 105, 110, 120},
    Entry{Word::breast, 110, 123, 135},
    Entry{Word::fly, 107, 115, 125},

    // Mode.
    Entry{Word::swim, 100, 100, 100},
    Entry{Word::kick, 143, 161, 182}, // practice: 0.70, 0.62 and 0.55 of the speed of crawl
    // Silveira et al. 2017, IJSPP 12:728-735: the legs add -1 to 11 % of speed.
    Entry{Word::pull, 99, 105, 111},
    Entry{Word::tread, 100, 100, 100}, // covers no distance, so nothing asks for it
    Entry{Word::drill, 120, 135, 150}, // practice

    // Gear.
    // de Matos et al. 2023, Front Physiol 14:1174090: faster with fins; by how much is practice.
    Entry{Word::fins, 83, 87, 91},
    // Gourgoulis et al. 2006: faster with paddles; by how much is practice.
    Entry{Word::paddles, 95, 97, 98},
    Entry{Word::buoy, 97, 100, 102}, // practice
    Entry{Word::board, 100, 100, 100},
    Entry{Word::snorkel, 100, 100, 100},
    // High: Homoto et al. 2024, Sports Biomech, arms alone; the rest is practice.
    Entry{Word::band, 105, 110, 118},
    // Gay et al. 2022, Physiologia 2:198-230: 3.2 to 12.9 % faster; Parsons & Day 1986, Br J Sports Med
    // 20:129-131; Toussaint et al. 1989, MSSE 21:325-328.
    Entry{Word::wetsuit, 89, 94, 97},
};

constexpr Entry fins_on_kick{Word::fins, 65, 70, 78}; // as fins

/// `rpe` where it is none of the effort words; practice.
constexpr std::array<Entry, 5> perceived{{
    {Word::rpe, 120, 125, 130}, // 1
    {Word::rpe, 115, 120, 125}, // 2
    {Word::rpe, 107, 111, 115}, // 4
    {Word::rpe, 101, 103, 106}, // 6
    {Word::rpe, 85, 90, 95},    // 9
}};

constexpr Band<Quarters> quarters(Entry const& percent) {
    return {percent.low * 4, percent.expected * 4, percent.high * 4};
}

Band<Exact> shares(Band<Quarters> const& band) {
    return figurewise([](Quarters share) { return Exact{share, whole_share}; }, band);
}

/// rpe 3, 5, 7, 8 and 10 are effort words; none for the others.
Word effort_of_rpe(std::uint32_t number) {
    constexpr std::array<Word, 11> words{Word::none, Word::none,   Word::none,  Word::easy,
                                         Word::none, Word::steady, Word::none,  Word::threshold,
                                         Word::hard, Word::none,   Word::sprint};
    return number < words.size() ? words[number] : Word::none;
}

Entry const& perceived_as(std::uint32_t number) {
    return number <= 2   ? perceived[number <= 1 ? 0 : 1]
           : number <= 4 ? perceived[2]
           : number <= 6 ? perceived[3]
                         : perceived[4];
}

} // namespace

std::size_t Factors::place(Word word) {
    constexpr auto others =
        static_cast<std::size_t>(Word::sprint) - static_cast<std::size_t>(Word::crawl) + 1;
    static_assert(others + gear_words == words);
    return is_gear(word) ? others + static_cast<std::size_t>(gear_of(word))
                         : static_cast<std::size_t>(word) - static_cast<std::size_t>(Word::crawl);
}

Factors::Factors(std::vector<plan::Factor> const& nearest) : fins_on_kick_(quarters(fins_on_kick)) {
    for (auto const& entry : table) {
        of(entry.word) = quarters(entry);
    }
    for (auto const& factor : nearest) {
        of(factor.word) = exactly(static_cast<Quarters>(factor.percent * 4));
        said_[place(factor.word)] = true;
    }
    if (said(Word::fins)) {
        fins_on_kick_ = of(Word::fins);
    }
    derive_choice_and_medley();
}

/// Some swim the choice as crawl, some as breast; a medley is a quarter of each.
void Factors::derive_choice_and_medley() {
    if (!said(Word::choice)) {
        auto const crawl = of(Word::crawl).expected;
        auto const breast = of(Word::breast).expected;
        of(Word::choice) = {std::min(crawl, breast), (crawl + breast) / 2, std::max(crawl, breast)};
    }
    if (!said(Word::medley)) {
        of(Word::medley) = figurewise([](auto... strokes) { return (strokes + ...) / 4; }, of(Word::fly),
                                      of(Word::back), of(Word::breast), of(Word::crawl));
    }
}

Band<Exact> Factors::effort(plan::Effort const& effort) const {
    using Kind = plan::Effort::Kind;
    switch (effort.kind) {
    case Kind::unsaid:
        return shares(of(Word::steady));
    case Kind::word:
        return shares(of(word_of(effort.word)));
    case Kind::percent: // of threshold speed
        return exactly(Exact{100, effort.number});
    case Kind::rpe: {
        auto const word = effort_of_rpe(effort.number);
        return shares(word == Word::none ? quarters(perceived_as(effort.number)) : of(word));
    }
    case Kind::pace:
    case Kind::hold:
        break;
    }
    return exactly(Exact{1});
}

Band<Exact> Factors::form(plan::Manner const& manner) const {
    auto product = exactly(Exact{1});
    auto const times = [&](Band<Quarters> const& band) {
        if (band != exactly(whole_share)) {
            product = figurewise([](Exact const& a, Exact const& b) { return a * b; }, product, shares(band));
        }
    };
    auto const& gear = manner.gear;
    auto const kicks = manner.mode == Mode::kick;
    auto const held = gear.has(Gear::buoy) || gear.has(Gear::band); // the legs are still anyway
    if (!kicks) {
        times(of(word_of(manner.stroke == Stroke::unsaid ? Stroke::crawl : manner.stroke)));
    }
    if (manner.mode != Mode::pull || !held || said(Word::pull)) {
        times(of(word_of(manner.mode == Mode::unsaid ? Mode::swim : manner.mode)));
    }
    for (int i = 0; i < gear_words; ++i) {
        auto const word = static_cast<Gear>(i);
        auto const falls_away =
            (kicks && (word == Gear::paddles || word == Gear::buoy || word == Gear::band)) ||
            (word == Gear::band && gear.has(Gear::buoy));
        if (gear.has(word) && !falls_away) {
            times(kicks && word == Gear::fins ? fins_on_kick_ : of(word_of(word)));
        }
    }
    return product;
}

std::vector<plan::Factor> factors_of(plan::Plan const& plan, plan::Session const& session) {
    std::vector<plan::Factor> nearest;
    for (auto const scope : {session.settings, plan.weeks[session.week].settings, plan.file_settings}) {
        for (auto const& factor : plan.settings[scope].factors) {
            if (std::ranges::none_of(nearest, [&](auto const& known) { return known.word == factor.word; })) {
                nearest.push_back(factor);
            }
        }
    }
    return nearest;
}

} // namespace lengthwise::calc
