#include "check/too_long.hpp"

#include "calc/timeline.hpp"
#include "grammar/codes.hpp"
#include "grammar/limits.hpp"

#include <fmt/core.h>

namespace lengthwise::check {

Diagnostics too_long(plan::Plan const& plan) {
    Diagnostics findings;
    calc::Clock clock{plan};
    for (plan::Index session = 0; session < plan.sessions.size(); ++session) {
        if (auto const item = clock.passes_limit(session)) {
            findings.add({.severity = Severity::error,
                          .rule = grammar::code::limit,
                          .span = plan.items[*item].span,
                          .message = fmt::format("with this line the session takes more than {} h, or its "
                                                 "timed reps go further than {} km",
                                                 limits::session_hours, limits::session_km),
                          .hint = "is a threshold, a factor or a count too large?"});
        }
    }
    return findings;
}

} // namespace lengthwise::check
