#include "support/found.hpp"

#include "check/register.hpp"
#include "grammar/bundle.hpp"
#include "plan/resolve.hpp"
#include "report/findings_text.hpp"
#include "support/memory_reader.hpp"

#include <functional>

namespace lengthwise::support {

namespace {

void each_finding(std::string_view rule, std::string_view text,
                  std::function<void(Diagnostic const&, Source const&)> const& visit) {
    MemoryReader reader;
    auto const bundle = grammar::bundle("plan.swim", std::string{text}, std::nullopt, reader);
    auto const resolved = plan::resolve(bundle);
    auto errors = bundle.findings;
    errors.append(resolved.findings);
    auto const& source = bundle.root().source;
    for (auto const& error : errors.kept()) {
        visit(error, source);
    }
    if (errors.has_errors()) {
        return;
    }
    auto findings = check::check(resolved.plan);
    findings.sort_by_place();
    for (auto const& finding : findings.kept()) {
        if (finding.rule == rule) {
            visit(finding, source);
        }
    }
}

} // namespace

std::vector<std::string> found(std::string_view rule, std::string_view text) {
    std::vector<std::string> lines;
    each_finding(rule, text, [&](Diagnostic const& finding, Source const& source) {
        lines.push_back(std::to_string(source.locate(finding.span.begin).line) + ": " +
                        std::string{report::spelling(finding.severity)} + ": " + finding.message);
    });
    return lines;
}

std::string first_hint(std::string_view rule, std::string_view text) {
    std::string hint;
    each_finding(rule, text, [&](Diagnostic const& finding, Source const&) {
        if (hint.empty()) {
            hint = finding.hint;
        }
    });
    return hint;
}

} // namespace lengthwise::support
