#include "compose/session_time.hpp"

#include "calc/factors.hpp"

#include <algorithm>

namespace lengthwise::compose {

namespace {

using calc::Exact;

/// Rests that no shape passes, in milliseconds a lap.
constexpr std::int64_t short_rest = 20'000; ///< warm-up and cool-down
constexpr std::int64_t rest = 30'000;       ///< drill and main
constexpr std::int64_t behind_rep = 60'000; ///< once, behind the long rep

/// Laps that a line may leave over for the cool-down, and a second one for the warm-up.
constexpr int most_spare = 2;

/// The high end of a word's factor, as docs/time.md has it.
Exact slow_end(EffortWord word) {
    plan::Effort effort;
    effort.kind = plan::Effort::Kind::word;
    effort.word = word;
    return calc::Factors{}.effort(effort).high;
}

Exact slow_end(Mode mode) {
    plan::Manner manner;
    manner.mode = mode;
    return calc::Factors{}.form(manner).high;
}

Exact slow_end(Stroke stroke) {
    plan::Manner manner;
    manner.stroke = stroke;
    return calc::Factors{}.form(manner).high;
}

Duration rounded_up(Exact const& ms) {
    return Duration::ms(-(Exact{0} - ms).floor());
}

} // namespace

SessionTimes::SessionTimes(Pool const& pool, Duration threshold)
    : pool_(pool), lap_(Exact{lap(pool).units(), 100 * one(pool.unit).units()} * Exact{threshold.ms()}) {
    auto const easy = lap_ * slow_end(EffortWord::easy);
    auto const drill = slow_end(Mode::drill);
    easy_ = easy.reduced();
    choice_ = (easy * slow_end(Stroke::choice)).reduced();
    kick_ = (easy * slow_end(Mode::kick)).reduced();
    // Half a lap of drill, half of it swum.
    drilled_ = (lap_ * slow_end(EffortWord::steady) * (drill + Exact{1}) / Exact{2}).reduced();
}

Exact SessionTimes::with_spare(DaySizes const& sizes, DayKind kind, int rep, int spare) const {
    auto const warm = sizes.warm_up + (spare == 2 ? 1 : 0);
    auto const parts = warm_up(warm);
    auto const warm_up_time =
        choice_ * parts.choice + kick_ * parts.one_thing + easy_ * parts.build + Exact{short_rest * warm};
    auto const drill_time = (drilled_ + Exact{rest}) * sizes.drill;
    auto const main = sizes.main - spare;
    auto const main_time = kind == DayKind::long_day
                               ? (choice_ + Exact{rest}) * (main - rep) + easy_ * rep + Exact{behind_rep}
                               : (easy_ + Exact{rest}) * main;
    auto const cool = sizes.cool_down + (spare > 0 ? 1 : 0);
    return warm_up_time + drill_time + main_time + (choice_ + Exact{short_rest}) * cool;
}

Duration SessionTimes::of(DayKind kind, int laps, int rep) const {
    auto const sizes = day_sizes(kind, laps, rep, pool_);
    auto most = with_spare(sizes, kind, rep, 0);
    auto const bound = sizes.main - (kind == DayKind::long_day ? rep : 1); // these are never spared
    for (auto spare = 1; spare <= std::min(most_spare, bound); ++spare) {
        auto const time = with_spare(sizes, kind, rep, spare);
        most = most < time ? time : most;
    }
    return rounded_up(most);
}

int SessionTimes::largest(DayKind kind, int rep, Duration slot, int most) const {
    auto const least = kind == DayKind::long_day ? rep + 3 : 4;
    auto const swum = (Exact{slot.ms()} / easy_).floor(); // no lap takes less than an easy one
    auto fits = least - 1;
    for (auto too_long = std::max(static_cast<int>(std::min<std::int64_t>(most, swum)), fits) + 1;
         too_long - fits > 1;) {
        auto const middle = fits + (too_long - fits) / 2;
        (of(kind, middle, rep) <= slot ? fits : too_long) = middle;
    }
    return fits;
}

} // namespace lengthwise::compose
