#include "report/fold_set.hpp"
#include "report/width.hpp"

#include <catch2/catch.hpp>

#include <algorithm>
#include <random>

using namespace lengthwise;
using Lines = std::vector<std::string>;

TEST_CASE("a set that fits stays on one line", "[deck]") {
    CHECK(report::fold_set("750 crawl steady", 16) == Lines{"750 crawl steady"});
    CHECK(report::fold_set("", 16) == Lines{""});
}

TEST_CASE("a set breaks before / + rest on, hanging by two", "[deck]") {
    CHECK(report::fold_set("4 x 50 as 25 drill \"fist\" / 25 crawl", 30) ==
          Lines{"4 x 50 as 25 drill \"fist\"", "  / 25 crawl"});
    CHECK(report::fold_set("3 x (6 lengths crawl steady + 2 lengths back easy) rest 40s", 40) ==
          Lines{"3 x (6 lengths crawl steady", "  + 2 lengths back easy) rest 40s"});
    CHECK(report::fold_set("4 x 100 crawl threshold on 2:15", 26) ==
          Lines{"4 x 100 crawl threshold", "  on 2:15"});
    CHECK(report::fold_set("4 x 100 crawl threshold rest 15s", 26) ==
          Lines{"4 x 100 crawl threshold", "  rest 15s"});
}

TEST_CASE("a set breaks behind the comma before a selector, a list stays together", "[deck]") {
    CHECK(report::fold_set("6 x 100 crawl on 2:30, odds steady, evens hard", 40) ==
          Lines{"6 x 100 crawl on 2:30, odds steady,", "  evens hard"});
    CHECK(report::fold_set("3 x 100 threshold plus 2s on 2:25, 2:20, 2:15", 40) ==
          Lines{"3 x 100 threshold plus 2s", "  on 2:25, 2:20, 2:15"});
    CHECK(report::fold_set("2 x (50 at 95% + 50 pull with buoy, band) rest 25s", 37) ==
          Lines{"2 x (50 at 95%", "  + 50 pull with buoy, band) rest 25s"});
}

TEST_CASE("words of a note are no joints of a set", "[deck]") {
    CHECK(report::fold_set("100 crawl \"breathe on every third stroke\"", 30) ==
          Lines{"100 crawl \"breathe on every", "  third stroke\""});
    CHECK(report::fold_set("100 crawl \"say \\\"on\\\" and rest on it\"", 31) ==
          Lines{"100 crawl \"say \\\"on\\\" and rest", "  on it\""});
}

TEST_CASE("a break that would leave the line half empty is not taken without need", "[deck]") {
    CHECK(report::fold_set("50 rest 20s \"look at the clock and keep every one of them the same\"", 30) ==
          Lines{"50 rest 20s \"look at the clock", "  and keep every one of them", "  the same\""});
}

TEST_CASE("a word longer than the line is broken", "[deck]") {
    CHECK(report::fold_set("\"Schwimmbadsprungturmbesitzer\"", 12) ==
          Lines{"\"Schwimmbads", "  prungturmb", "  esitzer\""});
}

TEST_CASE("no line is wider than asked and no word is lost", "[deck]") {
    std::mt19937 chance{1602};
    std::vector<std::string> const words{"100",   "crawl", "/",      "+",        "rest",    "on",
                                         "odds",  "easy,", "\"放松", "慢慢游\"", "\"a b\"", "x",
                                         "drill", "(50",   "back)",  "0:50",     "é"};
    for (int turn = 0; turn < 5000; ++turn) {
        std::string set;
        for (int i = std::uniform_int_distribution{1, 30}(chance); i > 0; --i) {
            set +=
                (set.empty() ? "" : " ") + words[std::uniform_int_distribution<std::size_t>{0, 16}(chance)];
        }
        auto const width = std::uniform_int_distribution<std::size_t>{8, 60}(chance);
        std::string all;
        for (auto const& line : report::fold_set(set, width)) {
            REQUIRE(report::cells(line) <= width);
            all += line;
        }
        auto const without_blanks = [](std::string text) {
            text.erase(std::remove(text.begin(), text.end(), ' '), text.end());
            return text;
        };
        REQUIRE(without_blanks(all) == without_blanks(set));
    }
}
