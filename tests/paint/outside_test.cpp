#include "cards/type.hpp"
#include "support/program.hpp"
#include "support/temp_folder.hpp"

#include <catch2/catch.hpp>

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdio>
#include <cstdlib>
#include <memory>
#include <regex>
#include <sstream>
#include <string>
#include <utility>
#include <vector>

/// What other programs say of the files: qpdf, poppler's tools, xmllint. The README names their packages.

using namespace lengthwise;
using support::bytes_of;

namespace {

struct Heard {
    int code = 0;
    std::string text;
};

Heard ask(std::string const& command) {
    std::unique_ptr<FILE, int (*)(FILE*)> pipe{popen((command + " 2>&1").c_str(), "r"), pclose};
    Heard heard;
    std::array<char, 4096> buffer{};
    for (std::size_t got = 0; (got = std::fread(buffer.data(), 1, buffer.size(), pipe.get())) > 0;) {
        heard.text.append(buffer.data(), got);
    }
    heard.code = pclose(pipe.release());
    return heard;
}

std::string const plan_text = R"(plan "Spring"
race "Pond" sprint on 2027-05-30
swimmer "Ada" threshold 1:55 per 100m lane 1
swimmer "Bo" threshold 2:05 per 100m lane 2
pool 25m
threshold 1:55 per 100m
rest 20-40s
before longest 600m
week 1 from 2027-05-03
  session Tue 07:00 for 60min "Far and long"
    warm-up easy
      200 choice
      4 x 25 kick with board
    drill "Catch"
      4 x 50 as 25 drill "fist" / 25 crawl "long arms"
    main
      750 crawl steady
      3 x (100 crawl rest 10s + 50 back) rest 40s
      if time: 4 x 25 crawl sprint on 0:50
    cool-down
      150 choice easy
  session Thu 18:30 "Two lanes"
    main
      lane 1: 8 x 100 crawl on 2:15, odds steady, evens hard
      lane 2: 7 x 100 crawl on 2:30
      100, 200, 100 back rest 20s
)";

/// A plan in a folder of its own, and cards made of it.
struct Made {
    support::TempFolder folder;
    std::string pdf;

    explicit Made(std::vector<std::string> const& options, std::string const& text = plan_text) {
        auto const plan = folder.file("plan.swim", text);
        pdf = folder.path("cards.pdf");
        std::vector<std::string> arguments{"cards", plan, "-o", pdf};
        arguments.insert(arguments.end(), options.begin(), options.end());
        auto const ending = support::run({.arguments = arguments});
        INFO(ending.err);
        REQUIRE(ending.code == 0);
    }
};

/// A word as pdftotext -bbox gives it, in mm from the page's corner.
struct Word {
    double left, top, right, bottom;
    std::string text;
};
struct TextPage {
    double width = 0;
    double height = 0;
    std::vector<Word> words;
};

std::vector<TextPage> pages_of(std::string const& pdf) {
    auto const heard = ask("pdftotext -bbox '" + pdf + "' -");
    REQUIRE(heard.code == 0);
    std::vector<TextPage> pages;
    std::regex const page{R"rx(<page width="([0-9.]+)" height="([0-9.]+)">)rx"};
    std::regex const word{
        R"rx(<word xMin="([-0-9.]+)" yMin="([-0-9.]+)" xMax="([-0-9.]+)" yMax="([-0-9.]+)">(.*)</word>)rx"};
    std::istringstream lines{heard.text};
    for (std::string line; std::getline(lines, line);) {
        std::smatch found;
        auto const mm = [&](std::size_t i) { return std::stod(found[i]) * 25.4 / 72; };
        if (std::regex_search(line, found, page)) {
            pages.push_back({mm(1), mm(2), {}});
        } else if (std::regex_search(line, found, word)) {
            pages.back().words.push_back({mm(1), mm(2), mm(3), mm(4), found[5]});
        }
    }
    return pages;
}

struct Room {
    double left, top, width, height;
};

/// The four quarters of an upright A4 sheet with 6 mm margin.
std::vector<Room> const quarters{
    {6, 6, 99, 142.5}, {105, 6, 99, 142.5}, {6, 148.5, 99, 142.5}, {105, 148.5, 99, 142.5}};

/// Words of which no card's safe area holds the letters: its own height is less than the box says, which
/// has the font's whole reach (Inter 4.0: 0.97 and 0.24 em, so a capital is 0.6 of it).
int outside(std::vector<TextPage> const& pages, double safe) {
    int words = 0;
    for (auto const& page : pages) {
        for (auto const& word : page.words) {
            auto const height = word.bottom - word.top;
            bool const inside = std::any_of(quarters.begin(), quarters.end(), [&](Room const& room) {
                return word.left >= room.left + safe - 0.1 &&
                       word.right <= room.left + room.width - safe + 0.1 &&
                       word.top + 0.2 * height >= room.top + safe - 0.1 &&
                       word.bottom - 0.05 * height <= room.top + room.height - safe + 0.1;
            });
            words += inside ? 0 : 1;
        }
    }
    return words;
}

} // namespace

TEST_CASE("qpdf finds nothing wrong, whatever is printed") {
    for (auto const& options :
         std::vector<std::vector<std::string>>{{},
                                               {"--back", "pace", "--hole"},
                                               {"--size", "eighth", "--back", "overview"},
                                               {"--sheet", "letter"}}) {
        Made const made{options};
        auto const heard = ask("qpdf --check '" + made.pdf + "'");
        INFO(heard.text);
        CHECK(heard.code == 0);
        CHECK(heard.text.find("No syntax or stream encoding errors") != std::string::npos);
    }
}

TEST_CASE("all fonts are embedded as subsets and can be searched, also those of other scripts") {
    Made const made{
        {}, "pool 25m\nsession \"静かな長い泳ぎ سباحة\"\n  main\n    100 crawl \"Łódź, čtyři, ñ, Ω\"\n"};
    std::istringstream lines{ask("pdffonts '" + made.pdf + "'").text};
    std::string line;
    int fonts = 0;
    for (int i = 0; std::getline(lines, line); ++i) {
        if (i >= 2) {
            ++fonts;
            INFO(line);
            CHECK(std::regex_search(line, std::regex{R"(\+.*yes yes yes)"}));
            CHECK(line.find("Type 3") == std::string::npos);
        }
    }
    CHECK(fonts > 2);
    auto const text = ask("pdftotext '" + made.pdf + "' -").text;
    CHECK(text.find("静かな長い泳ぎ") != std::string::npos);
    CHECK(text.find("Łódź, čtyři, ñ, Ω") != std::string::npos);
}

TEST_CASE("the page is the paper, to half a millimetre") {
    auto const size = [](std::vector<std::string> const& options) {
        auto const page = pages_of(Made{options}.pdf).front();
        return std::pair{page.width, page.height};
    };
    auto const [width, height] = size({});
    CHECK(width == Approx(210).margin(0.5)); // ISO 216
    CHECK(height == Approx(297).margin(0.5));
    auto const [across, down] = size({"--size", "half"});
    CHECK(across == Approx(297).margin(0.5));
    CHECK(down == Approx(210).margin(0.5));
    auto const [letter, letter_height] = size({"--sheet", "letter"});
    CHECK(letter == Approx(215.9).margin(0.5));
    CHECK(letter_height == Approx(279.4).margin(0.5));
}

TEST_CASE("no word stands in a margin; with less margin some would") {
    auto const pages = pages_of(Made{{"--hole"}}.pdf);
    REQUIRE_FALSE(pages.empty());
    CHECK(pages.front().words.size() > 100);
    CHECK(outside(pages, 5) == 0);
    CHECK(outside(pages, 6.5) > 20); // as a layout with 3.5 mm would be seen by a check for 5
}

TEST_CASE("every sum of the tally stands on the card") {
    Made const made{{"--session", "1", "--size", "half"}};
    auto const text = ask("pdftotext -layout '" + made.pdf + "' -").text;
    auto const joined = std::regex_replace(text, std::regex{" +"}, " ");
    auto const tally = support::run(
        {.arguments = {"tally", made.folder.path("plan.swim"), "--session", "1", "--format", "json"}});
    REQUIRE(tally.code == 0);
    // The session's metres and lengths, as another command says them.
    std::smatch found;
    std::regex const sums{
        R"rx("sessions": ?\[\{[^\[]*?"metres": ?([0-9]+)[^\[]*?"lengths": ?([0-9]+)[^\[]*?"longest_rep_metres": ?([0-9]+))rx"};
    REQUIRE(std::regex_search(tally.out, found, sums));
    CHECK(joined.find(found[1].str() + " m") != std::string::npos);
    CHECK(std::regex_search(joined, std::regex{"lengths " + found[2].str()}));
    CHECK(joined.find("longest today " + found[3].str()) != std::string::npos);
    for (auto const* words : {"Far and long", "4×25", "kick with board", "fist / crawl", "long arms",
                              "crawl sprint", "rest 40s", "on 0:50", "+4", "Breathe freely"}) {
        INFO(words << "\n" << joined);
        CHECK(joined.find(words) != std::string::npos);
    }
}

TEST_CASE("letters are as high as can be read: 22' for the set, 16' for the rest") {
    for (double const distance : {700.0, 1000.0}) {
        Made const made{{"--distance", distance == 1000 ? "1m" : "70cm"}};
        auto const em = cards::height_of_arc(distance, 16) / 0.727;
        auto const set_em = cards::height_of_arc(distance, 22) / 0.727;
        int seen = 0;
        for (auto const& page : pages_of(made.pdf)) {
            for (auto const& word : page.words) {
                auto const high = (word.bottom - word.top) / 1.21; // Inter's reach: 0.969 and 0.242 em
                CHECK(high >= em * 0.99);
                if (std::regex_match(word.text, std::regex{"(crawl|choice|kick|back)"})) {
                    ++seen;
                    CHECK(high >= set_em * 0.99);
                }
            }
        }
        CHECK(seen > 5);
    }
}

TEST_CASE("the same bytes each time, in another time zone and language too") {
    Made const first{{"--back", "pace"}};
    Made const again{{"--back", "pace"}};
    setenv("TZ", "Pacific/Auckland", 1);
    setenv("LC_ALL", "de_DE.UTF-8", 1);
    Made const elsewhere{{"--back", "pace"}};
    unsetenv("TZ");
    unsetenv("LC_ALL");
    auto const bytes = bytes_of(first.pdf);
    CHECK(bytes.size() > 5000);
    CHECK(bytes == bytes_of(again.pdf));
    CHECK(bytes == bytes_of(elsewhere.pdf));
}

TEST_CASE("a document says its title, its language, and to be printed at its size") {
    Made const made{{}};
    auto const info = ask("pdfinfo '" + made.pdf + "'").text;
    CHECK(std::regex_search(info, std::regex{"Title: +Spring"}));
    CHECK(info.find("2027") != std::string::npos); // the first session's day, no clock
    auto const all = ask("qpdf --qdf --object-streams=disable '" + made.pdf + "' -").text;
    CHECK(all.find("/PrintScaling /None") != std::string::npos);
    CHECK(all.find("/DisplayDocTitle true") != std::string::npos);
    CHECK(all.find("/Duplex /DuplexFlipLongEdge") != std::string::npos);
    CHECK(all.find("/Lang (en)") != std::string::npos);
}

TEST_CASE("copies, lanes and one swimmer") {
    auto const words = [](std::vector<std::string> const& options, std::string const& wanted) {
        auto const text = ask("pdftotext '" + Made{options}.pdf + "' -").text;
        int times = 0;
        for (auto at = text.find(wanted); at != std::string::npos; at = text.find(wanted, at + 1)) {
            ++times;
        }
        return times;
    };
    CHECK(words({}, "Two lanes") == 2);
    CHECK(words({"--copies", "3"}, "Two lanes") == 6);
    CHECK(words({"--lane", "2"}, "Two lanes") == 1);
    CHECK(words({"--swimmer", "Bo"}, "Two lanes") == 1);
    CHECK(words({"--session", "Tue"}, "Two lanes") == 0);
}

TEST_CASE("the preview is well-formed SVG, the picture a PNG, and nothing is written over unasked") {
    Made const made{{}};
    auto const plan = made.folder.path("plan.swim");
    auto const svg = made.folder.path("card.svg");
    auto const png = made.folder.path("card.png");
    CHECK(support::run({.arguments = {"cards", plan, "--preview", svg}}).code == 0);
    CHECK(ask("xmllint --noout '" + svg + "'").code == 0);
    CHECK(bytes_of(svg).find(">crawl steady</text>") != std::string::npos);
    CHECK(support::run({.arguments = {"cards", plan, "--session", "1", "--format", "png", "-o", png}}).code ==
          0);
    CHECK(bytes_of(png).substr(0, 8) == "\x89PNG\r\n\x1a\n");
    auto const before = bytes_of(made.pdf);
    auto const again = support::run({.arguments = {"cards", plan, "--copies", "2", "-o", made.pdf}});
    CHECK(again.code == 2);
    CHECK(bytes_of(made.pdf) == before);
    CHECK(support::run({.arguments = {"cards", plan, "--preview", svg}}).code == 2);
}

TEST_CASE("a letter that no font has is a finding, and a font that is not here an error") {
    support::TempFolder const folder;
    auto const plan =
        folder.file("plan.swim", "pool 25m\nsession \"One\"\n  main\n    100 crawl \"\u0378\"\n");
    auto const unknown = support::run({.arguments = {"cards", plan, "-o", folder.path("a.pdf")}});
    CHECK(unknown.code == 1);
    CHECK(unknown.err.find("U+0378") != std::string::npos);
    CHECK(bytes_of(folder.path("a.pdf")).empty());
    auto const fontless = support::run({.arguments = {"cards", plan, "-o", folder.path("a.pdf")},
                                        .before = [] { setenv("LENGTHWISE_FONTS", "/nowhere", 1); }});
    CHECK(fontless.code == 2);
    CHECK(fontless.err.find("fonts-inter") != std::string::npos);
}

TEST_CASE("the test sheet has bars of 50 mm") {
    support::TempFolder const folder;
    auto const pdf = folder.path("test.pdf");
    CHECK(support::run({.arguments = {"cards", "--test-sheet", "-o", pdf}}).code == 0);
    auto const all = ask("qpdf --qdf --object-streams=disable '" + pdf + "' -").text;
    // Cairo draws in points after one scaling to mm, or in mm under a matrix; either way the bar is there
    // once along and once down, 141.73 points or 50 mm long.
    std::regex const along{R"((-?[0-9.]+) (-?[0-9.]+) m\s+(-?[0-9.]+) (-?[0-9.]+) l)"};
    int bars = 0;
    for (std::sregex_iterator at{all.begin(), all.end(), along}, end; at != end; ++at) {
        auto const& line = *at;
        auto const length =
            std::hypot(std::stod(line[3]) - std::stod(line[1]), std::stod(line[4]) - std::stod(line[2]));
        bars += std::abs(length - 141.732) < 0.05 || std::abs(length - 50) < 0.01 ? 1 : 0;
    }
    CHECK(bars == 2);
}
