#include "grammar/parse.hpp"
#include "grammar/source.hpp"
#include "support/dump.hpp"

#include <catch2/catch.hpp>

#include <string>
#include <utility>
#include <vector>

using namespace lengthwise;
using grammar::escape;
using grammar::Kind;
using grammar::Tree;
using grammar::unescape;

namespace {

/// The text of every node of a kind.
std::vector<std::string> texts(Tree const& tree, Kind kind) {
    std::vector<std::string> found;
    for (std::uint32_t i = 0; i < tree.size(); ++i) {
        if (tree.nodes[i].kind == kind) {
            found.emplace_back(tree.slice(tree.span(i)));
        }
    }
    return found;
}

using Texts = std::vector<std::string>;

} // namespace

TEST_CASE("nodes span what they were read from", "[tree]") {
    Source const source{
        "a.swim",
        "plan \"A\"\n"
        "race  \"B\"  sprint on 2027-06-13 # soon\n"
        "threshold about 2:05 per 100 m\n"
        "rest 20 - 40 s\n"
        "factor kick 140%\n"
        "week 1 from 2027-04-19\n"
        "  session Tue 07:00 for 45 min \"C\"\n"
        "    warm up\n"
        "    main \"D\"\n"
        "      lane 1-2: if time: 4 x 50 front crawl with pull buoy, fins rest 10s \"E\" # ok\n"
        "      3 x (200 + 100 as 50 drill \"F\" / 50) on 5:00, odds easy\n"
        "      pause 1 min \"G\"\n",
        1000};
    auto const result = grammar::parse(source);
    auto const& tree = result.tree;
    REQUIRE_FALSE(result.findings.has_errors());
    CHECK(tree.base == 1000);
    CHECK(texts(tree, Kind::plan) == Texts{"plan"});
    CHECK(texts(tree, Kind::name) == Texts{"\"A\"", "\"B\"", "\"C\"", "\"D\"", "\"F\""});
    CHECK(texts(tree, Kind::race) == Texts{"race  \"B\"  sprint on 2027-06-13"});
    CHECK(texts(tree, Kind::threshold) == Texts{"threshold about 2:05 per 100 m"});
    CHECK(texts(tree, Kind::pace_per) == Texts{"per 100 m"});
    CHECK(texts(tree, Kind::default_rest) == Texts{"rest 20"});
    CHECK(texts(tree, Kind::rest_to) == Texts{"40 s"});
    CHECK(texts(tree, Kind::factor) == Texts{"factor kick 140%"});
    CHECK(texts(tree, Kind::week_number) == Texts{"1"});
    CHECK(texts(tree, Kind::week_from) == Texts{"from 2027-04-19"});
    CHECK(texts(tree, Kind::slot) == Texts{"for 45 min"});
    CHECK(texts(tree, Kind::section)[0] == "warm up");
    CHECK(texts(tree, Kind::lane_label) == Texts{"lane 1-2:"});
    CHECK(texts(tree, Kind::if_time) == Texts{"if time:"});
    CHECK(texts(tree, Kind::item) == Texts{"4 x 50 front crawl with pull buoy, fins rest 10s \"E\"",
                                           "3 x (200 + 100 as 50 drill \"F\" / 50) on 5:00, odds easy", "200",
                                           "100 as 50 drill \"F\" / 50"});
    CHECK(texts(tree, Kind::group) == Texts{"(200 + 100 as 50 drill \"F\" / 50)"});
    CHECK(texts(tree, Kind::split) == Texts{"as 50 drill \"F\" / 50"});
    CHECK(texts(tree, Kind::stroke) == Texts{"front crawl"});
    CHECK(texts(tree, Kind::with) == Texts{"with pull buoy"});
    CHECK(texts(tree, Kind::with_more) == Texts{"fins"});
    CHECK(texts(tree, Kind::rest) == Texts{"rest 10s"});
    CHECK(texts(tree, Kind::selector) == Texts{"odds easy"});
    CHECK(texts(tree, Kind::pause) == Texts{"pause 1 min"});
    CHECK(texts(tree, Kind::note) == Texts{"\"E\"", "\"G\""});
}

TEST_CASE("comments are kept, in order, without their line ends", "[tree]") {
    Source const source{
        "a.swim", "# one\nsession\r\n  main # two\r\n    (50 # three\n\n  # four\n  25)\n#\n\"# no\" # five"};
    auto const tree = grammar::parse(source).tree;
    Texts found;
    for (auto const& comment : tree.comments) {
        found.emplace_back(tree.slice({comment.begin, comment.end}));
    }
    CHECK(found == Texts{"# one", "# two", "# three", "# four", "#", "# five"});
}

TEST_CASE("strings are kept as written and can be undone", "[tree]") {
    Source const source{"a.swim", R"(plan "she said \"go\" \\ went")"};
    auto const tree = grammar::parse(source).tree;
    CHECK(tree.raw_string(1) == R"(she said \"go\" \\ went)");
    CHECK(unescape(tree.raw_string(1)) == R"(she said "go" \ went)");
    for (auto const* const text : {"", "plain", "\"", "\\", "\\\"", "a\\b\"c", "\xE6\x94\xBE"}) {
        CHECK(unescape(escape(text)) == text);
    }
    CHECK(escape("a\"b\\") == "a\\\"b\\\\");
}

TEST_CASE("a tree's next steps over subtrees", "[tree]") {
    Source const source{"a.swim", "week 1\n session\n  main\n   (50 + 25)\nweek 2\n"};
    auto const tree = grammar::parse(source).tree;
    REQUIRE(test::dump(tree) == "week{week_number=1 session{section:main{item{group{item{distance=50} "
                                "item{distance=25} group_end}}}}} week{week_number=2}");
    CHECK(tree.nodes[tree.next(0)].kind == Kind::week);
    CHECK(tree.next(1) == 2);
    CHECK(tree.next(tree.next(0)) == tree.size());
    CHECK(tree.slice(tree.span(0)) == "week 1\n session\n  main\n   (50 + 25)");
}
