#include "support/hostile.hpp"
#include "support/program.hpp"
#include "support/temp_folder.hpp"

#include <catch2/catch.hpp>

#include <cstdint>
#include <string>

using hostile::Fit;
using hostile::main_set;
using hostile::survive;
using hostile::times;

namespace {

std::string const plan = main_set("4 x 50 crawl");

/// Every byte of ASCII text as a unit of `width` bytes, the low byte first or last.
std::string widened(std::string const& text, std::size_t width, bool low_first) {
    std::string result;
    for (char const c : text) {
        std::string unit(width, '\0');
        unit[low_first ? 0 : width - 1] = c;
        result += unit;
    }
    return result;
}

/// The same bytes every time, and no two runs of them alike.
std::string noise(std::size_t size) {
    std::string result(size, '\0');
    std::uint64_t state = 0x9E37'79B9'7F4A'7C15;
    for (char& c : result) {
        state = state * 6'364'136'223'846'793'005ULL + 1'442'695'040'888'963'407ULL;
        c = static_cast<char>(state >> 56U);
    }
    return result;
}

std::string named(std::string_view name) {
    return "plan \"" + std::string{name} + "\"\n" + plan;
}

std::string nul(std::string_view before, std::string_view after) {
    return std::string{before} + '\0' + std::string{after};
}

} // namespace

TEST_CASE("hostile: files with next to nothing in them", "[hostile]") {
    survive({
        {"empty", "", Fit::fine},
        {"one line end", "\n", Fit::fine},
        {"blank lines", times(1000, " \t \n"), Fit::fine},
        {"comments only", "# nothing\n   # more of it\n#", Fit::fine},
        {"a byte order mark only", "\xEF\xBB\xBF", Fit::fine},
        {"half a byte order mark", "\xEF\xBB"},
        {"one quote", "\""},
        {"one parenthesis", "("},
        {"one letter", "a"},
        {"one backslash", "\\"},
    });
}

TEST_CASE("hostile: encodings", "[hostile]") {
    survive({
        {"byte order mark", "\xEF\xBB\xBF" + plan, Fit::fine},
        {"two byte order marks", "\xEF\xBB\xBF\xEF\xBB\xBF" + plan},
        {"byte order mark in a comment", plan + "# \xEF\xBB\xBF\n"},
        {"UTF-16, low byte first", "\xFF\xFE" + widened(plan, 2, true)},
        {"UTF-16, high byte first", "\xFE\xFF" + widened(plan, 2, false)},
        {"UTF-16 without a mark", widened(plan, 2, true)},
        {"UTF-32", std::string{"\xFF\xFE\0\0", 4} + widened(plan, 4, true)},
        {"Latin-1 in a name", named("Ren\xE9")},
        {"Latin-1 in a comment", plan + "# Ren\xE9\n"},
        {"overlong slash", named("\xC0\xAF")},
        {"overlong in three bytes", named("\xE0\x80\xAF")},
        {"half of a surrogate pair", named("\xED\xA0\x80")},
        {"beyond Unicode", named("\xF4\x90\x80\x80")},
        {"five bytes", named("\xF8\x88\x80\x80\x80")},
        {"a character cut off by the end", "# \xE2\x85"},
        {"a character cut off by a quote", named("\xE2\x85")},
        {"a second byte alone", named("\x80")},
        {"FE and FF", named("\xFE\xFF")},
        {"noise", noise(65'536)},
    });
}

TEST_CASE("hostile: control characters", "[hostile]") {
    survive({
        {"NUL in a name", nul("plan \"a", "b\"\n" + plan)},
        {"NUL in a comment", plan + nul("# a", "b\n")},
        {"NUL first", nul("", plan)},
        {"NULs only", std::string(4096, '\0')},
        {"escape sequence in a name", named("\x1B[31mred\x1B[0m")},
        {"escape sequence in a comment", plan + "# \x1B[2J\n"},
        {"escape sequence for a word", main_set("4 x 50 \x1B[1mcrawl")},
        {"window title", plan + "# \x1B]0;owned\x07\n"},
        {"clipboard", named("\x1B]52;c;cm0gLXJmIC8=\x07")},
        {"C1 control sequence", named("\xC2\x9B"
                                      "31m")},
        {"next line", plan + "\xC2\x85"},
        {"delete", named("\x7F")},
        {"backspaces over an error", main_set("4 x 50 crwal\b\b\b\b\bcrawl")},
        {"bell", named("\a")},
        {"vertical tab", plan + "\v\n"},
        {"form feed", plan + "\f\n"},
        {"escapes on a broken line", main_set("\"\x1B[31m" + times(50, "\x1B[A"))},
    });
}

TEST_CASE("hostile: line ends", "[hostile]") {
    auto with_end = [](std::string_view end) {
        std::string text;
        for (auto const* const line : {"pool 25m", "session", "  main", "    4 x 50 crawl"}) {
            text.append(line).append(end);
        }
        return text;
    };
    survive({
        {"CR LF", with_end("\r\n"), Fit::fine},
        {"CR only", with_end("\r")},
        {"LF CR", with_end("\n\r")},
        {"CR CR LF", with_end("\r\r\n")},
        {"CR at the end of the file", plan + "\r"},
        {"both kinds", "pool 25m\r\nsession\n  main\r\n    4 x 50 crawl\n", Fit::fine},
        {"no end of the last line", "pool 25m\nsession\n  main\n    4 x 50 crawl", Fit::fine},
        {"U+2028 for a line end", with_end("\xE2\x80\xA8")},
    });
}

TEST_CASE("hostile: look-alikes that phones and word processors write", "[hostile]") {
    survive({
        {"no-break space", main_set("4\xC2\xA0x 50 crawl")},
        {"thin space", main_set("4\xE2\x80\x89x 50 crawl")},
        {"ideographic space", main_set("4\xE3\x80\x80x 50 crawl")},
        {"zero-width space", main_set("4 x 50 cra\xE2\x80\x8Bwl")},
        {"soft hyphen", main_set("4 x 50 cra\xC2\xADwl")},
        {"en dash", main_set("4 x 50 crawl rest 20–40s")},
        {"minus sign", main_set("4 x 50 crawl rest 20−40s")},
        {"curly quotes", main_set("4 x 50 crawl “easy now”")},
        {"low quotes", main_set("4 x 50 crawl „easy now“")},
        {"multiplication sign", main_set("4 × 50 crawl"), Fit::fine},
        {"Cyrillic x", main_set("4 х 50 crawl")},
        {"Cyrillic с in a word", main_set("4 x 50 сrawl")},
        {"full-width digits", main_set("４ x ５０ crawl")},
        {"Arabic digits", main_set("٤ x ٥٠ crawl")},
        {"superscript", main_set("4 x 50² crawl")},
        {"vulgar fraction", "pool 33⅓ m\n"},
        {"fraction slash", "pool 33 1⁄3 m\n"},
        {"full-width parentheses", main_set("3 x （50 crawl）")},
    });
}

TEST_CASE("hostile: names that turn text round or pile it up", "[hostile]") {
    survive({
        {"right-to-left override in a name",
         named("\xE2\x80\xAE"
               "gnp.exe"),
         Fit::fine},
        {"isolates in a comment", plan + "# \xE2\x81\xA6\xE2\x81\xA9\n", Fit::fine},
        {"override before an error", main_set("4 x 50 \"\xE2\x80\xAE\" crwal")},
        {"zero-width joiners", named(times(200, "\xE2\x80\x8D")), Fit::fine},
        {"a thousand accents on one letter", named("a" + times(1000, "\xCC\x81")), Fit::fine},
        {"a thousand accents before an error", main_set("50 \"a" + times(1000, "\xCC\x81") + "\" crwal")},
        {"wide characters before an error", main_set("50 \"放松，慢慢游\" crwal")},
        {"a family of emoji", named("👨‍👩‍👧‍👦🏊🏽‍♀️"), Fit::fine},
        {"private use and tags", named("\xEE\x80\x80\xF3\xA0\x81\x81"), Fit::fine},
        {"no character", named("\xEF\xBF\xBF"), Fit::either},
        {"Hebrew and Arabic", named("בריכה مسبح"), Fit::fine},
        {"markup", named("<b onload=\\\"x\\\">&#0;</b>]]>"), Fit::fine},
        {"formula", named("=cmd|'/c calc'!A1"), Fit::fine},
        {"format marks", named("%s%n%1000000d{}{0:>99999}"), Fit::fine},
        {"CI command", named("::error::%0A"), Fit::fine},
    });
}

TEST_CASE("hostile: the program itself for a plan", "[hostile]") {
    survive({{"the program", lengthwise::support::bytes_of(LENGTHWISE_BINARY), Fit::unread}});
}
