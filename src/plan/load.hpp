#pragma once

#include "plan/plan.hpp"

#include <cstdint>

namespace lengthwise::plan {

/// What an item weighs against the limits of a session. Sums and products stick at
/// the top of 64 bits instead of wrapping, so a limit is passed, never missed.
struct Load {
    std::int64_t units = 0; ///< of distance
    std::int64_t reps = 0;
    std::int64_t ms = 0; ///< of what is said in times: timed reps, breaks, send-offs, rest at its high end
    int height = 0;      ///< parentheses and uses inside one another

    void add(Load const& more);
    [[nodiscard]] Load times(std::int64_t rounds) const;
};

/// Of reps or a ladder.
[[nodiscard]] Load load_of(Plan const& plan, Item const& reps, Terms const& terms);

} // namespace lengthwise::plan
