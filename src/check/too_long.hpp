#pragma once

#include "grammar/diagnostic.hpp"
#include "plan/plan.hpp"

namespace lengthwise::check {

/// Sessions whose time passes limits::session_hours once swims at a pace are counted, and timed reps
/// that would go further than limits::session_km: an error at the item that passes it, because no
/// sum of such a session can be trusted. What is said in times alone the resolver has judged.
[[nodiscard]] Diagnostics too_long(plan::Plan const& plan);

} // namespace lengthwise::check
