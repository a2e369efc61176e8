#include "report/deck_clock_words.hpp"

#include "report/choose.hpp"
#include "report/time_words.hpp"
#include "report/width.hpp"
#include "units/spell.hpp"

#include <fmt/core.h>

#include <algorithm>
#include <limits>

namespace lengthwise::report {
namespace {

constexpr auto no_limit = std::numeric_limits<std::size_t>::max();
constexpr std::int64_t minute = Duration::minutes(1).ms();
constexpr std::int64_t day = 1440; // minutes

std::string on_the_wall(TimeOfDay from, std::int64_t minutes) {
    return spell::time_of_day({static_cast<std::uint16_t>((from.minutes + minutes) % day)});
}

/// "07:36–07:42".
std::string end_between(TimeOfDay from, Band<Duration> const& takes, bool ascii) {
    auto const low = takes.low.ms() / minute;
    auto const high = (takes.high.ms() + minute - 1) / minute;
    auto const first = on_the_wall(from, low);
    return low == high ? first : first + (ascii ? "-" : "–") + on_the_wall(from, high);
}

/// Lanes of which the same is said, in the order of their first.
struct Same {
    std::string text;
    calc::LaneSet lanes;
};

template <typename Say>
std::vector<Same> by_text(std::vector<DeckPace> const& paces, Say say) {
    std::vector<Same> all;
    for (auto const& pace : paces) {
        auto const text = say(pace);
        auto found = std::ranges::find(all, text, &Same::text);
        if (found == all.end()) {
            found = all.insert(found, Same{text, {}});
        }
        found->lanes.set(static_cast<std::size_t>(pace.lane));
    }
    return all;
}

class ClockWords {
  public:
    ClockWords(Deck const& deck, bool ascii) : deck_(deck), clock_(deck.clock), ascii_(ascii) {}

    [[nodiscard]] std::string pace() const {
        auto const all = by_text(clock_.shown, [&](DeckPace const& pace) {
            return pace.threshold ? pace_text(*pace.threshold, ascii_) : std::string{};
        });
        std::vector<std::string> texts;
        for (auto const& same : all) {
            bool const whose = all.size() > 1 || (deck_.lanes.front().lane == 0 && !same.lanes.test(0));
            texts.push_back(
                same.text.empty() ? "" : same.text + (whose ? " in " + lanes_label(same.lanes, ascii_) : ""));
        }
        auto const said = fold_parts(texts, ", ", no_limit);
        return said.empty() ? "" : "clock at " + said;
    }

    /// "lane 1 ends 07:36–07:42, lane 2 07:39–07:45; slot to 07:45"
    [[nodiscard]] std::string ends() const {
        auto const& paces = clock_.others.empty() ? clock_.shown : clock_.others;
        std::vector<std::string> texts;
        for (auto const& same : by_text(paces, [&](DeckPace const& pace) { return end(pace); })) {
            if (!same.text.empty()) {
                texts.push_back(end_of(same, texts.empty()));
            }
        }
        auto text = fold_parts(texts, ", ", no_limit);
        return text.empty() || !clock_.slot ? text : text + "; " + slot();
    }

    [[nodiscard]] std::string why_not() const {
        if (clock_.too_long) {
            return "too long to be timed, so no clock";
        }
        return clock_.runs ? "no threshold, so no clock from ? on" : "no threshold, so no clock";
    }

  private:
    [[nodiscard]] std::string end(DeckPace const& pace) const {
        if (!pace.takes) {
            return {};
        }
        return clock_.from ? end_between(*clock_.from, *pace.takes, ascii_)
                           : band_minutes(*pace.takes, ascii_) + " min";
    }

    /// The verb stands with the first alone.
    [[nodiscard]] std::string end_of(Same const& same, bool first) const {
        std::string const verb = clock_.from ? "end" : "take";
        auto const s = same.lanes.count() == 1 ? "s " : " ";
        auto const who = same.lanes.test(0) ? std::string{} : lanes_label(same.lanes, ascii_) + " ";
        return who + (first ? verb + s : "") + same.text;
    }

    [[nodiscard]] std::string slot() const {
        return clock_.from ? "slot to " + on_the_wall(*clock_.from, clock_.slot->ms() / minute)
                           : "slot " + slot_minutes(*clock_.slot);
    }

    Deck const& deck_;
    DeckClock const& clock_;
    bool ascii_;
};

} // namespace

std::string moment(DeckClock const& clock, Duration after) {
    return clock.from ? on_the_wall(*clock.from, after.ms() / minute)
                      : spell::clock(Duration::seconds(after.ms() / 1000));
}

std::string end_moment(DeckClock const& clock, Duration after) {
    return clock.from ? on_the_wall(*clock.from, minutes(after))
                      : spell::clock(Duration::seconds((after.ms() + 500) / 1000));
}

std::string moments_head(DeckClock const& clock) {
    return clock.from ? "clock" : "after";
}

std::string clock_pace(Deck const& deck, bool ascii) {
    return ClockWords{deck, ascii}.pace();
}

std::vector<std::string> clock_notes(Deck const& deck, bool ascii) {
    ClockWords const words{deck, ascii};
    auto const& clock = deck.clock;
    bool const known =
        std::ranges::all_of(clock.shown, [](DeckPace const& pace) { return pace.takes.has_value(); });
    std::vector<std::string> notes{words.ends()};
    if (!known) {
        notes.push_back(words.why_not());
    }
    auto const assumes = [](DeckPace const& pace) { return pace.reserve_assumed; };
    if (clock.runs &&
        (std::ranges::any_of(clock.shown, assumes) || std::ranges::any_of(clock.others, assumes))) {
        notes.emplace_back(reserve_assumed);
    }
    if (clock.turned_round) {
        notes.push_back(fits_text(*clock.slot, clock.fits, deck.pool.unit));
    }
    return notes;
}

} // namespace lengthwise::report
