#include "grammar/words.hpp"

#include <catch2/catch.hpp>

#include <algorithm>
#include <cctype>
#include <random>
#include <set>
#include <string>
#include <vector>

using namespace lengthwise;

namespace {

struct Synonym {
    std::string_view text;
    Word word;
};

/// What docs/notation.md lists, but for those of two words.
constexpr Synonym synonyms[] = {
    {"freestyle", Word::crawl},     {"free", Word::crawl},      {"backstroke", Word::back},
    {"breaststroke", Word::breast}, {"butterfly", Word::fly},   {"IM", Word::medley},
    {"moderate", Word::steady},     {"fast", Word::hard},       {"strong", Word::hard},
    {"max", Word::sprint},          {"kickboard", Word::board}, {"olympic", Word::standard},
    {"warmup", Word::warm_up},      {"metre", Word::metres},    {"metres", Word::metres},
    {"meter", Word::metres},        {"meters", Word::metres},   {"yard", Word::yards},
    {"yards", Word::yards},         {"length", Word::lengths},  {"sec", Word::seconds},
    {"secs", Word::seconds},        {"second", Word::seconds},  {"seconds", Word::seconds},
    {"mins", Word::minutes},        {"minute", Word::minutes},  {"minutes", Word::minutes},
    {"hour", Word::hours},          {"hours", Word::hours},     {"breath", Word::breaths},
    {"Monday", Word::mon},          {"Tuesday", Word::tue},     {"Wednesday", Word::wed},
    {"Thursday", Word::thu},        {"Friday", Word::fri},      {"Saturday", Word::sat},
    {"Sunday", Word::sun},
};

std::vector<Word> all_words() {
    std::vector<Word> words;
    for (int i = 1; i < static_cast<int>(Word::count_); ++i) {
        words.push_back(static_cast<Word>(i));
    }
    return words;
}

std::string upper(std::string_view text) {
    std::string result{text};
    std::ranges::transform(result, result.begin(),
                           [](char c) { return c >= 'a' && c <= 'z' ? static_cast<char>(c - 32) : c; });
    return result;
}

} // namespace

TEST_CASE("every word is found by its spelling, whatever its case", "[words]") {
    std::set<std::string_view> spellings;
    for (auto const word : all_words()) {
        CAPTURE(static_cast<int>(word), spelling(word));
        CHECK_FALSE(spelling(word).empty());
        CHECK(find_word(spelling(word)) == word);
        CHECK(find_word(upper(spelling(word))) == word);
        CHECK(spellings.insert(spelling(word)).second);
    }
}

TEST_CASE("synonyms are found and are not what is written", "[words]") {
    for (auto const& [text, word] : synonyms) {
        CAPTURE(text);
        CHECK(find_word(text) == word);
        CHECK(find_word(upper(text)) == word);
        CHECK(spelling(word) != text);
    }
}

TEST_CASE("what is no word is not found", "[words]") {
    for (auto const* const text :
         {"", "c", "craw", "crawls", "crawl ", " crawl", "cr\xC3\xA4wl", "warm_up", "warm--up",
          "super-sprint-sprint-sprint", "breaststrokebreaststroke", "-", "x2"}) {
        CAPTURE(text);
        CHECK(find_word(text) == Word::none);
    }
    CHECK(find_word(std::string(16, 'a')) == Word::none);
    CHECK(find_word(std::string(100'000, 'a')) == Word::none);
    CHECK(find_word(std::string_view{"crawl\0", 6}) == Word::none);
}

TEST_CASE("words turn into what they mean and back", "[words]") {
    for (auto const word : all_words()) {
        CAPTURE(spelling(word));
        CHECK((!is_stroke(word) || word_of(stroke_of(word)) == word));
        CHECK((!is_mode(word) || word_of(mode_of(word)) == word));
        CHECK((!is_effort(word) || word_of(effort_of(word)) == word));
        CHECK((!is_gear(word) || word_of(gear_of(word)) == word));
        CHECK((!is_heading(word) || word_of(section_of(word)) == word));
    }
    CHECK(stroke_of(Word::crawl) == Stroke::crawl);
    CHECK(stroke_of(Word::choice) == Stroke::choice);
    CHECK(mode_of(Word::drill) == Mode::drill);
    CHECK(effort_of(Word::sprint) == EffortWord::sprint);
    CHECK(gear_of(Word::wetsuit) == Gear::wetsuit);
    for (auto const kind : {RaceKind::super_sprint, RaceKind::sprint, RaceKind::standard, RaceKind::middle,
                            RaceKind::long_course}) {
        CHECK(race_of(word_of(kind)) == kind);
    }
}

TEST_CASE("a slip finds the word that was meant", "[words]") {
    auto const any = [](Word) { return true; };
    CHECK(nearest_word("crwal", any) == "crawl");
    CHECK(nearest_word("Crawll", any) == "crawl");
    CHECK(nearest_word("freestlye", any) == "freestyle");
    CHECK(nearest_word("wiht", any) == "with");
    CHECK(nearest_word("mian", any) == "main");
    CHECK(nearest_word("thershold", any) == "threshold");
    CHECK_FALSE(nearest_word("miiin", any)); // two slips are too many for four letters
    CHECK_FALSE(nearest_word("q", any));     // one letter is near to everything
    CHECK_FALSE(nearest_word("goggles", any));
    CHECK_FALSE(nearest_word(std::string(100'000, 'c'), any));
}

TEST_CASE("a slip finds only what is wanted", "[words]") {
    CHECK(nearest_word("bact", [](Word w) { return is_stroke(w); }) == "back");
    CHECK(nearest_word("boar", [](Word w) { return is_gear(w); }) == "board");
    CHECK_FALSE(nearest_word("bact", [](Word w) { return is_gear(w); }));
    WordSet wanted;
    wanted.set(static_cast<std::size_t>(Word::needed));
    CHECK(nearest_word("neded", wanted) == "needed");
    CHECK_FALSE(nearest_word("crwal", wanted));
}

TEST_CASE("edit distance counts swapped neighbours as one", "[words]") {
    CHECK(edit_distance("crawl", "crawl", 2) == 0);
    CHECK(edit_distance("CRAWL", "crawl", 2) == 0);
    CHECK(edit_distance("crwal", "crawl", 2) == 1);
    CHECK(edit_distance("craw", "crawl", 2) == 1);
    CHECK(edit_distance("crrawl", "crawl", 2) == 1);
    CHECK(edit_distance("brawl", "crawl", 2) == 1);
    CHECK(edit_distance("warlc", "crawl", 3) == 4);
    CHECK(edit_distance("", "ab", 2) == 2);
    CHECK(edit_distance("", "abc", 2) == 3);
}

namespace {

/// The textbook's table, whole.
int plain_distance(std::string const& a, std::string const& b) {
    std::vector<std::vector<int>> d(a.size() + 1, std::vector<int>(b.size() + 1));
    for (std::size_t i = 0; i <= a.size(); ++i) {
        for (std::size_t j = 0; j <= b.size(); ++j) {
            if (i == 0 || j == 0) {
                d[i][j] = static_cast<int>(i + j);
                continue;
            }
            d[i][j] = std::min(
                {d[i - 1][j] + 1, d[i][j - 1] + 1, d[i - 1][j - 1] + (a[i - 1] == b[j - 1] ? 0 : 1)});
            if (i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1]) {
                d[i][j] = std::min(d[i][j], d[i - 2][j - 2] + 1);
            }
        }
    }
    return d[a.size()][b.size()];
}

} // namespace

TEST_CASE("edit distance agrees with the whole table up to its limit", "[words]") {
    std::mt19937 random{20270613};
    auto const word = [&] {
        std::string text(random() % 9, 'a');
        for (char& c : text) {
            c = static_cast<char>('a' + random() % 3);
        }
        return text;
    };
    for (int i = 0; i < 5'000; ++i) {
        auto const a = word();
        auto const b = word();
        for (int limit = 0; limit < 4; ++limit) {
            CAPTURE(a, b, limit);
            REQUIRE(edit_distance(a, b, limit) == std::min(plain_distance(a, b), limit + 1));
        }
    }
}
