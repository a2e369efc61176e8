#include "cli/explain_word.hpp"

#include "grammar/synonyms.hpp"
#include "report/width.hpp"

#include <fmt/core.h>

#include <algorithm>

namespace lengthwise::cli {
namespace {

constexpr std::size_t column = 60;

std::string indented(std::string_view lines) {
    std::string text;
    for (auto rest = lines; !rest.empty();) {
        auto const end = std::min(rest.find('\n'), rest.size() - 1);
        text.append("  ").append(rest.substr(0, end)).append("\n");
        rest.remove_prefix(end + 1);
    }
    return text;
}

template <typename Wanted>
std::vector<grammar::Meaning const*> those(Wanted wanted) {
    std::vector<grammar::Meaning const*> found;
    for (auto const& some : grammar::meanings()) {
        for (auto const& meaning : some) {
            if (wanted(meaning)) {
                found.push_back(&meaning);
            }
        }
    }
    return found;
}

} // namespace

std::vector<grammar::Meaning const*> meanings_of(std::string_view word) {
    auto found = those([&](grammar::Meaning const& meaning) { return meaning.name == word; });
    auto const blank = word.find(' ');
    auto const first = find_word(word.substr(0, blank));
    auto const second = blank == std::string_view::npos ? Word::none : find_word(word.substr(blank + 1));
    if (found.empty() && first != Word::none) {
        // "if time", "warm up", "front crawl": both words belong to what is meant
        found = those([&](grammar::Meaning const& meaning) {
            return meaning.tells(first) && (blank == std::string_view::npos || meaning.tells(second));
        });
    } else if (!found.empty() && first != Word::none && blank == std::string_view::npos) {
        found = those([&](grammar::Meaning const& meaning) { return meaning.tells(first); });
    }
    return found;
}

std::string also_read(grammar::Meaning const& meaning) {
    auto const several = meaning.name.find(", ") != std::string_view::npos;
    std::string text;
    for (auto const word : meaning.words) {
        std::string others;
        for (auto const synonym : word == Word::none ? std::vector<std::string_view>{} : synonyms(word)) {
            others += fmt::format("{}{}", others.empty() ? "" : ", ", synonym);
        }
        if (!others.empty()) {
            auto const of = several ? fmt::format(" ({})", spelling(word)) : "";
            text += fmt::format("{}{}{}", text.empty() ? "" : ", ", others, of);
        }
    }
    return text;
}

std::string text_of(grammar::Meaning const& meaning, report::Paint const& paint) {
    auto text = report::fold(fmt::format("{}: {}", meaning.name, meaning.title), column);
    text.replace(0, meaning.name.size(), paint(report::Ink::bold, meaning.name)); // no name fills a line
    text += "\n\n" + indented(meaning.example) + "\n";
    auto const paragraph = [&](std::string_view some) {
        text += some.empty() ? "" : report::fold(some, column, 0) + "\n";
    };
    paragraph(meaning.takes().empty() ? "" : fmt::format("Behind it: {}.", meaning.takes()));
    paragraph(meaning.text);
    auto const also = also_read(meaning);
    paragraph(also.empty() ? "" : fmt::format("Also read: {}.", also));
    while (text.ends_with("\n\n")) {
        text.pop_back();
    }
    return text;
}

} // namespace lengthwise::cli
