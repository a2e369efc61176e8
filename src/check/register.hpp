#pragma once

#include "check/rule.hpp"
#include "grammar/diagnostic.hpp"
#include "plan/plan.hpp"

#include <span>
#include <string_view>

/// What is worth a second look in a plan that can be read. Every warning and note of
/// the program is a rule's; what cannot be read or swum is an error before it comes here.
namespace lengthwise::check {

/// All rules, those of the whole plan first.
[[nodiscard]] std::span<Rule const* const> rules();

/// By name; nullptr if no rule has it.
[[nodiscard]] Rule const* find_rule(std::string_view name);

/// What all rules find, the worst first, then by place in the text.
[[nodiscard]] Diagnostics check(plan::Plan const& plan);

/// What the file allows: each finding kept, and the `allow` it is waived by. A rule at a time, in the
/// order of `rules`; `check` has none of them.
struct Waived {
    Diagnostics findings;
    Waivers by; ///< as many as `findings.kept()`, in the plan
};
[[nodiscard]] Waived waived(plan::Plan const& plan);

/// All that the file allows, in the order of the text.
[[nodiscard]] Waivers waivers(plan::Plan const& plan);

/// What `tally` and `deck` say on the way: the warnings of whole-lengths and lanes.
[[nodiscard]] Diagnostics check_on_the_way(plan::Plan const& plan);

} // namespace lengthwise::check
