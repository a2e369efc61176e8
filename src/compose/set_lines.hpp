#pragma once

#include "compose/place.hpp"

#include <cstdlib>
#include <optional>
#include <utility>
#include <vector>

/// How each set is written: for main_sets.cpp alone, which says what they are and when they fit.
namespace lengthwise::compose::sets {

using Lines = std::optional<std::vector<Line>>;

inline constexpr int rest_of_rounds = 40; ///< s behind a round, and behind a rep that starts hard
inline constexpr int rest_of_race = 20;   ///< s

/// A set of exactly so many laps.
struct Wish {
    Laps laps;
    Place const& place;
    int visit;

    [[nodiscard]] int rest() const { return rest_at(visit); }
    [[nodiscard]] bool again() const { return visit > 1; }
    [[nodiscard]] Laps longest() const { return place.rep; }
};

[[nodiscard]] inline Lines one(Line line) {
    return std::vector{std::move(line)};
}

/// The candidate whose value is nearest to `wish`, the earlier one of two; only those that fit.
template <typename Candidates, typename Fits, typename Value>
auto nearest(Candidates const& candidates, int wish, Fits fits, Value value) {
    auto best = candidates.end();
    for (auto at = candidates.begin(); at != candidates.end(); ++at) {
        if (fits(*at) &&
            (best == candidates.end() || std::abs(value(*at) - wish) < std::abs(value(*best) - wish))) {
            best = at;
        }
    }
    return best;
}

[[nodiscard]] inline Line rounds_of(int count, std::vector<Rep> round, int rest) {
    Line line;
    line.form = Line::Form::rounds;
    line.count = count;
    line.reps = std::move(round);
    line.rest = rest;
    return line;
}

// With a change of speed.
Lines build(Wish const& wish);
Lines rounds(Wish const& wish); ///< a longer rep and a shorter, quicker one
Lines alternate(Wish const& wish);
Lines descend(Wish const& wish);
Lines start(Wish const& wish);  ///< off as at a start, then into one's own rhythm
Lines change(Wish const& wish); ///< three speeds in one rep; the next time the quick one first

// At one speed.
Lines ladder(Wish const& wish); ///< an open one goes down the next time
Lines pieces(Wish const& wish); ///< the coming longest swim, broken; else a few equal ones
Lines pulled(Wish const& wish);
Lines threshold(Wish const& wish);
Lines negative(Wish const& wish);
Lines sight(Wish const& wish);
Lines count(Wish const& wish);
Lines race(Wish const& wish);

} // namespace lengthwise::compose::sets
