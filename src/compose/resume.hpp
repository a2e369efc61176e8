#pragma once

#include "compose/ramp.hpp"
#include "compose/request.hpp"
#include "compose/text.hpp"
#include "plan/plan.hpp"

#include <optional>
#include <string>
#include <variant>
#include <vector>

/// A plan goes on otherwise than it was meant to: what is asked for behind one of its weeks.
namespace lengthwise::compose {

/// What is said instead of what the plan has.
struct Instead {
    std::optional<Date> from{};
    std::optional<std::vector<std::uint8_t>> days{};
    std::optional<TimeOfDay> at{};
    std::optional<Duration> slot{};
    std::optional<Pool> pool{};
    std::optional<plan::Threshold> threshold{};
};

/// Why a plan cannot be gone on with, and what helps.
struct Obstacle {
    std::string message;
    std::string hint;
};

/// What a plan asks for behind its week `after`: race and limits are its own; days, times, slot, pool and
/// threshold those of the sessions behind that week, where there are none those of the week itself; the
/// session of today is what that week had on average. The longest rep of today is left to be said.
[[nodiscard]] std::variant<Request, Obstacle> request_behind(plan::Plan const& plan, std::uint32_t after,
                                                             Instead const& instead);

/// The most that the weeks up to `after` and `before` had, 0 where nothing is known. The checks count from
/// there, so it is also the most that can be taken for today.
struct Highest {
    Distance longest;
    Distance week;
};
[[nodiscard]] Highest highest_up_to(plan::Plan const& plan, std::uint32_t after);

/// Today's values are brought down to these.
void hold_to(Request& request, Highest const& highest);

/// What the new weeks say beside their sessions: from what they start, and what the head of the plan has
/// otherwise than they need it.
[[nodiscard]] WeeksHead head_behind(plan::Plan const& plan, Request const& request, Ramp const& ramp);

} // namespace lengthwise::compose
