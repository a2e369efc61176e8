#include "check/register.hpp"
#include "cli/commands.hpp"
#include "cli/explain_word.hpp"
#include "cli/help.hpp"
#include "cli/plans.hpp"
#include "grammar/codes.hpp"
#include "grammar/words.hpp"
#include "report/findings_text.hpp"
#include "report/table.hpp"
#include "report/width.hpp"

#include <fmt/core.h>

#include <algorithm>
#include <vector>

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
    auto const long_one = (std::string{rule.good} + std::string{rule.bad}).find('\n') != std::string::npos;
    auto first = true;
    for (auto const& [lines, verdict] : {std::pair{rule.good, "meets it"}, std::pair{rule.bad, "does not"}}) {
        if (long_one && !first) {
            table.row({{}, {}}); // else it could not be seen where the one ends
        }
        first = false;
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

/// What the text says wrong: no judgement, so there is no limit and no waiver.
std::string text_of(grammar::Code const& code, report::Paint const& paint) {
    return fmt::format("{}\n\n{}\n", paint(report::Ink::bold, fmt::format("{} (error)", code.code)),
                       paragraph(fmt::format("{}.", code.meaning))) +
           paragraph("The message at the place says what to type. A file with such an error has no totals.");
}

std::string list() {
    report::Table rules{{{.head = "rule", .figures = false},
                         {.head = "judges", .figures = false},
                         {.head = "limit", .figures = false}}};
    for (auto const* rule : check::rules()) {
        rules.row({{.text = std::string{rule->name}},
                   {.text = std::string{rule->measures}},
                   {.text = std::string{rule->limit}}});
    }
    auto text = rules.text(report::Paint{}) + "\ncodes of errors in a text\n";
    std::string codes;
    for (auto const& code : grammar::codes) {
        codes += fmt::format("{}{}", codes.empty() ? "" : ", ", code.code);
    }
    text += paragraph(codes) + "\nwords of the notation\n";
    std::vector<std::string> words;
    for (auto const& some : grammar::meanings()) {
        for (auto const& meaning : some) {
            words.emplace_back(meaning.name);
        }
    }
    return text + report::fold_parts(words, "  ", column, 0) + '\n';
}

/// A rule, a code, or a word of the notation.
std::string nearest(std::string_view word) {
    std::vector<std::string_view> names;
    for (auto const* rule : check::rules()) {
        names.push_back(rule->name);
    }
    for (auto const& code : grammar::codes) {
        names.push_back(code.code);
    }
    auto const near = nearest_word(word, [](Word) { return true; });
    names.push_back(near.value_or(std::string_view{}));
    for (int distance = 1; distance <= 2; ++distance) {
        for (auto const name : names) {
            if (!name.empty() && edit_distance(word, name, distance) <= distance) {
                return std::string{name};
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
    std::string text;
    auto const add = [&text](std::string const& more) { text += (text.empty() ? "" : "\n") + more; };
    if (auto const* rule = check::find_rule(options.word)) {
        add(text_of(*rule, console.out_paint));
    }
    if (auto const code = std::ranges::find(grammar::codes, options.word, &grammar::Code::code);
        code != grammar::codes.end()) {
        add(text_of(*code, console.out_paint));
    }
    for (auto const* meaning : meanings_of(options.word)) {
        add(text_of(*meaning, console.out_paint));
    }
    if (!text.empty()) {
        return finish(text);
    }
    if (std::ranges::any_of(commands, [&](Command const& one) { return one.name == options.word; })) {
        console.say(fmt::format("{0} is a command: lengthwise {0} --help", options.word));
        return misused;
    }
    auto const near = nearest(options.word);
    auto const word = report::visible(options.word);
    console.say(near.empty()
                    ? fmt::format("no word, rule or code \"{}\"; lengthwise explain lists them", word)
                    : fmt::format("no word, rule or code \"{}\"; did you mean \"{}\"?", word, near));
    return misused;
}

} // namespace lengthwise::cli
