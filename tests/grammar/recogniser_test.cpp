#include "cases/case_file.hpp"
#include "recogniser/against.hpp"
#include "recogniser/recogniser.hpp"
#include "support/derive.hpp"
#include "support/generate.hpp"
#include "support/mutate.hpp"
#include "support/temp_folder.hpp"

#include <catch2/catch.hpp>

#include <algorithm>
#include <filesystem>
#include <sstream>
#include <string>
#include <vector>

// The parser is held against a second reader, written apart from it by the same pages: the
// two agree on whether a text is one of the notation, and else on its first bad line.
namespace {

using namespace lengthwise;
namespace fs = std::filesystem;

void agree(std::string const& text) {
    auto const difference = recogniser::disagreement(text);
    if (!difference.empty()) {
        CAPTURE(text);
        FAIL_CHECK(difference);
    }
}

std::vector<std::string> files(std::string const& folder, std::string const& ending) {
    std::vector<std::string> result;
    for (auto const& entry : fs::directory_iterator{LENGTHWISE_ROOT "/" + folder}) {
        if (entry.path().extension() == ending) {
            result.push_back(support::bytes_of(entry.path().string()));
        }
    }
    std::sort(result.begin(), result.end());
    return result;
}

/// All files of all golden cases, and what stands on their standard input.
std::vector<std::string> texts_of_cases() {
    std::vector<std::string> result;
    for (auto const& text : files("tests/cases", ".case")) {
        for (auto const& section : cases::parse_case(text).sections) {
            if (section.kind() == "file" || section.kind() == "input") {
                result.push_back(section.body);
            }
        }
    }
    return result;
}

/// Of productions.txt, with `\n`, `\r` and `\\` taken for what they mean.
std::vector<std::string> examples() {
    std::vector<std::string> result;
    std::istringstream table{support::bytes_of(LENGTHWISE_ROOT "/tests/grammar/productions.txt")};
    for (std::string row; std::getline(table, row);) {
        auto const line = row.find(" line: ");
        auto const at = line != std::string::npos ? line : row.find(" file: ");
        if (row.starts_with('#') || at == std::string::npos) {
            continue;
        }
        std::string text = line != std::string::npos ? "session\nmain\n" : "";
        for (auto i = at + 7; i < row.size(); ++i) {
            bool const escape = row[i] == '\\' && i + 1 < row.size();
            i += escape ? 1U : 0U;
            text += !escape ? row[i] : row[i] == 'n' ? '\n' : row[i] == 'r' ? '\r' : row[i];
        }
        result.push_back(text);
    }
    return result;
}

test::Wanted wanted(unsigned seed) {
    test::Wanted result;
    result.seed = seed;
    result.untidy = seed % 2 == 1;
    return result;
}

/// Small plans, so that a change is likely to meet something.
std::string small_plan(unsigned seed) {
    auto what = wanted(seed);
    what.weeks = 1;
    what.sessions = 1;
    return test::generate(what).text;
}

constexpr std::size_t good = 0;

struct OnPaper {
    std::string text;
    std::size_t line; ///< the first bad one, or `good`
};

/// A line of the main part, the third of its text.
OnPaper line(std::string const& text, bool is_good) {
    return {"session\nmain\n" + text + "\n", is_good ? good : 3};
}

} // namespace

TEST_CASE("the recogniser knows the notation's page", "[grammar][recogniser]") {
    // Answers from docs/notation.md, section by section, without asking the program.
    std::vector<OnPaper> const table{
        // 1 Text
        {"\xEF\xBB\xBFpool 25m\r\nrest 20s\r\n", good},
        {"pool 25m\n# a \x1B here\nrest 20s\n", 2},
        {"pool 25m\nrest 20s \xE2\x80\x93 40s\n", 2},
        {"pool 25m\n\"20 \xE2\x80\x93 40\" # \xE2\x80\x93\n", good},
        {"pool 25m\rrest 20s\n", 1},
        line(R"("a \"quote\" and a \\")", true),
        line(R"("a tab is \t")", false),
        line("4x50 CRAWL", true),
        line("4x50crawl", false),
        line("4 xcrawl", false),
        line("3x(100 crawl + 50 back)", true),
        line("4 \xC3\x97 50 m", true),
        line("50 at 95 %", false),
        line("1,500 crawl", false),
        line("1, 500 crawl", true),
        line("100, 200,", false),
        line("50 as 25/25", false),
        line("50 as 25 / 25", true),
        line("lane 1:50", false),
        line("lane 1 - 2 : 50", true),
        // 2 What stands where
        {"pool 25m\nplan \"late\"\n", 2},
        {"session\nmain\n50\nset \"a\" = 50\n", 4},
        {"week 1\npool 25m\nsession\nrest 10s\nmain\n50\n", good},
        {"week 1\nsession\nmain\n50\npool 25m\n", 5},
        {"pool 25m\n4 x 100 crawl\n", 2},
        {"main\n50\n", 1},
        {"race \"A\" 400m on 2027-02-29\n", 1},
        {"session\nmain easy \"name\"\n", 2},
        {"session\nmain \"name\" easy rest 20-40s\n", good},
        // 5 Amounts
        line("33 1/3 m", true),
        line("33 1/5 m", false),
        line("12.5yd", false),
        line("10min 30s crawl", false),
        line("50 rest 20-0:40", false),
        line("50 rest 30s-1min", true),
        // 7 to 10
        line("100 as 50 kick / 50 crawl with fins on 2:30, last with nothing", true),
        line("100 as 50 kick / 50 crawl with fins easy", false),
        line("100, 200 as 50 / 50", false),
        line("4 x 100, 200", false),
        line("50 easy, odds hard rest 20s", false),
        line("pull 50", false),
        line("4 x 50, every 3rd hard first 2 easy", true),
        // 9 and 18: parentheses over lines
        {"session\nmain\n2 x (\n50 +\n\n25 # a\n25\n) rest 5s\n50\n", good},
        {"session\nmain\n2 x (\n50\nmain\n50\n", 3},
        {"session\nmain\n(50\npause 1min\n50)\n", 4},
        {"session\nmain\n(50\n\"( \n)\n50\n", 3},
        {"session\nmain\n50)\n", 3},
    };
    for (auto const& [text, first] : table) {
        CAPTURE(text);
        auto const bad = recogniser::first_bad_line(text);
        CHECK((bad ? bad->line : good) == first);
        agree(text);
    }
}

TEST_CASE("both readers agree on the examples of the grammar", "[grammar][recogniser]") {
    auto const texts = examples();
    CHECK(texts.size() > 140);
    std::for_each(texts.begin(), texts.end(), agree);
}

TEST_CASE("both readers agree on the texts that come with the project", "[grammar][recogniser]") {
    auto const sets = files("sets", ".swim");
    auto const cases = texts_of_cases();
    CHECK(sets.size() >= 5);
    CHECK(cases.size() >= 100);
    std::for_each(sets.begin(), sets.end(), agree);
    std::for_each(cases.begin(), cases.end(), agree);
}

TEST_CASE("both readers agree on generated plans", "[grammar][recogniser]") {
    for (unsigned seed = 0; seed < 2'000; ++seed) {
        auto const text = test::generate(wanted(seed)).text;
        REQUIRE_FALSE(recogniser::first_bad_line(text));
        agree(text);
    }
}

TEST_CASE("both readers agree on what the grammar's own productions make", "[grammar][recogniser]") {
    test::Derivation const grammar{support::bytes_of(LENGTHWISE_ROOT "/grammar/notation.ebnf")};
    bench::Random random{1};
    unsigned accepted = 0;
    for (int i = 0; i < 4'000; ++i) {
        for (auto const& text : {grammar.derive("file", random),
                                 grammar.derive("head", random) + "\n" + grammar.derive("week", random),
                                 "session\nmain\n" + grammar.derive("item", random) + "\n" +
                                     grammar.derive("line", random) + "\n"}) {
            accepted += recogniser::first_bad_line(text) ? 0U : 1U;
            agree(text);
        }
    }
    // Figures at a limit, blanks left out and what comments forbid make the others wrong.
    CHECK(accepted > 2'000);
    CHECK(accepted < 10'000);
}

TEST_CASE("both readers agree on spoiled texts", "[grammar][recogniser]") {
    auto texts = examples();
    for (auto const& text : files("sets", ".swim")) {
        texts.push_back(text);
    }
    for (unsigned seed = 0; seed < 200; ++seed) {
        texts.push_back(small_plan(seed));
    }
    unsigned refused = 0;
    for (unsigned seed = 0; seed < 24'000; ++seed) {
        auto const text = test::Mutator{seed}.spoil(texts[seed % texts.size()]);
        refused += recogniser::first_bad_line(text) ? 1U : 0U;
        agree(text);
    }
    // Neither nearly all nor nearly none: what is spoiled must remain worth reading.
    CHECK(refused > 8'000);
    CHECK(refused < 22'000);
}

TEST_CASE("both readers agree where they once did not", "[grammar][recogniser]") {
    auto const refused_by_both = [](std::string const& text) {
        CAPTURE(text);
        CHECK(recogniser::first_bad_line(text));
        agree(text);
    };
    SECTION("a clock with hours lacks none") {
        refused_by_both("session\nmain\n:30:30 swim\n");
    }
    SECTION("a rule touches no figure") {
        refused_by_both("limit slot5min\n");
        refused_by_both("limit rep-step43%\n");
    }
    SECTION("a cycle touches no word") {
        refused_by_both("session\nmain\n8 x 50 descend 1-4easy\n");
    }
    SECTION("the low end of a range is no fraction") {
        refused_by_both("rest 9 1/3-60s\n");
        refused_by_both("limit rest-band 9 1/3-60s\n");
    }
    SECTION("neither split nor break stands behind a counted use") {
        refused_by_both("session\nmain\n2 x use \"a\" as 25 / 25\n");
        refused_by_both("session\nmain\n2 x use \"a\" broken at 25 for 5s\n");
    }
    SECTION("a string that escapes nothing ends all the same") {
        refused_by_both("session\nmain\n(50\n50 \"\\(\"\n50)\n");
    }
    SECTION("synonyms stand wherever their word may") {
        for (std::string const text : {"factor front crawl 95%\n", "race max on 2027-06-13\n"}) {
            CAPTURE(text);
            CHECK_FALSE(recogniser::first_bad_line(text));
            agree(text);
        }
    }
}

TEST_CASE("a disagreement of the two readers would be seen", "[grammar][recogniser]") {
    auto const bad = recogniser::first_bad_line("session\nmain\n50\n50 crwal\n50 crwal\n");
    REQUIRE(bad);
    CHECK(bad->line == 4);
    CHECK(bad->or_line == 4);
    // A slip for a heading may end the parentheses or stand inside them.
    auto const slip = recogniser::first_bad_line("session\nmain\n(50\nmian\n50)\n");
    REQUIRE(slip);
    CHECK(slip->line == 4);
    CHECK(slip->or_line == 3);
}
