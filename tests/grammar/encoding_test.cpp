#include "grammar/encoding.hpp"
#include "support/complaints.hpp"

#include <catch2/catch.hpp>

#include <random>
#include <string>

using lengthwise::grammar::bom_bytes;
using lengthwise::grammar::is_clean;
using lengthwise::test::check_files;
using namespace std::string_literals;

TEST_CASE("bytes that are no text", "[encoding]") {
    check_files({
        {"# Ren\xE9\n",
         "1:6 syntax-encoding: byte E9 is not UTF-8; the file looks like Latin-1 = save it as UTF-8, "
         "or: iconv -f ISO-8859-1 -t UTF-8 OLD > NEW"},
        {"plan \"50\x80\"\n",
         "1:9 syntax-encoding: byte 80 is not UTF-8; the file looks like Windows-1252 = save it "
         "as UTF-8, or: iconv -f WINDOWS-1252 -t UTF-8 OLD > NEW"},
        {"# \xC0\xAF\n", "1:3 syntax-encoding: the bytes C0 AF are not UTF-8 = save the file as UTF-8"},
        {"# \xED\xA0\x80\n", "1:3 syntax-encoding: the bytes ED A0 are not UTF-8 = save the file as UTF-8"},
        {"# \xF4\x90\x80\x80\n",
         "1:3 syntax-encoding: the bytes F4 90 are not UTF-8 = save the file as UTF-8"},
        {"# \xE2\x85", "1:3 syntax-encoding: the bytes E2 85 are not UTF-8 = save the file as UTF-8"},
        {"# a\0b\n"s, "1:4 syntax-encoding: a NUL byte = delete it; was this file cut off or is it no text?"},
        {"# a\x1B[2J\n",
         "1:4 syntax-encoding: the control character U+001B = delete it; of those only tab and line "
         "ends may stand in a file"},
        {"# a\x7F\n",
         "1:4 syntax-encoding: the control character U+007F = delete it; of those only tab and line "
         "ends may stand in a file"},
        {"# a\xC2\x85\n",
         "1:4 syntax-encoding: the control character U+0085 = delete it; of those only tab and line "
         "ends may stand in a file"},
        {"# a\xEF\xBB\xBF\n",
         "1:4 syntax-encoding: a byte order mark (U+FEFF) inside the file = delete it; it may "
         "only be the file's first character"},
        {"rest 5s\rrest 6s\nrest 7s\n",
         "1:8 syntax-encoding: a CR without an LF = save the file with LF or CRLF line ends"},
        {"rest 5s\r\r\n",
         "1:8 syntax-encoding: a CR without an LF = save the file with LF or CRLF line ends"},
    });
}

TEST_CASE("a file that is no text at all has one error", "[encoding]") {
    check_files({
        {"\xFF\xFEp\0l\0"s, "1:1 syntax-encoding: the file is UTF-16 = save it as UTF-8"},
        {"\xFE\xFF\0p\0l"s, "1:1 syntax-encoding: the file is UTF-16 = save it as UTF-8"},
        {"rest 5s\rpool 25m\rfoo\r",
         "1:8 syntax-encoding: the file's lines end in CR alone = save it with LF or CRLF "
         "line ends"},
    });
}

TEST_CASE("one wrong encoding is said once, other lines are read", "[encoding]") {
    check_files({
        {"# Ren\xE9\nplan \"Ren\xE9\"\nrest 5\n# a\x01\n",
         "1:6 syntax-encoding: byte E9 is not UTF-8; the file looks like Latin-1 = save it as UTF-8, or: "
         "iconv -f "
         "ISO-8859-1 -t UTF-8 OLD > NEW\n"
         "3:6 syntax-time: 5 has no unit = try: rest 5s\n"
         "4:4 syntax-encoding: the control character U+0001 = delete it; of those only tab and line ends may "
         "stand in "
         "a file"},
    });
}

TEST_CASE("a line with a wrong byte still opens what it opens", "[encoding]") {
    check_files({
        {"session Tue \"Ren\xE9\"\n  main \"caf\xE9\"\n    (50 crwal \"\xE9\"\n    25 esay)\n    50 \xE9\n",
         "1:17 syntax-encoding: byte E9 is not UTF-8; the file looks like Latin-1 = save it as UTF-8, or: "
         "iconv -f "
         "ISO-8859-1 -t UTF-8 OLD > NEW\n"
         "4:8 syntax-word: no word \"esay\"; did you mean \"easy\"?"},
    });
}

TEST_CASE("text in any script, tabs and both line ends are fine", "[encoding]") {
    check_files({
        {"\xEF\xBB\xBFplan \"\xE6\x94\xBE\xE6\x9D\xBE \xD7\xA9\xD7\x9C \xF0\x9F\x8F\x8A\"\r\n\tpool 25m # "
         "\xC3\xA9\n",
         ""},
        {"\xEF\xBB\xBF", ""},
        {"", ""},
        {"\n\n \t \r\n#", ""},
    });
    CHECK(bom_bytes("\xEF\xBB\xBFplan") == 3);
    CHECK(bom_bytes("plan") == 0);
}

TEST_CASE("a fault is found wherever it stands", "[encoding]") {
    // Blocks are looked at whole, so every place in and around one is tried.
    for (auto const& fault : {"\x01"s, "\x7F"s, "\xE9"s, "\xC2\x85"s, "\0"s, "\xEF\xBB\xBF"s, "\r"s}) {
        for (std::size_t at = 1; at < 140; ++at) {
            std::string text(200, 'a');
            CHECK(is_clean(text));
            text.replace(at, fault.size(), fault);
            CAPTURE(at);
            CHECK_FALSE(is_clean(text));
        }
    }
    for (std::size_t at = 0; at < 140; ++at) {
        std::string text(200, 'a');
        text.replace(at, 3, "\xE2\x85\x93");
        CHECK(is_clean(text));
        text.replace(at, 3, "\r\n\t");
        CHECK(is_clean(text));
        CHECK_FALSE(is_clean(text.substr(0, at + 1)));
    }
}
