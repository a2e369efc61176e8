#include "report/findings_json.hpp"

#include "report/json.hpp"

namespace lengthwise::report {

namespace {

void write_place(Json& json, Sources const& sources, Span span) {
    auto const at = position(sources, span.begin);
    json.key("file").string(at.file);
    json.key("line").integer(at.line);
    json.key("column").integer(static_cast<std::int64_t>(at.column));
    json.key("offset").integer(static_cast<std::int64_t>(at.offset));
}

void write_finding(Json& json, Sources const& sources, Diagnostic const& finding) {
    json.begin_object();
    json.key("rule").string(finding.rule);
    json.key("severity").string(spelling(finding.severity));
    write_place(json, sources, finding.span);
    json.key("message").string(finding.message);
    json.key("hint");
    finding.hint.empty() ? json.null() : json.string(finding.hint);
    if (!finding.related.empty()) {
        json.key("related").begin_array();
        for (auto const& related : finding.related) {
            json.begin_object();
            write_place(json, sources, related.span);
            json.key("message").string(related.message);
            json.end_object();
        }
        json.end_array();
    }
    json.end_object();
}

void write_summary(Json& json, Diagnostics const& findings, FindingsSummary const& summary) {
    json.key("summary").begin_object();
    json.key("errors").integer(static_cast<std::int64_t>(findings.count(Severity::error)));
    json.key("warnings").integer(static_cast<std::int64_t>(findings.count(Severity::warning)));
    json.key("notes").integer(static_cast<std::int64_t>(findings.count(Severity::note)));
    json.key("sessions");
    summary.sessions ? json.integer(static_cast<std::int64_t>(*summary.sessions)) : json.null();
    json.end_object();
}

} // namespace

std::string findings_json(Diagnostics const& findings, Sources const& sources,
                          FindingsSummary const& summary) {
    std::string text;
    {
        Json json{[&text](std::string_view piece) { text += piece; }};
        json.begin_object();
        json.key("schema").string("lengthwise.check/1");
        if (!summary.file.empty()) {
            json.key("file").string(summary.file);
        }
        json.key("findings").begin_array();
        for (auto const& finding : findings.kept()) {
            write_finding(json, sources, finding);
        }
        json.end_array();
        write_summary(json, findings, summary);
        json.end_object();
        json.end_line();
    }
    return text;
}

} // namespace lengthwise::report
