#include "grammar/parse.hpp"
#include "grammar/write.hpp"

#include <catch2/catch.hpp>

#include <string>
#include <vector>

using namespace lengthwise;
using namespace lengthwise::grammar;

namespace {

/// "line: is -> would be" for every line that is not tidy.
std::vector<std::string> untidy(std::string const& text) {
    Source const source{"written.swim", text, 70};
    auto const parsed = parse(source);
    REQUIRE_FALSE(parsed.findings.has_errors());
    std::vector<std::string> rows;
    for (auto const& [line, is, would_be] : untidy_lines(parsed.tree)) {
        rows.push_back(std::to_string(line) + ": " + std::string{is} + " -> " + would_be.value_or("(goes)"));
    }
    return rows;
}

using Rows = std::vector<std::string>;

} // namespace

TEST_CASE("untidy_lines: none in a tidy text, nor where only line ends differ") {
    CHECK(untidy("").empty());
    CHECK(untidy("plan \"A\"\n\npool 25m  # c\n# d\n").empty());
    CHECK(untidy("plan \"A\"\r\n\r\npool 25m").empty());
}

TEST_CASE("untidy_lines: words, indentation, blanks at the end") {
    CHECK(untidy("plan \"A\"\nsession \n  warm up\n     100 free\n") ==
          Rows{"2: session  -> session", "3:   warm up ->   warm-up", "4:      100 free ->     100 crawl"});
}

TEST_CASE("untidy_lines: blank lines that go") {
    CHECK(untidy("\nplan \"A\"\n\n \n\npool 25m\n  \nrest 5s\n\n") ==
          Rows{"1:  -> (goes)", "4:   -> (goes)", "5:  -> (goes)", "7:    -> ", "9:  -> (goes)"});
}

TEST_CASE("untidy_lines: a line that becomes several, and one that goes") {
    CHECK(untidy("set \"a\" = (100 + 50\n+ # plus\n\n25) # end\nrest 5s\n") ==
          Rows{"1: set \"a\" = (100 + 50 -> set \"a\" = (\n  100\n  50  # plus", "2: + # plus -> (goes)",
               "4: 25) # end ->   25\n)  # end"});
}
