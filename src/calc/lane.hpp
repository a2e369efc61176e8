#pragma once

#include "calc/exact.hpp"
#include "units/distance.hpp"
#include "units/duration.hpp"

#include <cstdint>
#include <optional>

/// Several swimmers in one lane, one behind the other up one side and down the other, each at an even
/// pace through a rep. Formulas and worked figures: docs/time.md, "In one lane".
namespace lengthwise::calc {

/// A lane's usual gap between two who leave one after the other: common practice, no published source.
inline constexpr Duration usual_gap = Duration::seconds(5);

/// One swimmer's rep.
struct LaneSwim {
    Exact pace;        ///< milliseconds for a unit of distance, above 0
    Distance distance; ///< of the rep
};

/// Where one who leaves `gap` later catches one who left before, in units of distance from the start;
/// nothing where that one is not faster, or is not caught within both reps.
///
///     g / (b - a)          a: pace of the faster, b: of the slower
[[nodiscard]] std::optional<Exact> caught_after(LaneSwim const& ahead, LaneSwim const& behind, Duration gap);

/// Where the faster, who left before, overtakes, by the metres he has swum himself.
struct Laps {
    Exact first; ///< units of distance
    Exact step;  ///< from one time to the next
    std::int64_t times = 0;

    [[nodiscard]] Exact at(std::int64_t time) const { return first + step * Exact{time}; } ///< from 0
};

/// How often one who leaves first laps one who leaves `gap` later, in a pool of this length; nothing where he
/// never does within both reps. The m-th time the slower has swum x, the faster x + 2 L m:
///
///     x = (m * 2 L * a - g) / (b - a), from 0 on
[[nodiscard]] std::optional<Laps> laps(LaneSwim const& ahead, LaneSwim const& behind, Duration gap,
                                       Distance pool);

/// When the one who swims at this pace is back at the wall he started from.
[[nodiscard]] Duration lap_time(Exact const& pace, Distance pool);

} // namespace lengthwise::calc
