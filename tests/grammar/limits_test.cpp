#include "grammar/limits.hpp"
#include "grammar/parse.hpp"
#include "grammar/source.hpp"
#include "support/complaints.hpp"

#include <catch2/catch.hpp>

#include <string>

// Both sides of each limit that the parser keeps.
namespace {

using namespace lengthwise;
using test::complaints;
using test::line_complaints;

std::string nested(int depth) {
    return std::string(static_cast<std::size_t>(depth), '(') + "50" +
           std::string(static_cast<std::size_t>(depth), ')') + "\n";
}

} // namespace

TEST_CASE("a line has at most 64 KiB, its end not counted", "[limits]") {
    auto const comment = "#" + std::string(limits::line_bytes - 1, 'a');
    CHECK(complaints(comment) == "");
    CHECK(complaints(comment + "\n") == "");
    CHECK(complaints(comment + "\r\nrest 5s\n") == "");
    CHECK(complaints(comment + "a\nrest 5\n") == "1:1 syntax-limit: the line has 65537 bytes, the limit is "
                                                 "65536 = a note or comment can be two lines\n"
                                                 "2:6 syntax-time: 5 has no unit = try: rest 5s");
    auto const name = "plan \"" + std::string(limits::line_bytes - 7, 'a') + "\"";
    CHECK(complaints(name + "\n") == "");
    CHECK(complaints(name + " \n") ==
          "1:1 syntax-limit: the line has 65537 bytes, the limit is 65536 = a note or "
          "comment can be two lines");
    auto const blanks = std::string(limits::line_bytes, ' ');
    CHECK(complaints(blanks + "\n") == "");
    CHECK(complaints(blanks + " \n") != "");
    CHECK(complaints(blanks + "50\n") != "");
}

TEST_CASE("a long line is found wherever it begins", "[limits]") {
    for (std::size_t shift = 0; shift < 130; ++shift) {
        auto const text = std::string(shift, '\n') + "#" + std::string(limits::line_bytes - 1, 'a');
        CAPTURE(shift);
        CHECK(complaints(text) == "");
        CHECK(complaints(text + "a") != "");
        CHECK(complaints(text + "\n50") != ""); // no heading above it; the long line is fine
        CHECK(complaints(text + "a\n50").find("the line has 65537 bytes") != std::string::npos);
    }
}

TEST_CASE("parentheses are at most 32 deep", "[limits]") {
    CHECK(line_complaints(nested(limits::nesting)) == "");
    CHECK(line_complaints(nested(limits::nesting + 1) + "50 crwal\n") ==
          "1:33 syntax-limit: parentheses are 33 deep here, the limit is 32 = give the inner set a name: set "
          "\"inner\" = 4 x 50, then use \"inner\"\n"
          "2:4 syntax-word: no word \"crwal\"; did you mean \"crawl\"?");
}

TEST_CASE("a hundred thousand parentheses are one error", "[limits]") {
    std::string const many(100'000, '(');
    std::string lines;
    for (int i = 0; i < 100'000; ++i) {
        lines += "(\n";
    }
    for (auto const& text : {many + "\n", lines}) {
        Source const source{"a.swim", "session\nmain\n" + text};
        auto const result = grammar::parse(source);
        REQUIRE(result.findings.count(Severity::error) > 0);
        CHECK(result.findings.count(Severity::error) <= 3);
    }
}

TEST_CASE("a count is at most 9999", "[limits]") {
    CHECK(line_complaints("9999 x 25\n") == "");
    CHECK(line_complaints("10000 x 25\n") == "1:1 syntax-limit: the count is 10000, the limit is 9999");
    CHECK(line_complaints("1 x 25\n") == "");
    CHECK(line_complaints("99999999999999999999999999 x 25\n") ==
          "1:1 syntax-limit: the count is 99999999999999999999999999, the limit is 9999");
}

TEST_CASE("a session has at most 1000 sections", "[limits]") {
    std::string text = "session\n";
    for (std::uint32_t i = 0; i < limits::session_sections; ++i) {
        text += "main\n";
    }
    CHECK(complaints(text) == "");
    CHECK(complaints(text + "session\nmain\n") == "");
    CHECK(complaints(text + "cool-down\nmain\nmain\n" + text) ==
          "1002:1 syntax-limit: this is section 1001 of the session, the limit is 1000 = begin a further "
          "session above it");
}

TEST_CASE("lanes, weeks and numbers have their limits", "[limits]") {
    CHECK(line_complaints("lane 100: 50\n") == "");
    CHECK(line_complaints("lane 101: 50\n") == "1:6 syntax-number: lane 101: lanes are 1 to 100");
    CHECK(complaints("week 999\n") == "");
    CHECK(complaints("week 1000\n") == "1:6 syntax-number: week 1000: weeks are 1 to 999");
    CHECK(line_complaints("7000000m\n") == "");
    CHECK(line_complaints("7000001m\n") == "1:1 syntax-limit: the number is 7000001, the limit is 7000000");
    CHECK(line_complaints("24h\n1440min\n86400s\n24:00:00\n1440:00\n") == "");
    CHECK(line_complaints("86401s\n") == "1:1 syntax-limit: the time is 86401s, the limit is 24h");
}

TEST_CASE("fifty errors are shown, the others are counted", "[limits]") {
    std::string text;
    for (int i = 0; i < 1'000; ++i) {
        text += "50 crwal\n";
    }
    Source const source{"a.swim", "session\nmain\n" + text};
    auto const result = grammar::parse(source);
    CHECK(result.findings.kept().size() == limits::findings_shown);
    CHECK(result.findings.count(Severity::error) == 1'000);
}

TEST_CASE("a file has at most 256 MiB", "[limits][long]") {
    std::string text(limits::file_bytes, '\n');
    CHECK(complaints(text) == "");
    CHECK(complaints(text + "\n") == "1:1 syntax-limit: the file has 268435457 bytes, the limit is 268435456 "
                                     "(256 MiB) = split the plan, or "
                                     "include parts of it");
}
