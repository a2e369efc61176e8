#include "report/plan_markdown.hpp"

#include "export_samples.hpp"
#include "report/markdown.hpp"
#include "report/width.hpp"
#include "support/generate.hpp"
#include "support/outside.hpp"
#include "support/temp_folder.hpp"

#include <catch2/catch.hpp>

/// Read by cmark, the reference reader of CommonMark, with everything unsafe let through, so that it would
/// show. Debian: cmark.
namespace lengthwise::report {
namespace {

std::string written(std::string_view text, ExportOptions const& options = {}) {
    return test::exported(std::string{text},
                          [&](auto const& plan, auto const& sink) { plan_markdown(plan, options, sink); });
}

std::string html(std::string const& text) {
    support::TempFolder const folder;
    return support::output_of("cmark --unsafe '" + folder.file("plan.md", text) + "' 2>&1");
}

/// The tags that a reader finds, and the texts in those of one kind.
std::string tags(std::string const& page) {
    return support::python("import sys\nfrom html.parser import HTMLParser\nfound = set()\n"
                           "class Reader(HTMLParser):\n"
                           "    def handle_starttag(self, tag, attributes):\n"
                           "        found.add(tag + (' with attributes' if attributes else ''))\n"
                           "    def handle_comment(self, data): found.add('comment')\n"
                           "    def handle_decl(self, data): found.add('declaration')\n"
                           "    def handle_pi(self, data): found.add('instruction')\n"
                           "Reader().feed(sys.stdin.read())\nprint(*sorted(found), end='')\n",
                           page);
}

std::string texts(std::string const& page, std::string const& tag) {
    return support::python("import sys\nfrom html.parser import HTMLParser\n"
                           "class Reader(HTMLParser):\n"
                           "    inside = False\n"
                           "    def handle_starttag(self, tag, attributes):\n"
                           "        self.inside = tag == '" +
                               tag +
                               "'\n"
                               "    def handle_endtag(self, tag):\n"
                               "        if self.inside: print()\n"
                               "        self.inside = False\n"
                               "    def handle_data(self, data):\n"
                               "        if self.inside: print(data, end='')\n"
                               "Reader().feed(sys.stdin.read())\n",
                           page);
}

constexpr auto our_tags = "h1 h2 h3 h4 li p ul";

} // namespace

TEST_CASE("signs that mean something in Markdown are escaped, others are not") {
    CHECK(markdown("4 x 50 as 25 drill \"fist\" / 25 crawl, odds easy") ==
          "4 x 50 as 25 drill \"fist\" / 25 crawl, odds easy");
    CHECK(markdown("*a* <b> [c](d) `e` f_g #h") == "\\*a\\* \\<b\\> \\[c\\](d) \\`e\\` f\\_g \\#h");
    CHECK(markdown("a\nb") == "a\\<U+000A\\>b"); // spelled out before it is escaped
}

TEST_CASE("headings and lists, as cmark reads them", "[programs]") {
    auto const page = html(written(test::heron_ford));
    CHECK(tags(page) == our_tags);
    CHECK(texts(page, "h1") == "Down to Heron Ford\n");
    CHECK(texts(page, "h2") == "Week 1 from Mon 7 June 2027: Ease in\nWeek 2 from Mon 14 June 2027\n");
    CHECK(texts(page, "h3") == "Two lanes\nThirds\nNo slot\n");
    CHECK(texts(page, "h4") == "warm-up\ndrill \"Line\" rest 10s\nmain\ncool-down\nmain\nmain\n");
    CHECK(texts(page, "li")
              .find("\nlane 1: 3 x 100 crawl on 2:15\nlane 2: 2 x 100 crawl hard\npause 1min \"drink\"\n"
                    "200, 100 crawl\nif time: 2 x 25 sprint\n") != std::string::npos);
    CHECK(texts(page, "p").find("\"Gate code at the desk\"\n") != std::string::npos);
}

TEST_CASE("one lane has no labels, one session no other", "[programs]") {
    auto const page = html(written(test::heron_ford, {.scope = {Scope::Kind::session, 0}, .lane = 2}));
    CHECK(texts(page, "h3") == "Two lanes\n");
    CHECK(texts(page, "li").find("\n2 x 100 crawl hard\n") != std::string::npos);
    CHECK(page.find("lane 1") == std::string::npos);
}

TEST_CASE("cmark finds nothing but headings, lists and paragraphs in a thousand plans", "[programs]") {
    std::string all;
    for (std::uint64_t seed = 1; seed <= 1000; ++seed) {
        all += written(test::generate({.seed = seed}).text) + "\n";
    }
    auto const page = html(all);
    CHECK(tags(page) == our_tags);
    std::size_t plans = 0;
    for (auto at = page.find("<h1>"); at != std::string::npos; at = page.find("<h1>", at + 1)) {
        ++plans;
    }
    CHECK(plans == 1000);
}

TEST_CASE("names are read back as they are called", "[programs]") {
    for (auto const& name :
         {std::string{test::nasty}, std::string{"- a"}, std::string{"1. b"}, std::string{"> c #"},
          std::string{"***"}, std::string{"===\t"}, std::string{"a\\"}, std::string{"&amp;"}}) {
        auto const page = html(written(test::plan_called(name)));
        INFO(page);
        CHECK(tags(page) == our_tags);
        CHECK(texts(page, "h1") == visible(name) + "\n");
        CHECK(texts(page, "h3").starts_with(visible(name) + "\n"));
    }
}

} // namespace lengthwise::report
