#include "recogniser/against.hpp"

#include "grammar/codes.hpp"
#include "grammar/parse.hpp"
#include "recogniser/recogniser.hpp"

#include <algorithm>
#include <fmt/format.h>

namespace lengthwise::recogniser {

namespace {

/// Of parentheses that stay open together, the innermost bears the finding and the others
/// are its related places.
std::size_t first_line(Source const& source, Diagnostics const& findings) {
    std::size_t first = SIZE_MAX;
    for (auto const& finding : findings.kept()) {
        first = std::min<std::size_t>(first, source.locate(finding.span.begin).line);
        for (auto const& related : finding.related) {
            if (finding.rule == grammar::code::group) {
                first = std::min<std::size_t>(first, source.locate(related.span.begin).line);
            }
        }
    }
    return first;
}

} // namespace

std::string disagreement(std::string_view text) {
    Source const source{"a.swim", std::string{text}};
    auto const findings = grammar::parse(source).findings;
    auto const bad = first_bad_line(text);
    if (!findings.has_errors()) {
        return bad ? fmt::format("only the recogniser refuses line {}", bad->line) : "";
    }
    auto const& first = findings.kept().front();
    if (!bad) {
        return fmt::format("only the parser refuses line {}: {} [{}]", first_line(source, findings),
                           first.message, first.rule);
    }
    auto const line = first_line(source, findings);
    bool const all_kept = findings.kept().size() == findings.count(Severity::error);
    if (!all_kept || line == bad->line || line == bad->or_line) {
        return "";
    }
    return fmt::format("the parser's first bad line is {}, the recogniser's {}: {} [{}]", line, bad->line,
                       first.message, first.rule);
}

} // namespace lengthwise::recogniser
