#pragma once

#include "grammar/words.hpp"
#include "units/distance.hpp"
#include "units/duration.hpp"
#include "units/range.hpp"

#include <cstdint>
#include <string_view>

/// How a rep is swum and what follows it: the classes of modifiers.
namespace lengthwise::plan {

/// A name or note, without quotes and escapes. Views the bundle's text or Plan::kept.
using Text = std::string_view;

struct Effort {
    enum class Kind : std::uint8_t {
        unsaid,
        word,    ///< `word`; with `threshold` a `shift` may stand
        percent, ///< `at 95%`: `number` percent of threshold speed
        pace,    ///< `at 1:55 per 100`: `time` for `per`, exactly
        hold,    ///< `hold 0:52`: `time` for the rep, exactly
        rpe      ///< `rpe 7`: `number`, 1 to 10
    };
    Kind kind = Kind::unsaid;
    EffortWord word = EffortWord::steady;
    std::uint32_t number = 0;
    Duration shift; ///< of `threshold plus 5s` (above 0) or `minus` (below), per 100 of the pool's unit
    Duration time;
    Distance per;

    [[nodiscard]] constexpr bool said() const { return kind != Kind::unsaid; }
    friend constexpr bool operator==(Effort const&, Effort const&) = default;
};

/// Gear words as a set. `said` with no word is `with nothing`.
struct GearSet {
    std::uint8_t words = 0;
    bool said = false;

    [[nodiscard]] constexpr bool has(Gear gear) const { return (words >> static_cast<int>(gear) & 1) != 0; }
    constexpr void add(Gear gear) {
        words = static_cast<std::uint8_t>(words | 1U << static_cast<int>(gear));
        said = true;
    }
    friend constexpr bool operator==(GearSet const&, GearSet const&) = default;
};

/// The four classes that come down from heading, group and item to a rep. Unsaid
/// stroke and effort stay unsaid (counted as "unsaid", timed as crawl, steady);
/// an unsaid mode is swim, unsaid gear none.
struct Manner {
    Stroke stroke = Stroke::unsaid;
    Mode mode = Mode::unsaid;
    GearSet gear;
    Text drill; ///< the drill's name, part of its mode
    Effort effort;

    friend constexpr bool operator==(Manner const&, Manner const&) = default;
};

/// `inner` where it says something, class by class and whole; else `outer`.
[[nodiscard]] constexpr Manner over(Manner const& outer, Manner const& inner) {
    auto manner = outer;
    if (inner.stroke != Stroke::unsaid) {
        manner.stroke = inner.stroke;
    }
    if (inner.mode != Mode::unsaid) {
        manner.mode = inner.mode;
        manner.drill = inner.drill;
    }
    if (inner.gear.said) {
        manner.gear = inner.gear;
    }
    if (inner.effort.said()) {
        manner.effort = inner.effort;
    }
    return manner;
}

struct Shape {
    enum class Kind : std::uint8_t { none, build, descend, negative_split };
    Kind kind = Kind::none;
    std::uint16_t first = 0; ///< `descend 1-4`: 1 and 4; both 0 for bare `descend`
    std::uint16_t last = 0;

    friend constexpr bool operator==(Shape const&, Shape const&) = default;
};

/// What lies between a rep and the next.
struct Recovery {
    enum class Kind : std::uint8_t {
        none,
        rest,      ///< `rest`, a single time or a range
        as_needed, ///< `rest as needed`
        breaths,   ///< `rest 3 breaths`: `number`
        on         ///< send-offs: `steps` of Plan::send_offs from `first_step`; one step holds for every rep
    };
    Kind kind = Kind::none;
    std::uint32_t number = 0;
    std::uint32_t first_step = 0;
    std::uint32_t steps = 0;
    Range<Duration> rest;
};

} // namespace lengthwise::plan
