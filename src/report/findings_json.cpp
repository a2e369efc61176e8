#include "report/findings_json.hpp"

#include "plan/rules.hpp"
#include "report/figures_json.hpp"
#include "report/json.hpp"
#include "units/spell.hpp"

#include <algorithm>

namespace lengthwise::report {

namespace {

constexpr std::size_t most_waivers = 50; // listed, as of findings

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

void write_reached(Json& json, plan::Plan const& plan, std::optional<plan::Index> index) {
    json.key("reached");
    if (!index) {
        json.null();
        return;
    }
    auto const& session = plan.sessions[*index];
    auto const& week = plan.weeks[session.week];
    json.begin_object().key("week");
    week.number ? json.integer(*week.number) : json.null();
    put_text(json, "session", session.name);
    put_date(json, "date", session.date);
    json.end_object();
}

void write_trend(Json& json, std::optional<check::Trend> const& trend) {
    json.key("trend");
    if (!trend) {
        json.null();
        return;
    }
    json.begin_object();
    json.key("metres_a_week").number(spell::json_metres(trend->a_week));
    json.key("week").integer(trend->week);
    json.key("weeks_after_race");
    trend->after_race ? json.integer(*trend->after_race) : json.null();
    json.end_object();
}

void write_race(Json& json, FindingsSummary const& summary) {
    json.key("race");
    if (summary.plan == nullptr || !summary.outlook) {
        json.null();
        return;
    }
    auto const& outlook = *summary.outlook;
    json.begin_object();
    json.key("metres").number(spell::json_metres(summary.plan->race->distance));
    json.key("asked_metres").number(spell::json_metres(outlook.asked.distance));
    json.key("longest_rep_metres").number(spell::json_metres(outlook.longest));
    json.key("missing_metres").number(spell::json_metres(outlook.missing()));
    put_text(json, "who", outlook.who);
    write_reached(json, *summary.plan, outlook.reached);
    write_trend(json, outlook.trend);
    json.end_object();
}

void write_waivers(Json& json, Sources const& sources, check::Waivers const& waivers) {
    json.key("waived").begin_array();
    for (std::size_t i = 0; i < std::min(waivers.size(), most_waivers); ++i) {
        json.begin_object().key("rule").string(plan::rules[waivers[i]->rule].name);
        put_text(json, "reason", waivers[i]->reason);
        write_place(json, sources, waivers[i]->span);
        json.end_object();
    }
    json.end_array();
}

void write_summary(Json& json, Diagnostics const& findings, FindingsSummary const& summary) {
    json.key("summary").begin_object();
    json.key("errors").integer(static_cast<std::int64_t>(findings.count(Severity::error)));
    json.key("warnings").integer(static_cast<std::int64_t>(findings.count(Severity::warning)));
    json.key("notes").integer(static_cast<std::int64_t>(findings.count(Severity::note)));
    json.key("sessions");
    summary.plan != nullptr ? json.integer(static_cast<std::int64_t>(summary.plan->sessions.size()))
                            : json.null();
    write_race(json, summary);
    json.key("waivers").integer(static_cast<std::int64_t>(summary.waivers.size()));
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
        write_waivers(json, sources, summary.waivers);
        write_summary(json, findings, summary);
        json.end_object();
        json.end_line();
    }
    return text;
}

} // namespace lengthwise::report
