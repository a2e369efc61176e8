#pragma once

#include "units/distance.hpp"
#include "units/pool.hpp"

#include <cstdint>
#include <optional>
#include <vector>

/// The arithmetic of making a session fit: one rep, its parts, its pieces. All exact.
namespace lengthwise::tailor {

/// What a session is made to fit: another pool, or a share of itself, or both.
struct Fit {
    Pool from;                   ///< where it was written for
    Pool to;                     ///< where it is swum; the same for a share alone
    std::uint32_t percent = 100; ///< how much of each rep, at least 1
    Distance race;               ///< reps of this and above are rounded up; 0: there is no race

    /// Nothing to do.
    [[nodiscard]] bool idle() const { return from == to && percent == 100; }
};

/// A rep's distance today: the nearest lap, the smaller of two as near, at least one. A rep that
/// ends at the far wall of its own pool (4 x 25) takes the nearest length instead. Reps of race
/// distance and above are rounded up. Without a pool length: the nearest whole unit. At most
/// limits::rep_km, as a rep that is read.
[[nodiscard]] Distance rep(Distance written, Fit const& fit);

/// How long the pieces of a broken rep are when `from` becomes `to`: in proportion, whole lengths
/// (laps where they were), and no more of them than before. Nothing when one length is all there is.
[[nodiscard]] std::optional<Distance> piece(Distance written, Distance from, Distance to, Fit const& fit);

/// The parts of a split when `from` becomes `to`: in proportion, the last takes the remainder, and
/// together they go a whole number of times into the rep. They stay whole lengths, half lengths or
/// whole units where they were. Nothing when the rep is too short for so many.
[[nodiscard]] std::optional<std::vector<Distance>> parts(std::vector<Distance> const& written, Distance from,
                                                         Distance to, Fit const& fit);

} // namespace lengthwise::tailor
