#include "cli/explain_word.hpp"
#include "grammar/meanings.hpp"
#include "grammar/synonyms.hpp"
#include "support/read_plan.hpp"
#include "support/temp_folder.hpp"

#include <catch2/catch.hpp>

#include <cstdlib>
#include <fstream>
#include <string>

/// docs/words.md is what `explain` says of every word, made of the table in grammar/meanings*. With
/// LENGTHWISE_UPDATE set the page is written anew.
namespace lengthwise {
namespace {

using grammar::Meaning;

constexpr auto page_file = LENGTHWISE_ROOT "/docs/words.md";

std::string entry(Meaning const& meaning) {
    auto text = "### `" + std::string{meaning.name} + "`\n\n" + std::string{meaning.title} + "\n\n```" +
                (meaning.kind == Meaning::Example::lines ? "swim-line" : "swim") + "\n" +
                std::string{meaning.example} + "```\n\n";
    auto const sentence = [&text](std::string const& some) { text += some.empty() ? "" : some + "\n\n"; };
    sentence(meaning.takes().empty() ? "" : "Behind it: " + std::string{meaning.takes()} + ".");
    sentence(std::string{meaning.text});
    auto const also = cli::also_read(meaning);
    sentence(also.empty() ? "" : "Also read: " + also + ".");
    return text;
}

std::string page() {
    std::string text = "# The words, one by one\n\nWhat `lengthwise explain WORD` says. How they go together "
                       "stands in [notation.md](notation.md). This page is made by the program's tests.\n\n";
    auto const heads = {"Statements, settings, headings", "Behind an amount", "Lines, units, signs"};
    auto head = heads.begin();
    for (auto const& some : grammar::meanings()) {
        text += "## " + std::string{*head++} + "\n\n";
        for (auto const& meaning : some) {
            text += entry(meaning);
        }
    }
    text.pop_back();
    return text;
}

} // namespace

TEST_CASE("docs/words.md is what the program knows of its words", "[words-page]") {
    if (std::getenv("LENGTHWISE_UPDATE") != nullptr) {
        std::ofstream{page_file} << page();
    }
    CHECK(support::bytes_of(page_file) == page());
}

TEST_CASE("the example of every word is read without an error", "[words-page]") {
    for (auto const& some : grammar::meanings()) {
        for (auto const& meaning : some) {
            INFO(meaning.name);
            auto const lines = meaning.kind == Meaning::Example::lines;
            auto const text = (lines ? "pool 25m\nsession\nmain\n" : "") + std::string{meaning.example};
            CHECK(support::read_plan(text, {{"/sets.swim", "set \"s\" = 50\n"}}).error() == "");
            CHECK(meaning.example.ends_with('\n'));
            CHECK(meaning.name.size() < 60);
        }
    }
}

TEST_CASE("every word and every synonym is explained", "[words-page]") {
    for (auto i = static_cast<int>(Word::none) + 1; i < static_cast<int>(Word::count_); ++i) {
        auto const word = static_cast<Word>(i);
        INFO(spelling(word));
        CHECK(!cli::meanings_of(spelling(word)).empty());
        for (auto const synonym : synonyms(word)) {
            INFO(synonym);
            CHECK(cli::meanings_of(synonym) == cli::meanings_of(spelling(word)));
        }
    }
    for (auto const* two : {"if time", "warm up", "front crawl", "negative split", "open water"}) {
        INFO(two);
        CHECK(cli::meanings_of(two).size() == 1);
    }
    CHECK(cli::meanings_of("drill").size() == 2);
    CHECK(cli::meanings_of("kick lane").empty());
    CHECK(cli::meanings_of("crwal").empty());
    CHECK(cli::meanings_of("").empty());
}

} // namespace lengthwise
