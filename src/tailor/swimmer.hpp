#pragma once

#include "plan/plan.hpp"
#include "tailor/pool.hpp"
#include "units/pool.hpp"

#include <cstdint>
#include <optional>

/// What one swimmer swims of a plan: his share of every distance, at his pace.
namespace lengthwise::tailor {

/// The whole plan with this much of each rep, each session in its own pool, rounded as
/// tailor/amounts.hpp says; so is what `before` tells. Items, sessions and weeks keep their indices
/// and places in the text. Where a set is used in several pools it may have become another in each:
/// such a plan is for reckoning, not for spelling.
[[nodiscard]] plan::Plan share_of(plan::Plan const& plan, std::uint32_t percent);

/// share_of his plan with Plan::swimmers[swimmer] alone in it, his share used up. Where he has a
/// threshold, or his lane has one, it is his, and in force everywhere. Lane lines stay: he swims
/// those of his lane; one without a lane may swim in any.
[[nodiscard]] plan::Plan swum_by(plan::Plan const& plan, plan::Index swimmer);

/// One session for him alone, perhaps in another pool.
[[nodiscard]] Tailored fit(plan::Plan const& plan, plan::Index session, plan::Index swimmer,
                           std::optional<Pool> const& pool);

} // namespace lengthwise::tailor
