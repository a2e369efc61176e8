#include "report/width.hpp"

#include <catch2/catch.hpp>

namespace lengthwise::report {

TEST_CASE("cells count wide characters twice and combining ones not at all") {
    CHECK(cells("") == 0);
    CHECK(cells("crawl") == 5);
    CHECK(cells("33⅓") == 3);
    CHECK(cells("放松") == 4);
    CHECK(cells("e\u0301te\u0301") == 3);
    CHECK(cells("é") == 1);
    CHECK(cells("a\u200Db") == 2); // a joiner takes no room
    CHECK(cells("\xFF") == 1);
}

TEST_CASE("padding goes by cells") {
    CHECK(pad_right("放", 4) + "|" == "放  |");
    CHECK(pad_left("33⅓", 5) == "  33⅓");
    CHECK(pad_left("longer", 3) == "longer");
    CHECK(pad_right("longer", 3) == "longer");
}

TEST_CASE("a cut text ends in dots and fits") {
    CHECK(cut("Longer reps", 11) == "Longer reps");
    CHECK(cut("Longer reps", 7) == "Longer…");
    CHECK(cut("Longer reps", 7, true) == "Long...");
    CHECK(cut("放松慢游", 5) == "放松…");
    CHECK(cut("放松慢游", 6) == "放松…"); // half a character does not fit
    CHECK(cut("e\u0301e\u0301e\u0301", 2) == "e\u0301…");
    CHECK(cut("abc", 0).empty());
    CHECK(cut("abcdef", 2, true) == "ab");
}

TEST_CASE("text folds at blanks, and within a word only where it must") {
    CHECK(fold("one two three", 20) == "one two three");
    CHECK(fold("one two three", 8) == "one two\n  three");
    CHECK(fold("one two three", 8, 0) == "one two\nthree");
    CHECK(fold("abcdefghij", 4, 0) == "abcd\nefgh\nij");
    CHECK(fold("abcdefghij", 4, 2) == "abcd\n  ef\n  gh\n  ij");
    CHECK(fold("", 4).empty());
    CHECK(fold("one   two  ", 6, 0) == "one\ntwo"); // no blank at a line's end
    CHECK(fold("放松慢游", 3, 0) == "放\n松\n慢\n游");
    CHECK(fold("放松", 1, 0) == "放\n松"); // wider than the line: still one by one
}

TEST_CASE("parts break between each other first") {
    CHECK(fold_parts({"High hall", "Thu", "pool 33⅓ m"}, " · ", 60) == "High hall · Thu · pool 33⅓ m");
    CHECK(fold_parts({"High hall", "Thu", "pool 33⅓ m"}, " · ", 20) == "High hall · Thu ·\n  pool 33⅓ m");
    CHECK(fold_parts({"", "Thu", ""}, " · ", 20) == "Thu");
    CHECK(fold_parts({"one", "two"}, "; ", 4, 0) == "one;\ntwo");
    CHECK(fold_parts({"a part longer than a line", "b"}, ", ", 12) ==
          "a part\n  longer\n  than a\n  line, b");
    CHECK(fold_parts({}, ", ", 12).empty());
}

TEST_CASE("control characters are shown and never passed on") {
    CHECK(visible("plain ünïcödé 放松 ⅓") == "plain ünïcödé 放松 ⅓");
    CHECK(visible("\033[31mred") == "<U+001B>[31mred");
    CHECK(visible("a\tb\nc\rd") == "a<U+0009>b<U+000A>c<U+000D>d");
    CHECK(visible(std::string_view{"\0", 1}) == "<U+0000>");
    CHECK(visible("\x7F") == "<U+007F>");
    CHECK(visible("\u009B31m") == "<U+009B>31m"); // C1: a terminal may read it as an escape
}

TEST_CASE("what would turn a line around is shown") {
    for (auto const* hidden : {"\u061C", "\u200E", "\u200F", "\u202A", "\u202E", "\u2066", "\u2069"}) {
        CHECK(visible(hidden).front() == '<');
    }
    CHECK(visible("a\u202Eb") == "a<U+202E>b");
    CHECK(visible("\u2028") == "<U+2028>");
    CHECK(visible("\uFEFF") == "<U+FEFF>");
}

TEST_CASE("bytes that are no UTF-8 are shown one by one") {
    CHECK(visible("a\xFF\xC3") == "a<0xFF><0xC3>");
    CHECK(visible("\xC0\xAF") == "<0xC0><0xAF>");           // overlong
    CHECK(visible("\xED\xA0\x80") == "<0xED><0xA0><0x80>"); // a surrogate
}

} // namespace lengthwise::report
