#pragma once

#include "check/inquiry.hpp"
#include "check/outlook.hpp"
#include "grammar/source.hpp"
#include "plan/plan.hpp"
#include "report/findings_text.hpp"

#include <string>

/// What `check` ends with: where the longest rep stands to the race, and what the file waives.
namespace lengthwise::report {

/// "750 m is swum on Tue 4 May, 12 days before the race"; where somebody does not swim it, "at 60 m a week
/// it would be there in week 9, 2 weeks after the race", or that it has not grown. Empty where neither can
/// be said.
[[nodiscard]] std::string outlook_sentence(plan::Plan const& plan, check::Outlook const& outlook, bool ascii);

/// "150 m short of the race" for the lane or swimmer that lacks most; empty when all swim it.
[[nodiscard]] std::string shortfall(plan::Plan const& plan, check::Outlook const& outlook, bool ascii);

/// Each `allow` with its reason, those that say the same on one line: `waived: race-rep "relay, 250 m each"`.
/// Empty without any; else each line ends in a line feed.
[[nodiscard]] std::string waivers_text(plan::Plan const& plan, check::Waivers const& waivers,
                                       Sources const& sources, FindingsStyle style);

} // namespace lengthwise::report
