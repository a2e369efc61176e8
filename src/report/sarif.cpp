#include "report/sarif.hpp"

#include "report/width.hpp"

#include <fmt/core.h>

#include <algorithm>

namespace lengthwise::report {

namespace {

constexpr std::string_view schema =
    "https://docs.oasis-open.org/sarif/sarif/v2.1.0/errata01/os/schemas/sarif-schema-2.1.0.json";

/// A file's name as a reference: what RFC 3986 does not let stand for itself is spelled in percent.
std::string reference(std::string_view name) {
    constexpr std::string_view plain = "-._~/";
    std::string text = name.starts_with('/') ? "file://" : "";
    for (char const c : name) {
        auto const letter = (c >= 'A' && c <= 'Z') || (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9');
        if (letter || plain.find(c) != std::string_view::npos) {
            text += c;
        } else {
            text += fmt::format("%{:02X}", static_cast<unsigned char>(c));
        }
    }
    return text;
}

/// Counted from 1, in code points, as `columnKind` says.
std::int64_t column(Place const& place) {
    auto const before = place.text.substr(0, place.byte - 1);
    return 1 + std::ranges::count_if(before,
                                     [](char c) { return (static_cast<unsigned char>(c) & 0xC0U) != 0x80U; });
}

void put_message(Json& json, std::string_view key, std::string_view text) {
    json.key(key).begin_object().key("text").string(text).end_object();
}

/// Why, from where, how to mend: what `explain` says.
std::string help(check::Rule const& rule) {
    auto text = fmt::format("Why: {}\nSource: {}\n", rule.why, rule.source);
    text += rule.good.empty() ? "" : fmt::format("Meets it: {}\n", rule.good);
    text += rule.bad.empty() ? "" : fmt::format("Does not: {}\n", rule.bad);
    text += rule.limit.empty() ? "" : fmt::format("Limit: {}\n", rule.limit);
    return text + fmt::format("Way out: {}", rule.mend);
}

/// FNV-1a with 64 bits (Fowler, Noll and Vo).
std::uint64_t hash(std::string_view text) {
    std::uint64_t value = 0xcbf29ce484222325U;
    for (char const c : text) {
        value = (value ^ static_cast<unsigned char>(c)) * 0x100000001b3U;
    }
    return value;
}

std::string_view trimmed(std::string_view line) {
    auto const first = line.find_first_not_of(" \t\r");
    auto const last = line.find_last_not_of(" \t\r");
    return first == std::string_view::npos ? std::string_view{} : line.substr(first, last - first + 1);
}

} // namespace

Sarif::Sarif(TextSink sink, std::string_view version, std::vector<Code> const& codes)
    : json_(std::move(sink)) {
    json_.begin_object().key("$schema").string(schema).key("version").string("2.1.0");
    json_.key("runs").begin_array().begin_object();
    json_.key("tool").begin_object().key("driver").begin_object();
    json_.key("name").string("lengthwise").key("version").string(version);
    json_.key("rules").begin_array();
    for (auto const* each : check::rules()) {
        rule(*each);
    }
    for (auto const& [code, meaning] : codes) {
        json_.begin_object().key("id").string(code);
        put_message(json_, "shortDescription", meaning);
        json_.key("defaultConfiguration").begin_object().key("level").string("error").end_object();
        json_.end_object();
    }
    json_.end_array().end_object().end_object();
    json_.key("columnKind").string("unicodeCodePoints");
    json_.key("results").begin_array();
}

void Sarif::rule(check::Rule const& rule) {
    json_.begin_object().key("id").string(rule.name);
    put_message(json_, "shortDescription", rule.measures);
    put_message(json_, "fullDescription", rule.meaning);
    put_message(json_, "help", help(rule));
    json_.key("defaultConfiguration").begin_object();
    json_.key("level").string(spelling(rule.severity)).end_object();
    json_.end_object();
}

void Sarif::file(Diagnostics const& findings, Sources const& sources, check::Waived const& waived) {
    for (auto const& finding : findings.kept()) {
        result(finding, sources, nullptr);
    }
    more(findings, sources.front()->name());
    for (std::size_t i = 0; i < waived.by.size(); ++i) {
        result(waived.findings.kept()[i], sources, waived.by[i]);
    }
    more(waived.findings, sources.front()->name());
}

void Sarif::finish(bool whole) {
    json_.end_array();
    json_.key("invocations").begin_array().begin_object();
    json_.key("executionSuccessful").boolean(whole);
    if (!notices_.empty()) {
        json_.key("toolExecutionNotifications").begin_array();
        for (auto const& notice : notices_) {
            json_.begin_object().key("level").string("note");
            put_message(json_, "message", notice);
            json_.end_object();
        }
        json_.end_array();
    }
    json_.end_object().end_array().end_object().end_array().end_object().end_line();
}

void Sarif::result(Diagnostic const& finding, Sources const& sources, plan::Allow const* allow) {
    json_.begin_object().key("ruleId").string(finding.rule);
    json_.key("level").string(spelling(finding.severity));
    put_message(json_, "message",
                finding.hint.empty() ? finding.message : finding.message + '\n' + finding.hint);
    json_.key("locations").begin_array();
    location(sources, finding.span, {});
    json_.end_array();
    if (!finding.related.empty()) {
        json_.key("relatedLocations").begin_array();
        for (auto const& related : finding.related) {
            location(sources, related.span, related.message);
        }
        json_.end_array();
    }
    fingerprint(finding, sources);
    if (allow != nullptr) {
        json_.key("suppressions").begin_array().begin_object().key("kind").string("inSource");
        if (!allow->reason.empty()) {
            json_.key("justification").string(allow->reason);
        }
        json_.key("location");
        location(sources, allow->span, {});
        json_.end_object().end_array();
    }
    json_.end_object();
}

void Sarif::location(Sources const& sources, Span span, std::string_view message) {
    auto const& source = holder(sources, span.begin);
    auto const begin = source.locate(span.begin);
    auto const end = source.locate(span.end);
    json_.begin_object().key("physicalLocation").begin_object();
    json_.key("artifactLocation").begin_object();
    json_.key("uri").string(reference(source.name())).end_object();
    json_.key("region").begin_object();
    json_.key("startLine").integer(begin.line).key("startColumn").integer(column(begin));
    json_.key("endLine").integer(end.line).key("endColumn").integer(column(end));
    json_.key("byteOffset").integer(static_cast<std::int64_t>(begin.offset));
    json_.key("byteLength").integer(static_cast<std::int64_t>(span.size()));
    json_.end_object().end_object();
    if (!message.empty()) {
        put_message(json_, "message", message);
    }
    json_.end_object();
}

/// Stays the same when lines above come and go: the rule, the file, the line's words, and the how manieth
/// of its kind.
void Sarif::fingerprint(Diagnostic const& finding, Sources const& sources) {
    auto const& source = holder(sources, finding.span.begin);
    auto const print = hash(fmt::format("{}\n{}\n{}", finding.rule, source.name(),
                                        trimmed(source.locate(finding.span.begin).text)));
    json_.key("partialFingerprints").begin_object();
    json_.key("ruleAndLine/v1").string(fmt::format("{:016x}:{}", print, ++prints_[print]));
    json_.end_object();
}

void Sarif::more(Diagnostics const& findings, std::string_view file) {
    auto const notice = unlisted(findings);
    if (!notice.empty()) {
        notices_.push_back(fmt::format("{}: {} not listed", visible(file), notice));
    }
}

} // namespace lengthwise::report
