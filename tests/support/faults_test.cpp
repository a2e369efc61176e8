#include "support/json_fault.hpp"
#include "support/unsafe_text.hpp"
#include "support/xml_fault.hpp"

#include <catch2/catch.hpp>

#include <string>

using namespace lengthwise::support;

TEST_CASE("a JSON document is told from what is none") {
    for (auto const* const good :
         {"{}", "[]", " {\"a\": [1, -2.5e+3, \"\\u00e9\\n\", null, true]}\n", "0", "\"x\""}) {
        CHECK(json_fault(good) == "");
    }
    for (auto const* const bad :
         {"", "{", "{\"a\":}", "{\"a\":1,}", "[1,]", "[1 2]", "01", "1.", "-", "nul", "\"\n\"", "\"\\x\"",
          "\"\\u12\"", "\"", "{a:1}", "{\"a\":1} {}", "[\"a]", "'a'"}) {
        CAPTURE(bad);
        CHECK(json_fault(bad) != "");
    }
    CHECK(json_fault(std::string(10'000, '[')) != "");
}

TEST_CASE("a well-formed XML document is told from what is none") {
    for (auto const* const good :
         {"<a/>", "<?xml version=\"1.0\"?>\n<a b=\"&lt;c\" d=\"e\">f &amp; &#10;<!-- g --><h /></a>\n",
          "<!DOCTYPE html>\n<html><p>é</p></html>"}) {
        CHECK(xml_fault(good) == "");
    }
    for (auto const* const bad : {"",
                                  "a",
                                  "<a>",
                                  "<a></b>",
                                  "</a>",
                                  "<a/><b/>",
                                  "<a/>b",
                                  "<a b=c/>",
                                  "<a b=\"c\" b=\"d\"/>",
                                  "<a b=\"<\"/>",
                                  "<a>&</a>",
                                  "<a>&nbsp;</a>",
                                  "<a>&#;</a>",
                                  "<a>]]></a>",
                                  "<a>\x01</a>",
                                  "<a>\xff</a>",
                                  "<a b=\"c\"d=\"e\"/>",
                                  "<1/>",
                                  "<a>\xef\xbf\xbe</a>",
                                  "<a><!-- </a>"}) {
        CAPTURE(bad);
        CHECK(xml_fault(bad) != "");
    }
}

TEST_CASE("text that could steer a terminal is told from what could not") {
    CHECK(unsafe_in("é\n⅓") == "");
    for (auto const* const bad : {"\x1b[2J", "\t", "\r", "\x7f", "\xc2\x9b", "\xe2\x80\xae", "\xff"}) {
        CHECK(unsafe_in(bad) != "");
    }
}
