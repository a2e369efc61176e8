#include "support/complaints.hpp"

#include <catch2/catch.hpp>

using lengthwise::test::check_lines;

TEST_CASE("characters that phones write", "[grammar]") {
    check_lines({
        {"4 x 50 rest 20–40s", "1:15 syntax-character: an en dash (U+2013) = type -"},
        {"4 x 50 rest 20—40s", "1:15 syntax-character: an em dash (U+2014) = type -"},
        {"50 drill “fist”", R"(1:10 syntax-character: a curly quote (U+201C) = type ")"},
        {"50\u00A0crawl", "1:3 syntax-character: a no-break space (U+00A0) = type a blank"},
        {"50 ½", "1:4 syntax-character: a fraction sign (U+00BD) = type 1/2"},
        {"33⅓m", "1:3 syntax-character: a fraction sign (U+2153) = type 33 1/3"},
        {"4 x 16⅚", "1:7 syntax-character: a fraction sign (U+215A) = type 16 5/6"},
        {"４ x 50", "1:1 syntax-character: a wide digit (U+FF14) = type 4"},
        {"٤ x 50", "1:1 syntax-character: a digit of another script (U+0664) = type 4"},
        {"50 crawl…", "1:9 syntax-character: an ellipsis (U+2026) = type the words in full"},
        {"50 café",
         R"(1:7 syntax-character: the character U+00E9 outside of quotes = names and notes stand in "quotes", comments behind #)"},
        {"50 \u200Bcrawl", "1:4 syntax-character: an invisible character (U+200B) = delete it"},
        {R"(50 "café – “go”" # –)", ""},
        {"50 🏊",
         R"(1:4 syntax-character: the character U+1F3CA outside of quotes = names and notes stand in "quotes", comments behind #)"},
    });
}
