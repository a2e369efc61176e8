#include "check/register.hpp"
#include "cli/commands.hpp"
#include "cli/plans.hpp"
#include "grammar/words.hpp"
#include "report/findings_text.hpp"
#include "report/table.hpp"
#include "report/width.hpp"

#include <fmt/core.h>

namespace lengthwise::cli {

namespace {

constexpr std::size_t column = 60;

std::string paragraph(std::string_view text) {
    return report::fold(text, column, 0) + '\n';
}

std::string examples(check::Rule const& rule) {
    if (rule.good.empty() && rule.bad.empty()) {
        return {};
    }
    report::Table table{{{.figures = false}, {.figures = false}}};
    for (auto const& [lines, verdict] : {std::pair{rule.good, "meets it"}, std::pair{rule.bad, "does not"}}) {
        for (auto rest = lines; !rest.empty();) {
            auto const end = std::min(rest.find('\n'), rest.size());
            auto const last = end == rest.size();
            table.row({{.text = fmt::format("  {}", rest.substr(0, end))}, {.text = last ? verdict : ""}});
            rest.remove_prefix(last ? end : end + 1);
        }
    }
    return '\n' + table.text(report::Paint{});
}

/// Meaning, reason, source, way out: always in this order.
std::string text_of(check::Rule const& rule, report::Paint const& paint) {
    auto const head = fmt::format("{} ({})", rule.name, report::spelling(rule.severity));
    auto text = fmt::format("{}: {}\n\n", paint(report::Ink::bold, head), rule.measures);
    text += paragraph(rule.meaning);
    text += paragraph(fmt::format("Why: {}", rule.why));
    text += paragraph(fmt::format("Source: {}", rule.source));
    text += examples(rule);
    text += '\n';
    if (!rule.limit.empty()) {
        text += paragraph(fmt::format("limit: {}", rule.limit));
    }
    return text + paragraph(fmt::format("way out: {}", rule.mend));
}

std::string list() {
    report::Table table{{{.head = "rule", .figures = false},
                         {.head = "judges", .figures = false},
                         {.head = "limit", .figures = false}}};
    for (auto const* rule : check::rules()) {
        table.row({{.text = std::string{rule->name}},
                   {.text = std::string{rule->measures}},
                   {.text = std::string{rule->limit}}});
    }
    return table.text(report::Paint{});
}

std::string nearest(std::string_view word) {
    for (int distance = 1; distance <= 2; ++distance) {
        for (auto const* rule : check::rules()) {
            if (edit_distance(word, rule->name, distance) <= distance) {
                return std::string{rule->name};
            }
        }
    }
    return {};
}

} // namespace

int explain(Explain const& options, Console& console) {
    auto const finish = [&console](std::string text) {
        console.out.write(console.ascii ? report::in_ascii(std::move(text)) : text);
        return fine;
    };
    if (options.word.empty()) {
        return finish(list());
    }
    if (auto const* rule = check::find_rule(options.word)) {
        return finish(text_of(*rule, console.out_paint));
    }
    auto const near = nearest(options.word);
    auto const word = report::visible(options.word);
    console.say(near.empty() ? fmt::format("no rule \"{}\"; lengthwise explain lists them", word)
                             : fmt::format("no rule \"{}\"; did you mean \"{}\"?", word, near));
    return misused;
}

} // namespace lengthwise::cli
