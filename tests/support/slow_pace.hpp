#pragma once

#include "plan/plan.hpp"

#include <array>
#include <cstdint>
#include <optional>
#include <vector>

/// The pace model once more, word by word from docs/time.md and without a look at
/// src/calc: slow, simple, in fractions of any size. To hold the fast one against.
namespace lengthwise::support {

/// Low, expected, high in milliseconds.
using Three = std::array<std::int64_t, 3>;

/// The swimming of one part, all its repeats together.
struct SlowPart {
    plan::Manner manner;
    std::optional<Three> swim;
    // Once, by expected figures; only where a pace is known:
    std::int64_t length = 0; ///< in the rep's own unit
    std::int64_t repeats = 1;
    double ms = 0;
    double goes = 0;      ///< Distance units, of timed reps not rounded
    double form = 1;      ///< stroke, mode and gear
    bool emptied = false; ///< asks for more than the whole reserve
};

struct SlowRep {
    std::optional<Three> swim; ///< with breaks
    std::int64_t breaks = 0;
    std::optional<std::int64_t> covered; ///< of timed reps: Distance units
    std::vector<SlowPart> parts;
    double rate = 0;    ///< ms for a Distance unit at threshold; 0: no pace
    double reserve = 0; ///< D', Distance units
};

[[nodiscard]] SlowRep slow_rep(plan::Plan const& plan, plan::Session const& session, int lane,
                               plan::Terms const& terms, std::int64_t amount, bool timed);

} // namespace lengthwise::support
