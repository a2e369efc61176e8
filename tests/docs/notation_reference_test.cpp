#include "grammar/limits.hpp"
#include "grammar/words.hpp"
#include "plan/rules.hpp"

#include <catch2/catch.hpp>

#include <cctype>
#include <cstdint>
#include <fstream>
#include <iterator>
#include <string>

// docs/notation.md is the reference, so nothing that the program knows may be missing there.
namespace {

using namespace lengthwise;

std::string page_text() {
    std::ifstream page{LENGTHWISE_ROOT "/docs/notation.md"};
    REQUIRE(page);
    return {std::istreambuf_iterator<char>{page}, {}};
}

bool is_letter(char c) {
    return std::isalpha(static_cast<unsigned char>(c)) != 0;
}

/// Does the page hold the word with no letter on either side?
bool names(std::string const& page, std::string const& word) {
    for (auto at = page.find(word); at != std::string::npos; at = page.find(word, at + 1)) {
        auto const end = at + word.size();
        if ((at == 0 || !is_letter(page[at - 1])) && (end == page.size() || !is_letter(page[end]))) {
            return true;
        }
    }
    return false;
}

/// 65536 as the page has it: "65 536".
std::string grouped(std::uint64_t number) {
    auto digits = std::to_string(number);
    if (digits.size() > 4) {
        for (auto at = static_cast<std::ptrdiff_t>(digits.size()) - 3; at > 0; at -= 3) {
            digits.insert(static_cast<std::size_t>(at), " ");
        }
    }
    return digits;
}

std::string row(std::string const& of, std::string const& at_most) {
    return "| " + of + " | " + at_most + " |\n";
}

} // namespace

TEST_CASE("the reference has every word of the notation") {
    auto const page = page_text();
    for (auto i = static_cast<int>(Word::none) + 1; i < static_cast<int>(Word::count_); ++i) {
        std::string const word{spelling(static_cast<Word>(i))};
        INFO(word);
        CHECK(names(page, word));
    }
}

TEST_CASE("the reference has every rule that limit and allow may name") {
    auto const page = page_text();
    for (auto const& rule : plan::rules) {
        INFO(rule.name);
        CHECK(page.find('`' + std::string{rule.name} + '`') != std::string::npos);
    }
}

TEST_CASE("the reference has every limit with its size") {
    auto const page = page_text();
    for (auto const& line : {
             row("one file", grouped(limits::file_bytes >> 20U) + " MiB"),
             row("a file with all it includes", grouped(limits::bundle_bytes >> 30U) + " GiB"),
             row("one line, its end not counted", grouped(limits::line_bytes >> 10U) + " KiB"),
             row("groups in groups, a `use` counted as one", grouped(limits::nesting) + " deep"),
             row("files that include files", grouped(limits::include_depth) + " deep"),
             row("files of one plan", grouped(limits::include_files)),
             row("the count before `x`, and other counts of reps or breaths", grouped(limits::repeat)),
             row("one rep", grouped(limits::rep_km) + " km"),
             row("one session, each lane", grouped(limits::session_km) + " km"),
             row("reps of one session, over all its lines", grouped(limits::session_reps)),
             row("time of one session, over all its lines, high estimate",
                 grouped(limits::session_hours) + " h"),
             row("further readings of shared sets in one session", grouped(limits::session_contexts)),
             row("further readings of shared sets in one file", grouped(limits::file_contexts)),
             row("lane", grouped(limits::lanes)),
             row("week", grouped(limits::weeks)),
             row("findings shown for a file, of each severity",
                 grouped(limits::findings_shown) + ", the rest counted"),
         }) {
        INFO(line);
        CHECK(page.find(line) != std::string::npos);
    }
}
