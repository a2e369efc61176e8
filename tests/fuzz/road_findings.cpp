#include "check/outlook.hpp"
#include "check/register.hpp"
#include "fuzz/promise.hpp"
#include "fuzz/road.hpp"
#include "grammar/codes.hpp"
#include "grammar/limits.hpp"
#include "report/findings_json.hpp"
#include "report/findings_text.hpp"
#include "report/outlook_text.hpp"
#include "report/ramp_text.hpp"
#include "report/sarif.hpp"
#include "report/tally_json.hpp"
#include "support/json_fault.hpp"
#include "support/unsafe_text.hpp"

namespace lengthwise::fuzz {
namespace {

report::Sources sources_of(Reading const& reading) {
    report::Sources sources;
    for (auto const& file : reading.bundle->files) {
        sources.push_back(&file.source);
    }
    return sources;
}

void stands_inside(Span span, Reading const& reading, std::string const& what) {
    auto const& source = reading.bundle->file_of(span.begin).source;
    promise(span.begin <= span.end && source.holds(span.begin) && source.holds(span.end),
            "a finding stands inside of the text", what);
}

void stand_inside(Diagnostics const& findings, Reading const& reading) {
    for (auto const& finding : findings.kept()) {
        promise(!finding.message.empty(), "a finding says what is wrong", finding.rule);
        stands_inside(finding.span, reading, finding.message);
        for (auto const& related : finding.related) {
            stands_inside(related.span, reading, finding.message + ": " + related.message);
        }
    }
}

std::string as_text(Diagnostics const& findings, Reading const& reading, bool has_plan) {
    auto const sources = sources_of(reading);
    report::Paint const plain;
    auto text = report::findings_text(findings, sources, plain) +
                report::findings_text(findings, sources, plain, {.width = 40, .ascii = true});
    if (has_plan) {
        auto const& plan = reading.plan();
        text += report::ramp_text(plan, plain, 60, false);
        text += report::waivers_text(plan, check::waivers(plan), sources, {});
        if (auto const outlook = check::outlook(plan)) {
            text += report::outlook_sentence(plan, *outlook, false) + report::shortfall(plan, *outlook, true);
        }
    }
    no_fault(support::unsafe_in(text), "the text of findings cannot steer a terminal");
    return text;
}

std::string as_json(Diagnostics const& findings, Reading const& reading, bool has_plan) {
    report::FindingsSummary summary{.file = "plan.swim"};
    if (has_plan) {
        summary.plan = &reading.plan();
        summary.outlook = check::outlook(reading.plan());
        summary.waivers = check::waivers(reading.plan());
    }
    auto text = report::findings_json(findings, sources_of(reading), summary);
    no_fault(support::json_fault(text), "findings are JSON");
    if (!has_plan) {
        auto const none = report::tally_json_errors("plan.swim", findings.count(Severity::error));
        no_fault(support::json_fault(none), "what stands in place of totals is JSON");
        text += none;
    }
    return text;
}

std::string as_sarif(Diagnostics const& findings, Reading const& reading, bool has_plan) {
    std::string text;
    std::vector<report::Sarif::Code> codes;
    for (auto const& code : grammar::codes) {
        codes.emplace_back(code.code, code.meaning);
    }
    report::Sarif log{[&text](std::string_view piece) { text += piece; }, "0", codes};
    log.file(findings, sources_of(reading), has_plan ? check::waived(reading.plan()) : check::Waived{});
    log.finish(true);
    no_fault(support::json_fault(text), "a log of SARIF is JSON");
    return text;
}

} // namespace

std::string findings_shown(Diagnostics const& findings, Reading const& reading, bool has_plan) {
    promise(findings.kept().size() <= limits::findings_shown * severities,
            "no more findings are kept than shown");
    stand_inside(findings, reading);
    return as_text(findings, reading, has_plan) + as_json(findings, reading, has_plan) +
           as_sarif(findings, reading, has_plan);
}

} // namespace lengthwise::fuzz
