#include "grammar/limits.hpp"
#include "support/hostile.hpp"
#include "support/temp_folder.hpp"

#include <catch2/catch.hpp>

#include <filesystem>
#include <string>

using hostile::Fit;
using hostile::main_set;
using hostile::survive;
using hostile::survive_path;
using hostile::times;

namespace limits = lengthwise::limits;

TEST_CASE("hostile: long lines", "[hostile]") {
    survive({
        {"a comment as long as may be", "#" + times(limits::line_bytes - 1, "a") + "\n", Fit::fine},
        {"a comment one byte longer", "#" + times(limits::line_bytes, "a") + "\n", Fit::unread, "65536"},
        {"a line of 10 MB", times(10'000'000, "a"), Fit::unread, "65536"},
        {"a comment of 10 MB", "#" + times(10'000'000, "-"), Fit::unread, "65536"},
        {"10 MB of blanks", times(10'000'000, " "), Fit::unread, "65536"},
        {"10 MB of wide characters", "# " + times(3'333'333, "游"), Fit::unread, "65536"},
        {"a ladder of 10 000 rungs", main_set("25" + times(10'000, ", 25") + " crawl"), Fit::either},
        {"a group of 10 000 items", main_set("(25" + times(10'000, "+25") + ")"), Fit::either},
        {"a split of 10 000 parts", main_set("250000 as 25" + times(9'999, " / 25")), Fit::either},
        {"10 000 send-offs", main_set("4 x 50 on 1:00" + times(9'999, ",1:00")), Fit::finding},
        {"10 000 selectors", main_set("9999 x 25" + times(9'000, ", odds")), Fit::finding},
        {"5000 notes", main_set("4 x 50" + times(5'000, " \"a\"")), Fit::either},
        {"a string without an end", main_set("4 x 50 \"" + times(60'000, "a"))},
        {"a name of 60 000 characters", "plan \"" + times(60'000, "a") + "\"\n", Fit::fine},
        {"a word of 60 000 letters", main_set("4 x 50 " + times(60'000, "a"))},
        {"10 000 quotes", main_set(times(10'000, "\""))},
        {"10 000 backslashes", "plan \"" + times(10'000, "\\") + "\"\n", Fit::either},
    });
}

TEST_CASE("hostile: many lines", "[hostile]") {
    std::string weeks;
    for (int week = 1; week <= 999; ++week) {
        weeks += "week " + std::to_string(week) + "\n  session\n    main\n      4 x 50 crawl\n";
    }
    survive({
        {"a million blank lines", times(1'000'000, "\n"), Fit::fine},
        {"200 000 comments", times(200'000, "# a\n"), Fit::fine},
        {"200 000 wrong lines", times(200'000, "crwal\n"), Fit::finding},
        {"100 000 wrong items", main_set(times(100'000, "4 x 50 crwal\n"))},
        {"100 000 pools", times(100'000, "pool 25m\n")},
        {"100 000 unused sets",
         [] {
             std::string sets;
             for (int i = 0; i < 100'000; ++i) {
                 sets += "set \"" + std::to_string(i) + "\" = 50\n";
             }
             return sets;
         }(),
         Fit::fine},
        {"999 weeks", "pool 25m\n" + weeks, Fit::fine},
        {"a thousandth week", "pool 25m\n" + weeks + "week 1000\n", Fit::finding, "999"},
        {"1000 sections", "pool 25m\nsession\n" + times(1'000, "  main\n    50\n"), Fit::fine},
        {"10 000 sections", "pool 25m\nsession\n" + times(10'000, "  main\n    50\n"), Fit::finding, "1000"},
        {"10 000 empty sessions", times(10'000, "session\n"), Fit::fine},
        {"50 000 lane lines", main_set(times(50'000, "lane 1: 25\n")), Fit::either},
    });
}

TEST_CASE("hostile: files larger than may be, without their bytes", "[hostile]") {
    lengthwise::support::TempFolder const folder;
    auto const hole = [&](char const* name, std::uintmax_t size) {
        std::filesystem::resize_file(folder.file(name, ""), size);
        return name;
    };
    survive_path(folder.path(), hole("100mb.swim", 100'000'000), {2},
                 "100mb.swim: line 1 has more than 65536 bytes");
    survive_path(folder.path(), hole("2gb.swim", 2'000'000'000), {2}, "268435456");
}

TEST_CASE("hostile: parentheses", "[hostile]") {
    std::string lines_open;
    for (int i = 0; i < 1000; ++i) {
        lines_open += "2 x (50 +\n";
    }
    auto const nest = [](std::size_t depth) {
        return main_set(times(depth, "(") + "50" + times(depth, ")"));
    };
    survive({
        {"100 000 opening", main_set(times(100'000, "(")), Fit::unread, "line 4"},
        {"60 000 opening", main_set(times(60'000, "(")), Fit::finding, "32"},
        {"10 000 opening", main_set(times(10'000, "(")), Fit::finding, "32"},
        {"10 000 closing", main_set(times(10'000, ")"))},
        {"10 000 both ways", main_set(times(10'000, ")("))},
        {"closing before opening", main_set(")50(")},
        {"as deep as may be", nest(limits::nesting), Fit::fine},
        {"one deeper", nest(limits::nesting + 1), Fit::finding, "32"},
        {"10 000 deep and closed", nest(10'000), Fit::finding, "32"},
        {"1000 lines that open one each", main_set(lines_open)},
        {"100 000 lines of one parenthesis", main_set(times(100'000, "(\n"))},
        {"empty", main_set("()")},
        {"empty and counted", main_set("9999 x ()")},
        {"brackets of other kinds", main_set("3 x [50 + 25]")},
    });
}

TEST_CASE("hostile: what multiplies", "[hostile]") {
    auto const chain = [](int sets, std::string const& body) {
        std::string text = "set \"0\" = 4 x 50\n";
        for (int i = 1; i <= sets; ++i) {
            auto const inner = "use \"" + std::to_string(i - 1) + "\"";
            text += "set \"" + std::to_string(i) + "\" = (" + inner + " " + body + " + " + inner + ")\n";
        }
        return text + main_set("use \"" + std::to_string(sets) + "\"");
    };
    survive({
        {"counts beyond 64 bits", main_set("99999999999 x (99999999999 x 100)")},
        {"the greatest count", main_set("9999 x 25"), Fit::fine},
        {"one more", main_set("10000 x 25"), Fit::finding, "9999"},
        {"a count of 2000 digits", main_set(times(2000, "9") + " x 25")},
        {"the longest rep", main_set("100000"), Fit::fine},
        {"one length more", main_set("100025"), Fit::finding, "100"},
        {"the longest session", main_set("8000 x 125"), Fit::fine},
        {"one rep more", main_set("8001 x 125"), Fit::finding, "1000"},
        {"rounds of rounds", main_set(times(16, "9999 x (") + "25" + times(16, ")"))},
        {"a thousand million reps", main_set("100 x (1000 x (9999 x 1s + 1s))"), Fit::either},
        {"more than a thousand million reps", main_set("101 x (1000 x (9999 x 1s))"), Fit::finding},
        {"more than 10 000 hours", main_set("9999 x (2 x 24h)"), Fit::finding},
        {"rests that add up", main_set("9999 x (9999 x 1s rest 24h)"), Fit::finding},
        {"a set that doubles 20 times", chain(20, ""), Fit::finding},
        {"a set that doubles 64 times", chain(64, "")},
        {"a set that doubles and differs each time", chain(20, "easy")},
        {"the same in every session", chain(10, "") + times(200, "session\n  main\n    use \"10\"\n"),
         Fit::either},
    });
}
