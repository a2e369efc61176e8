#pragma once

#include "check/inquiry.hpp"
#include "check/walk.hpp"

namespace lengthwise::check {

/// Visits each item of reps by distance, in sessions whose pool has a length and for which the rule is not
/// waived. What sessions share is met once a pool.
template <typename Visit>
void each_pool_item(Inquiry& inquiry, Visit visit) {
    Walk walk{inquiry.plan};
    for (auto const& session : inquiry.plan.sessions) {
        auto const& pool = inquiry.plan.pool_of(session);
        if (pool.has_length() && !inquiry.waived(session)) {
            walk.once(session, {session.pool, 0}, [&](Met const& met) {
                if (met.item.is_leaf() && !met.item.is_timed()) {
                    visit(met, pool);
                }
            });
        }
    }
}

} // namespace lengthwise::check
