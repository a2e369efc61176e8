#include "support/complaints.hpp"

#include "grammar/codes.hpp"
#include "grammar/parse.hpp"
#include "grammar/source.hpp"

#include <algorithm>
#include <catch2/catch.hpp>
#include <fmt/format.h>
#include <string_view>

namespace lengthwise::test {

namespace {

/// What no message may say: the machine's words, and those that blame.
void check_voice(Diagnostic const& finding) {
    constexpr std::string_view unsaid[] = {"boost",   "x3",      "_",      "NUM",       "STRING",
                                           "PERCENT", "CLOCK",   "NL",     "TIME",      "ORDINAL",
                                           "invalid", "illegal", "failed", "unexpected"};
    for (auto const word : unsaid) {
        CAPTURE(finding.message, finding.hint, word);
        CHECK(finding.message.find(word) == std::string::npos);
        CHECK(finding.hint.find(word) == std::string::npos);
    }
    CAPTURE(finding.rule, finding.message);
    CHECK_FALSE(finding.message.empty());
    CHECK(finding.message.back() != '.');
    CHECK(std::ranges::any_of(grammar::codes, [&](auto const& known) { return known.code == finding.rule; }));
}

std::string list(std::string const& head, std::string const& text) {
    Source const source{"a.swim", head + text};
    auto const result = grammar::parse(source);
    auto const lines_above = source.locate(static_cast<std::uint32_t>(head.size())).line - 1;
    auto const spot = [&](Span span) {
        auto const place = source.locate(span.begin);
        return fmt::format("{}:{}", place.line - lines_above, place.byte);
    };
    std::string out;
    for (auto const& finding : result.findings.kept()) {
        check_voice(finding);
        out += out.empty() ? "" : "\n";
        out += fmt::format("{} {}: {}", spot(finding.span), finding.rule, finding.message);
        out += finding.hint.empty() ? "" : " = " + finding.hint;
        for (auto const& [span, message] : finding.related) {
            out += fmt::format(" [{} {}]", spot(span), message);
        }
    }
    return out;
}

} // namespace

std::string complaints(std::string const& text) {
    return list("", text);
}

std::string line_complaints(std::string const& lines) {
    return list("session\nmain\n", lines);
}

void check_lines(std::vector<Wrong> const& rows) {
    for (auto const& row : rows) {
        CAPTURE(row.text);
        CHECK(line_complaints(row.text) == row.complaints);
    }
}

void check_files(std::vector<Wrong> const& rows) {
    for (auto const& row : rows) {
        CAPTURE(row.text);
        CHECK(complaints(row.text) == row.complaints);
    }
}

} // namespace lengthwise::test
