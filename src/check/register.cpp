#include "check/register.hpp"

#include "calc/totals.hpp"
#include "check/rules.hpp"

#include <algorithm>
#include <array>

namespace lengthwise::check {

namespace {

constexpr std::array all{
    &race_rep, &rep_step, &week_growth, &sessions,  &session_floor, &taper,
    &calendar, &slot,     &send_off,    &rest_band, &whole_lengths, &home_wall,
    &medley,   &shape,    &lanes,       &feasible,  &caution,       &second_look,
};
constexpr std::array on_the_way{&whole_lengths, &lanes};

Diagnostics judge(plan::Plan const& plan, std::span<Rule const* const> rules, Waivers* waivers = nullptr) {
    Diagnostics findings;
    calc::Reckoner sums{plan};
    Inquiry inquiry{plan, sums, findings, waivers};
    for (auto const* rule : rules) {
        inquiry.turn_to(*plan::find_rule(rule->name));
        rule->judge(inquiry);
    }
    return findings;
}

} // namespace

std::span<Rule const* const> rules() {
    return all;
}

Rule const* find_rule(std::string_view name) {
    auto const found = std::ranges::find(all, name, [](Rule const* rule) { return rule->name; });
    return found == all.end() ? nullptr : *found;
}

Diagnostics check(plan::Plan const& plan) {
    auto findings = judge(plan, all);
    findings.sort_by_severity();
    return findings;
}

Waived waived(plan::Plan const& plan) {
    Waived result;
    if (!waivers(plan).empty()) {
        result.findings = judge(plan, all, &result.by);
    }
    return result;
}

Waivers waivers(plan::Plan const& plan) {
    Waivers all_said;
    for (auto const& settings : plan.settings) {
        for (auto const& allow : settings.allows) {
            all_said.push_back(&allow);
        }
    }
    std::ranges::sort(all_said, {}, [](plan::Allow const* allow) { return allow->span.begin; });
    return all_said;
}

Diagnostics check_on_the_way(plan::Plan const& plan) {
    auto all_found = judge(plan, on_the_way);
    all_found.sort_by_severity();
    Diagnostics warnings;
    for (auto const& finding : all_found.kept()) {
        if (finding.severity == Severity::warning) {
            warnings.add(finding);
        }
    }
    while (warnings.count(Severity::warning) < all_found.count(Severity::warning)) {
        warnings.count_only(Severity::warning);
    }
    return warnings;
}

} // namespace lengthwise::check
