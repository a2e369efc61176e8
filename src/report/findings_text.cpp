#include "report/findings_text.hpp"

#include "report/excerpt.hpp"
#include "report/width.hpp"

#include <fmt/core.h>

#include <algorithm>
#include <array>
#include <utility>

namespace lengthwise::report {

namespace {

constexpr std::array<std::pair<std::string_view, std::string_view>, 14> marks{{
    {"–", "-"},
    {"…", "..."},
    {"·", ","},
    {"⅓", " 1/3"},
    {"⅔", " 2/3"},
    {"⅙", " 1/6"},
    {"⅚", " 5/6"},
    {"½", " 1/2"},
    {"¼", " 1/4"},
    {"¾", " 3/4"},
    {"⅛", " 1/8"},
    {"⅜", " 3/8"},
    {"⅝", " 5/8"},
    {"⅞", " 7/8"},
}};

Ink ink_of(Severity severity) {
    switch (severity) {
    case Severity::error:
        return Ink::red;
    case Severity::warning:
        return Ink::yellow;
    case Severity::note:
        break;
    }
    return Ink::blue;
}

std::string spoken(std::string_view text, FindingsStyle const& style) {
    auto safe = visible(text);
    return style.ascii ? in_ascii(std::move(safe)) : safe;
}

std::string head(Position const& at) {
    return fmt::format("{}:{}:{}: ", visible(at.file), at.line, at.column);
}

/// The line a span begins in, and a caret under it.
std::string shown_line(Source const& source, Span span, Ink ink, Paint const& paint,
                       FindingsStyle const& style) {
    auto const place = source.locate(span.begin);
    auto const excerpt = excerpt_of(place.text, place.byte - 1, span.size(),
                                    style.width > gutter ? style.width - gutter : 1, style.ascii);
    return fmt::format("{}{}\n{}{}\n", paint(Ink::dim, fmt::format("{:>5} | ", place.line)), excerpt.line,
                       paint(Ink::dim, "      | "),
                       std::string(excerpt.before, ' ') +
                           paint(ink, "^" + std::string(excerpt.marked - 1, '~')));
}

/// Each line of a hint on its own, folded below itself.
std::string hint_lines(std::string_view hint, Paint const& paint, FindingsStyle const& style) {
    std::string text;
    while (!hint.empty()) {
        auto const end = std::min(hint.find('\n'), hint.size());
        auto const line = spoken(hint.substr(0, end), style);
        auto const room = style.width > gutter ? style.width - gutter : 1;
        text += fmt::format("{}{}\n", paint(Ink::dim, "      = "), hung(fold(line, room, 0)));
        hint.remove_prefix(std::min(end + 1, hint.size()));
    }
    return text;
}

} // namespace

Source const& holder(Sources const& sources, std::uint32_t offset) {
    auto const found =
        std::ranges::find_if(sources, [offset](Source const* source) { return source->holds(offset); });
    return found == sources.end() ? *sources.front() : **found;
}

Position position(Sources const& sources, std::uint32_t offset) {
    auto const& source = holder(sources, offset);
    auto const place = source.locate(offset);
    return {source.name(), place.line, cells(shown(place.text.substr(0, place.byte - 1))) + 1, place.offset};
}

std::string finding_text(Diagnostic const& finding, Sources const& sources, Paint const& paint,
                         FindingsStyle style) {
    auto const ink = ink_of(finding.severity);
    auto text = head(position(sources, finding.span.begin));
    text += fmt::format("{}: {} {}\n", paint(ink, spelling(finding.severity)), spoken(finding.message, style),
                        paint(Ink::dim, fmt::format("[{}]", finding.rule)));
    text += shown_line(holder(sources, finding.span.begin), finding.span, ink, paint, style);
    text += hint_lines(finding.hint, paint, style);
    for (auto const& related : finding.related) {
        text += head(position(sources, related.span.begin)) + spoken(related.message, style) + '\n';
        text += shown_line(holder(sources, related.span.begin), related.span, Ink::dim, paint, style);
    }
    return text;
}

std::string findings_text(Diagnostics const& findings, Sources const& sources, Paint const& paint,
                          FindingsStyle style) {
    std::string text;
    for (auto const& finding : findings.kept()) {
        text += text.empty() ? "" : "\n";
        text += finding_text(finding, sources, paint, style);
    }
    auto const more = unlisted(findings);
    return more.empty() ? text : fmt::format("{}\nand {}\n", text, more);
}

std::string unlisted(Diagnostics const& findings) {
    std::array<std::uint64_t, severities> shown{};
    for (auto const& finding : findings.kept()) {
        ++shown[static_cast<std::size_t>(finding.severity)];
    }
    std::string more;
    for (auto const severity : {Severity::error, Severity::warning, Severity::note}) {
        auto const rest = findings.count(severity) - shown[static_cast<std::size_t>(severity)];
        if (rest > 0) {
            more += fmt::format("{}{} more {}{}", more.empty() ? "" : ", ", rest, spelling(severity),
                                rest == 1 ? "" : "s");
        }
    }
    return more;
}

std::string errors_line(std::string_view file, std::uint64_t errors) {
    return fmt::format("{} error{} in {}; no totals until {} mended", errors, errors == 1 ? "" : "s",
                       file == "-" ? "standard input" : visible(file), errors == 1 ? "it is" : "they are");
}

std::string counts(Diagnostics const& findings) {
    std::string text;
    for (auto const severity : {Severity::error, Severity::warning, Severity::note}) {
        if (auto const n = findings.count(severity); n > 0) {
            text +=
                fmt::format("{}{} {}{}", text.empty() ? "" : ", ", n, spelling(severity), n == 1 ? "" : "s");
        }
    }
    return text;
}

std::string_view spelling(Severity severity) {
    constexpr std::array<std::string_view, severities> words{"error", "warning", "note"};
    return words[static_cast<std::size_t>(severity)];
}

std::string in_ascii(std::string text) {
    for (auto const& [mark, plain] : marks) {
        for (auto at = text.find(mark); at != std::string::npos; at = text.find(mark, at + plain.size())) {
            // Without a whole number before it a fraction needs no blank.
            auto const bare = plain.front() == ' ' && (at == 0 || text[at - 1] < '0' || text[at - 1] > '9');
            text.replace(at, mark.size(), bare ? plain.substr(1) : plain);
        }
    }
    return text;
}

} // namespace lengthwise::report
