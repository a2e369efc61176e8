#include "report/findings_text.hpp"

#include <catch2/catch.hpp>

#include <string>

using namespace lengthwise;
using report::FindingsStyle;
using report::Paint;

namespace {

/// A finding at the first place where `marked` stands.
Diagnostic at(Source const& source, std::string_view marked, std::string message, std::string hint = {}) {
    auto const begin = source.base() + static_cast<std::uint32_t>(source.text().find(marked));
    return {Severity::error,    "syntax-word",   {begin, begin + static_cast<std::uint32_t>(marked.size())},
            std::move(message), std::move(hint), {}};
}

std::string text_of(Source const& source, Diagnostic const& finding, FindingsStyle style = {}) {
    return report::finding_text(finding, {&source}, Paint{}, style);
}

/// The caret line's blanks behind the gutter.
std::size_t caret_column(std::string const& text) {
    auto const line = text.find("      | ", text.find('\n') + 1);
    return text.find('^', line) - line - 8;
}

} // namespace

TEST_CASE("a finding shows place, line and caret") {
    Source const source{"draft.swim", "main\n  2 x 50 crwal threshold\n"};
    CHECK(text_of(source, at(source, "crwal", "no word \"crwal\"; did you mean \"crawl\"?")) ==
          "draft.swim:2:10: error: no word \"crwal\"; did you mean \"crawl\"? [syntax-word]\n"
          "    2 |   2 x 50 crwal threshold\n"
          "      |          ^~~~~\n");
}

TEST_CASE("a byte order mark is no part of the first line") {
    Source const source{"draft.swim", "\xEF\xBB\xBFmain crwal\n"};
    CHECK(text_of(source, at(source, "crwal", "no word")) == "draft.swim:1:6: error: no word [syntax-word]\n"
                                                             "    1 | main crwal\n"
                                                             "      |      ^~~~~\n");
    CHECK(source.locate(0).byte == 1); // the mark itself
    CHECK(source.locate(0).offset == 0);
}

TEST_CASE("the caret stands right under wide characters") {
    Source const source{"draft.swim", "      100 choice easy \"放松，慢慢游\" wiht fins\n"};
    CHECK(text_of(source, at(source, "wiht", "no word \"wiht\"; did you mean \"with\"?")) ==
          "draft.swim:1:38: error: no word \"wiht\"; did you mean \"with\"? [syntax-word]\n"
          "    1 |       100 choice easy \"放松，慢慢游\" wiht fins\n"
          "      |                                      ^~~~\n");
}

TEST_CASE("the caret covers a wide character whole") {
    Source const source{"draft.swim", "放松\n"};
    CHECK(text_of(source, at(source, "松", "x")) == "draft.swim:1:3: error: x [syntax-word]\n"
                                                    "    1 | 放松\n"
                                                    "      |   ^~\n");
}

TEST_CASE("combining characters and emoji before the caret") {
    // e + U+0301 is one cell, the swimmer two
    Source const combining{"a.swim", "\"Re\xCC\x81ne\" wiht\n"};
    CHECK(caret_column(text_of(combining, at(combining, "wiht", "x"))) == 7);
    Source const emoji{"a.swim", "\"\xF0\x9F\x8F\x8A\" wiht\n"};
    CHECK(caret_column(text_of(emoji, at(emoji, "wiht", "x"))) == 5);
}

TEST_CASE("tabs reach to the next multiple of eight, in column and line alike") {
    Source const source{"a.swim", "\t100\tcrwal\n"};
    CHECK(text_of(source, at(source, "crwal", "x")) == "a.swim:1:17: error: x [syntax-word]\n"
                                                       "    1 |         100     crwal\n"
                                                       "      |                 ^~~~~\n");
}

TEST_CASE("control characters of a file never reach the terminal") {
    Source const source{"a\x1b[31m.swim", "\"\x1b]0;x\x07\" \xE2\x80\xAE crwal \xC2\x9B\n"};
    auto finding = at(source, "crwal", "no word \"\x1b[2J\"", "try: \x1b[1m\nor \x7f");
    finding.related.push_back({finding.span, "first \x1b said"});
    auto const text = text_of(source, finding);
    CHECK(text.find('\x1b') == std::string::npos);
    CHECK(text.find('\x07') == std::string::npos);
    CHECK(text.find('\x7f') == std::string::npos);
    CHECK(text.find("\xE2\x80\xAE") == std::string::npos);
    CHECK(text.find("\xC2\x9B") == std::string::npos);
    CHECK(text.find("a<U+001B>[31m.swim:1:") == 0);
    // The caret stands right behind what was spelled out.
    auto const line = text.find("    1 | ") + 8;
    CHECK(text.substr(line + caret_column(text), 5) != "");
    CHECK(text.find("<U+202E> crwal") != std::string::npos);
}

TEST_CASE("bytes that are no text are spelled out") {
    Source const source{"a.swim", "\"Ren\xE9\" crwal\n"};
    CHECK(text_of(source, at(source, "\xE9", "x")) == "a.swim:1:5: error: x [syntax-word]\n"
                                                      "    1 | \"Ren<0xE9>\" crwal\n"
                                                      "      |     ^~~~~~\n");
}

TEST_CASE("a long line is cut at blanks around the place") {
    Source const source{"draft.swim",
                        "      6 x 100 as 25 kick / 25 crawl steady / 25 kick steady / 25 crawl "
                        "steady / 25 drill \"fist\" / 25 brest easy with fins, snorkel rest 20s, odds easy, "
                        "evens hard\n"};
    auto const text = text_of(source, at(source, "brest", "x"), {.width = 76});
    CHECK(text == "draft.swim:1:102: error: x [syntax-word]\n"
                  "    1 | …25 drill \"fist\" / 25 brest easy with fins, snorkel rest 20s, odds…\n"
                  "      |                       ^~~~~\n");
    CHECK(text_of(source, at(source, "brest", "x"), {.width = 76, .ascii = true}) ==
          "draft.swim:1:102: error: x [syntax-word]\n"
          "    1 | ...drill \"fist\" / 25 brest easy with fins, snorkel rest 20s, odds...\n"
          "      |                      ^~~~~\n");
}

TEST_CASE("a long line shows its beginning or its end when the place is there") {
    auto const line = "crwal " + std::string(20, 'a') + " " + std::string(60, 'b') + " last\n";
    Source const source{"a.swim", line};
    CHECK(text_of(source, at(source, "crwal", "x"), {.width = 48}) == "a.swim:1:1: error: x [syntax-word]\n"
                                                                      "    1 | crwal aaaaaaaaaaaaaaaaaaaa…\n"
                                                                      "      | ^~~~~\n");
    CHECK(text_of(source, at(source, "last", "x"), {.width = 48}) == "a.swim:1:89: error: x [syntax-word]\n"
                                                                     "    1 | …last\n"
                                                                     "      |  ^~~~\n");
}

TEST_CASE("a word longer than the screen is cut within, its mark too") {
    Source const source{"a.swim", std::string(60'000, 'q') + "\n"};
    auto const text = report::finding_text({Severity::error, "syntax-word", {30'000, 60'000}, "x", "", {}},
                                           {&source}, Paint{}, {.width = 40});
    auto const first = text.find('\n') + 1;
    auto const second = text.find('\n', first) + 1;
    CHECK(text.substr(0, first) == "a.swim:1:30001: error: x [syntax-word]\n");
    CHECK(second - first - 1 <= 40 + 4); // two marks of three bytes each
    CHECK(text.size() - second - 1 <= 40);
}

TEST_CASE("an empty span, the end of a line and the end of a file have a caret") {
    Source const source{"a.swim", "plan\nrace"};
    auto finding = at(source, "plan", "how many metres?");
    finding.span = {4, 4};
    CHECK(text_of(source, finding) == "a.swim:1:5: error: how many metres? [syntax-word]\n"
                                      "    1 | plan\n"
                                      "      |     ^\n");
    finding.span = {9, 9};
    CHECK(text_of(source, finding) == "a.swim:2:5: error: how many metres? [syntax-word]\n"
                                      "    2 | race\n"
                                      "      |     ^\n");
}

TEST_CASE("a span over several lines is marked to the end of its first") {
    Source const source{"a.swim", "(100\n+ 50\n"};
    auto finding = at(source, "(100", "x");
    finding.span.end = 9;
    CHECK(text_of(source, finding) == "a.swim:1:1: error: x [syntax-word]\n"
                                      "    1 | (100\n"
                                      "      | ^~~~\n");
}

TEST_CASE("hints and second places stand below") {
    Source const root{"a.swim", "use \"A\"\n"};
    Source const included{"sets/b.swim", "set \"A\" = 110 crawl\n", 9};
    Diagnostic const finding{Severity::warning,
                             "whole-lengths",
                             {9 + 10, 9 + 13},
                             "110 m is not a whole number of 25 m lengths",
                             "try: 100 or 125 m\nor: 4 lengths",
                             {{{0, 7}, "used here"}}};
    CHECK(report::finding_text(finding, {&root, &included}, Paint{}) ==
          "sets/b.swim:1:11: warning: 110 m is not a whole number of 25 m lengths [whole-lengths]\n"
          "    1 | set \"A\" = 110 crawl\n"
          "      |           ^~~\n"
          "      = try: 100 or 125 m\n"
          "      = or: 4 lengths\n"
          "a.swim:1:1: used here\n"
          "    1 | use \"A\"\n"
          "      | ^~~~~~~\n");
}

TEST_CASE("a long hint folds behind its mark") {
    Source const source{"a.swim", "x\n"};
    CHECK(text_of(source, at(source, "x", "m", "one two three four five six seven"), {.width = 24}) ==
          "a.swim:1:1: error: m [syntax-word]\n"
          "    1 | x\n"
          "      | ^\n"
          "      = one two three\n"
          "        four five six\n"
          "        seven\n");
}

TEST_CASE("colour repeats the word") {
    Source const source{"a.swim", "x\n"};
    CHECK(report::finding_text(at(source, "x", "m"), {&source}, Paint{true}) ==
          "a.swim:1:1: \033[31merror\033[0m: m \033[2m[syntax-word]\033[0m\n"
          "\033[2m    1 | \033[0mx\n"
          "\033[2m      | \033[0m\033[31m^\033[0m\n");
}

TEST_CASE("what is not shown is counted") {
    Source const source{"a.swim", "x\n"};
    Diagnostics findings;
    for (int i = 0; i < 62; ++i) {
        findings.add(at(source, "x", "m"));
    }
    auto const text = report::findings_text(findings, {&source}, Paint{});
    CHECK(text.ends_with("\n\nand 12 more errors\n"));
    CHECK(report::errors_line("a.swim", findings.count(Severity::error)) ==
          "62 errors in a.swim; no totals until they are mended");
    CHECK(report::errors_line("a.swim", 1) == "1 error in a.swim; no totals until it is mended");
}

TEST_CASE("counts name each severity") {
    Source const source{"a.swim", "x\n"};
    Diagnostics findings;
    CHECK(report::counts(findings).empty());
    auto finding = at(source, "x", "m");
    findings.add(finding);
    finding.severity = Severity::note;
    findings.add(finding);
    findings.add(finding);
    CHECK(report::counts(findings) == "1 error, 2 notes");
}

TEST_CASE("marks have an ASCII spelling") {
    CHECK(report::in_ascii("266⅔ m, ⅓ m, 36–42, more…") == "266 2/3 m, 1/3 m, 36-42, more...");
}
