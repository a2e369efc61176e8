#include "report/plan_html.hpp"

#include "export_samples.hpp"
#include "report/html_style.hpp"
#include "report/width.hpp"
#include "support/generate.hpp"
#include "support/outside.hpp"
#include "support/temp_folder.hpp"

#include <catch2/catch.hpp>

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdlib>
#include <map>

namespace lengthwise::report {
namespace {

std::string page(std::string_view text, ExportOptions const& options = {}) {
    return test::exported(std::string{text},
                          [&](auto const& plan, auto const& sink) { plan_html(plan, options, sink); });
}

/// What `expression` makes of pages, one behind the other, read as XML by Python: `pages` is a list of roots.
std::string python(std::string const& pages, std::string const& expression) {
    return support::python(
        "import sys, re\nimport xml.etree.ElementTree as tree\n"
        "texts = re.split(r'(?=<!DOCTYPE html>)', sys.stdin.read())[1:]\n"
        "pages = [tree.fromstring(text) for text in texts]\n"
        "def tag(e): return re.sub(r'{.*}', '', e.tag)\n"
        "def text(e): return ''.join(e.itertext())\n"
        "def all_of(page, *tags): return [e for e in page.iter() if tag(e) in tags]\n"
        "def headings(page): return [int(tag(e)[1]) for e in all_of(page, 'h1', 'h2', 'h3', 'h4')]\n"
        "def in_order(levels): return levels[0] == 1 and levels.count(1) == 1 and "
        "all(b <= a + 1 for a, b in zip(levels, levels[1:]))\n"
        "def ids(page): return [e.get('id') for e in page.iter() if e.get('id')]\n"
        "def links(page): return [e.get('href') for e in all_of(page, 'a')]\n"
        "def good(page): return (in_order(headings(page)) and len(set(ids(page))) == len(ids(page))\n"
        "    and all(link[0] == '#' and link[1:] in ids(page) for link in links(page))\n"
        "    and not all_of(page, 'script', 'img', 'link', 'iframe', 'object', 'form', 'base')\n"
        "    and not [a for e in page.iter() for a in e.keys() if a.startswith('on') or a in ('src', "
        "'style')])\n"
        "def square(page): return all(sum(int(c.get('colspan', 1)) for c in row) == len(all_of(table, "
        "'tr')[0])\n"
        "    for table in all_of(page, 'table') for row in all_of(table, 'tr'))\n"
        "print(" +
            expression + ")\n",
        pages);
}

/// Relative luminance and contrast, as WCAG 2.2 defines them (W3C Recommendation of 2023, "relative
/// luminance", "contrast ratio").
double luminance(std::string const& colour) {
    double sum = 0;
    constexpr std::array<double, 3> weights{0.2126, 0.7152, 0.0722};
    for (std::size_t i = 0; i < 3; ++i) {
        auto const c = std::stoi(colour.substr(1 + 2 * i, 2), nullptr, 16) / 255.0;
        sum += weights[i] * (c <= 0.04045 ? c / 12.92 : std::pow((c + 0.055) / 1.055, 2.4));
    }
    return sum;
}

double contrast(std::string const& a, std::string const& b) {
    auto const [dark, light] = std::minmax({luminance(a), luminance(b)});
    return (light + 0.05) / (dark + 0.05);
}

/// The colours of each `:root`, by name.
std::vector<std::map<std::string, std::string>> palettes(std::string_view style) {
    std::vector<std::map<std::string, std::string>> palettes;
    for (auto at = style.find(":root {"); at != std::string_view::npos; at = style.find(":root {", at + 1)) {
        std::map<std::string, std::string> colours;
        auto const block = style.substr(at, style.find('}', at) - at);
        for (auto name = block.find("--"); name != std::string_view::npos;
             name = block.find("--", name + 2)) {
            auto const colon = block.find(':', name);
            colours[std::string{block.substr(name + 2, colon - name - 2)}] =
                std::string{block.substr(colon + 2, 7)};
        }
        palettes.push_back(colours);
    }
    return palettes;
}

} // namespace

TEST_CASE("contrast is reckoned as WCAG does") {
    CHECK(contrast("#000000", "#ffffff") == Approx(21)); // the greatest there is
    CHECK(contrast("#ffffff", "#ffffff") == Approx(1));
    CHECK(contrast("#777777", "#ffffff") == Approx(4.48).margin(0.005)); // just short of AA, as is well known
}

TEST_CASE("all text of a page is readable: light, dark and printed") {
    auto const all = palettes(html_style);
    REQUIRE(all.size() == 3);
    for (auto const& colours : all) {
        REQUIRE(colours.size() == 4);
        CHECK(contrast(colours.at("ink"), colours.at("paper")) >= 7);  // AAA
        CHECK(contrast(colours.at("soft"), colours.at("paper")) >= 7); // AA asks for 4.5
    }
    // no colour stands anywhere else, and none of `line` is a text's
    CHECK(std::ranges::count(html_style, '#') == 12);
    CHECK(html_style.find("color: var(--line)") == std::string_view::npos);
    CHECK(html_style.find_first_of("<&") == std::string_view::npos);
}

TEST_CASE("a page has its headings in order and a table a lane", "[programs]") {
    auto const text = page(test::heron_ford);
    CHECK(python(text, "[good(p) and square(p) for p in pages]") == "[True]\n");
    CHECK(python(text, "[text(e) for e in all_of(pages[0], 'h1', 'h2', 'h3', 'h4')]") ==
          "['Down to Heron Ford', 'Week 1 from Mon 7 June 2027: Ease in', 'Two lanes', 'lane 1', 'lane 2', "
          "'Thirds', "
          "'Week 2 from Mon 14 June 2027', 'No slot']\n");
    CHECK(python(text, "[[text(c) for c in r] for r in all_of(all_of(pages[0], 'table')[1], 'tr')][5:]") ==
          "[['main'], ['\"watch the clock\"'], ['4', '19:25', '8', '600', '2 x 100 crawl hard'], "
          "['', '', '', '', 'pause 1min \"drink\"'], ['5', '19:31', '12', '900', '200, 100 crawl'], "
          "['', '', '+2', '', 'if time: 2 x 25 sprint'], ['cool-down'], ['6', '19:38', '3min', '900', '3min "
          "easy'], "
          "['', '19:42', '36', '900', 'end']]\n");
    CHECK(python(text, "links(pages[0]), len(all_of(pages[0], 'svg'))") == "['#s1', '#s2', '#s3'] 1\n");
    CHECK(python(page(test::heron_ford, {.scope = {Scope::Kind::session, 1}}),
                 "headings(pages[0]), links(pages[0]), len(all_of(pages[0], 'svg'))") == "[1, 2, 3] [] 0\n");
}

TEST_CASE("a thousand pages are well-formed, each whole in itself", "[programs]") {
    support::TempFolder const folder;
    std::string all;
    for (std::uint64_t seed = 1; seed <= 1000; ++seed) {
        auto const text = page(test::generate({.seed = seed}).text);
        static_cast<void>(folder.file(std::to_string(seed) + ".html", text));
        all += seed % 5 == 0 ? text : "";
    }
    // Debian: libxml2-utils
    auto const log = folder.path("log");
    CHECK(std::system(("xmllint --noout '" + folder.path() + "'/*.html > '" + log + "' 2>&1").c_str()) == 0);
    CHECK(support::bytes_of(log) == "");
    CHECK(python(all, "len(pages), all(good(p) and square(p) for p in pages)") == "200 True\n");
}

TEST_CASE("an empty plan is a page too", "[programs]") {
    CHECK(python(page(""), "headings(pages[0]), good(pages[0])") == "[1] True\n");
}

TEST_CASE("names are text and nothing else on a page", "[programs]") {
    auto const text = page(test::plan_called(test::nasty));
    CHECK(python(text, "good(pages[0]), square(pages[0])") == "True True\n");
    CHECK(python(text, "text(all_of(pages[0], 'h1')[0])") == visible(test::nasty) + "\n");
    CHECK(python(text, "text(all_of(pages[0], 'h3')[0])") == visible(test::nasty) + "\n");
    CHECK(text.find("<script") == std::string::npos);
    CHECK(text.find("script-src") == std::string::npos);
    CHECK(text.find("default-src 'none'") != std::string::npos); // and none would be run
    CHECK(text.find("\xE2\x80\xAE") == std::string::npos);
}

} // namespace lengthwise::report
