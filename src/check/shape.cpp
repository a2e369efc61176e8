#include "check/rules.hpp"
#include "check/words.hpp"

#include "plan/plan.hpp"

#include <fmt/core.h>

#include <algorithm>
#include <array>
#include <string>
#include <vector>

namespace lengthwise::check {

namespace {

constexpr std::array asked{SectionKind::warm_up, SectionKind::main, SectionKind::cool_down};

bool has(plan::Plan const& plan, plan::Session const& session, SectionKind kind) {
    auto const first = plan.sections.begin() + session.sections.first;
    return std::any_of(first, first + session.sections.count,
                       [kind](plan::Section const& section) { return section.kind == kind; });
}

void judge(Inquiry& inquiry) {
    for (auto const& session : inquiry.plan.sessions) {
        if (inquiry.waived(session)) {
            continue;
        }
        std::vector<std::string> missing;
        for (auto const kind : asked) {
            if (!has(inquiry.plan, session, kind)) {
                missing.emplace_back(spelling(word_of(kind)));
            }
        }
        if (!missing.empty()) {
            inquiry.warn(session.span, fmt::format("this session has no {}", listed(missing, "or")));
        }
    }
}

} // namespace

Rule const shape{
    .name = "shape",
    .severity = Severity::warning,
    .measures = "a session has warm-up, main and cool-down",
    .limit = "",
    .meaning = "Every session has at least one section of each of the three kinds.",
    .why = "nobody should start cold into the hard part, or climb out of it breathless.",
    .source = practice,
    .good = "warm-up\nmain\ncool-down",
    .bad = "warm-up\nmain",
    .mend = "add the heading, a few easy lengths are enough; for a test or a talk: allow shape \"why\"",
    .judge = judge,
};

} // namespace lengthwise::check
