#pragma once

#include "plan/plan.hpp"
#include "units/pool.hpp"

#include <cstdint>
#include <optional>
#include <vector>

/// A session made to fit today: another pool, one swimmer's share. The plan itself stays as
/// it was written.
namespace lengthwise::tailor {

/// What is asked for; nothing asked leaves everything as it is.
struct Wanted {
    std::optional<Pool> pool{}; ///< swum in a pool of this length
    std::uint32_t percent = 100;
};

struct Tailored {
    plan::Plan plan;                  ///< the session alone, in its week; its index is 0
    std::vector<plan::Index> changed; ///< its lines that read otherwise now, ascending; an item has the
                                      ///< same index in both plans, so what it was stands in the other
    std::uint32_t percent = 100;      ///< of each rep, as asked
    std::vector<plan::Index> timed;   ///< those of them that keep a send-off, or a time to hold

    [[nodiscard]] plan::Session const& session() const { return plan.sessions.front(); }
};

/// Plan::sessions[session] made to fit: reps, parts and pieces as tailor/amounts.hpp says. Counts,
/// rest, send-offs and timed reps stay. Amounts whose figures stay (100 in 25 m, 100 in 25 yd)
/// read the same and are not called changed.
[[nodiscard]] Tailored fit(plan::Plan const& plan, plan::Index session, Wanted const& wanted);

} // namespace lengthwise::tailor
