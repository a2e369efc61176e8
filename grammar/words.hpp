#pragma once

#include <bitset>
#include <cstddef>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

/// The only list of the notation's words and their synonyms. The parser, `tidy`,
/// the resolver, hints, `explain` and the docs all read it.
namespace lengthwise {

enum class Stroke : std::uint8_t { unsaid, crawl, back, breast, fly, medley, choice };
enum class Mode : std::uint8_t { unsaid, swim, kick, pull, tread, drill };
/// In order of effort; `exact` ways of saying it are EffortKind's (plan.hpp).
enum class EffortWord : std::uint8_t { easy, steady, threshold, hard, sprint };
enum class Gear : std::uint8_t { fins, paddles, buoy, board, snorkel, band, wetsuit };
inline constexpr int gear_words = 7;
enum class SectionKind : std::uint8_t { warm_up, drill, main, cool_down };
enum class RaceKind : std::uint8_t { super_sprint, sprint, standard, middle, long_course };

/// Every word the notation knows, under its canonical spelling. A word may serve
/// in several places (`threshold` is a setting and an effort, `drill` a heading
/// and a mode); the grammar decides by place.
enum class Word : std::uint8_t {
    none,
    // strokes, in the order of Stroke
    crawl,
    back,
    breast,
    fly,
    medley,
    choice,
    // modes, in the order of Mode; `drill` is also a heading
    swim,
    kick,
    pull,
    tread,
    drill,
    // efforts, in the order of EffortWord; `threshold` is also a setting, `sprint` a race
    easy,
    steady,
    threshold,
    hard,
    sprint,
    at,
    hold,
    rpe,
    // shapes
    build,
    descend,
    negative,
    split,
    // gear, in the order of Gear
    fins,
    paddles,
    buoy,
    board,
    snorkel,
    band,
    wetsuit,
    nothing,
    stops,
    // races beside sprint, and headings beside drill
    super_sprint,
    standard,
    middle,
    long_course,
    warm_up,
    main,
    cool_down,
    // statements and settings
    plan,
    race,
    swimmer,
    before,
    set,
    include,
    pool,
    rest,
    factor,
    limit,
    allow,
    week,
    session,
    // line openers and joints
    pause,
    lane,
    if_,
    time,
    use,
    with,
    as,
    broken,
    for_,
    on,
    off,
    per,
    in,
    reserve,
    about,
    plus,
    minus,
    longest,
    distance,
    from,
    open,
    water,
    needed,
    breaths,
    x,
    // selectors
    odds,
    evens,
    every,
    first,
    next,
    last,
    // units
    metres,
    yards,
    lengths,
    seconds,
    minutes,
    hours,
    // days
    mon,
    tue,
    wed,
    thu,
    fri,
    sat,
    sun,
    // first halves of two-word synonyms: front crawl, warm up, cool down, swim down
    front,
    warm,
    cool,
    up,
    down,
    count_
};

/// What `text` spells (ASCII case folded), synonyms included; Word::none if nothing.
/// One hash look-up, no allocation.
[[nodiscard]] Word find_word(std::string_view text);

/// The one spelling that `tidy` writes: Word::fly is "fly", Word::warm_up "warm-up".
[[nodiscard]] std::string_view spelling(Word word);

/// The place classes of the grammar that a word belongs to.
[[nodiscard]] constexpr bool is_between(Word word, Word low, Word high) {
    return word >= low && word <= high;
}
[[nodiscard]] constexpr bool is_stroke(Word w) {
    return is_between(w, Word::crawl, Word::choice);
}
[[nodiscard]] constexpr bool is_mode(Word w) {
    return is_between(w, Word::swim, Word::drill);
}
[[nodiscard]] constexpr bool is_effort(Word w) {
    return is_between(w, Word::easy, Word::sprint);
}
[[nodiscard]] constexpr bool is_gear(Word w) {
    return is_between(w, Word::fins, Word::wetsuit);
}
[[nodiscard]] constexpr bool is_day(Word w) {
    return is_between(w, Word::mon, Word::sun);
}
[[nodiscard]] constexpr bool is_heading(Word w) {
    return w == Word::drill || is_between(w, Word::warm_up, Word::cool_down);
}

namespace detail {
template <typename E>
constexpr E offset_from(Word word, Word first, int start) {
    return static_cast<E>(static_cast<int>(word) - static_cast<int>(first) + start);
}
constexpr Word back_to(int value, Word first, int start) {
    return static_cast<Word>(static_cast<int>(first) + value - start);
}
} // namespace detail

[[nodiscard]] constexpr Stroke stroke_of(Word w) {
    return detail::offset_from<Stroke>(w, Word::crawl, 1);
}
[[nodiscard]] constexpr Mode mode_of(Word w) {
    return detail::offset_from<Mode>(w, Word::swim, 1);
}
[[nodiscard]] constexpr EffortWord effort_of(Word w) {
    return detail::offset_from<EffortWord>(w, Word::easy, 0);
}
[[nodiscard]] constexpr Gear gear_of(Word w) {
    return detail::offset_from<Gear>(w, Word::fins, 0);
}
[[nodiscard]] constexpr Word word_of(Stroke s) {
    return detail::back_to(static_cast<int>(s), Word::crawl, 1);
}
[[nodiscard]] constexpr Word word_of(Mode m) {
    return detail::back_to(static_cast<int>(m), Word::swim, 1);
}
[[nodiscard]] constexpr Word word_of(EffortWord e) {
    return detail::back_to(static_cast<int>(e), Word::easy, 0);
}
[[nodiscard]] constexpr Word word_of(Gear g) {
    return detail::back_to(static_cast<int>(g), Word::fins, 0);
}

[[nodiscard]] SectionKind section_of(Word word);
[[nodiscard]] Word word_of(SectionKind kind);
[[nodiscard]] RaceKind race_of(Word word);
[[nodiscard]] Word word_of(RaceKind kind);

/// The nearest spelling to a mistyped word among those that `wanted` accepts:
/// Damerau-Levenshtein distance at most 2 (1 for words under 5 letters), ties to the
/// earlier in the table. Nothing if none is near.
[[nodiscard]] std::optional<std::string_view> nearest_word(std::string_view text, bool (*wanted)(Word));
using WordSet = std::bitset<static_cast<std::size_t>(Word::count_)>;
[[nodiscard]] std::optional<std::string_view> nearest_word(std::string_view text, WordSet const& wanted);

/// Damerau-Levenshtein distance (adjacent transpositions count one), ASCII case
/// folded, given up (limit + 1) once it passes `limit`.
[[nodiscard]] int edit_distance(std::string_view a, std::string_view b, int limit);

} // namespace lengthwise
