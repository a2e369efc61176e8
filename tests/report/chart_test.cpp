#include "report/chart_svg.hpp"
#include "report/chart_text.hpp"
#include "report/chart_view.hpp"
#include "support/generate.hpp"
#include "support/read_plan.hpp"
#include "support/temp_folder.hpp"

#include <catch2/catch.hpp>

#include <cstdlib>
#include <regex>
#include <string>

using namespace lengthwise;
using Kind = report::ChartWeek::Kind;

namespace {

/// Weeks of one session of this many metres, in reps of 50.
std::string weeks_of(std::string const& head, std::vector<int> const& metres) {
    auto text = head + "pool 25m\n";
    for (std::size_t i = 0; i < metres.size(); ++i) {
        text += "week " + std::to_string(i + 1) + (i == 0 ? " from 2027-05-03\n" : "\n");
        text += "session Tue\nmain\n" + std::to_string(metres[i] / 50) + " x 50\n";
    }
    return text;
}

std::vector<Kind> kinds(std::string const& text) {
    auto const read = support::read_plan(text);
    REQUIRE(read.error() == "");
    std::vector<Kind> kinds;
    for (auto const& week : report::chart_view(read.plan(), {}).weeks) {
        kinds.push_back(week.kind);
    }
    return kinds;
}

std::string shown(std::string const& text, std::size_t width = 80, bool ascii = false) {
    auto const read = support::read_plan(text);
    REQUIRE(read.error() == "");
    return report::chart_text(report::chart_view(read.plan(), {}), {.width = width, .ascii = ascii},
                              report::Paint{});
}

std::size_t count(std::string const& text, std::string const& part) {
    std::size_t times = 0;
    for (auto at = text.find(part); at != std::string::npos; at = text.find(part, at + part.size())) {
        ++times;
    }
    return times;
}

} // namespace

TEST_CASE("a week of 80 % of the highest so far is recovery where a higher one comes") {
    CHECK(kinds(weeks_of("", {1000, 800, 850})) == std::vector{Kind::build, Kind::recovery, Kind::build});
    CHECK(kinds(weeks_of("", {1000, 850, 900})) == std::vector{Kind::build, Kind::build, Kind::build});
    CHECK(kinds(weeks_of("", {1000, 800, 800})) == std::vector{Kind::build, Kind::build, Kind::build});
    CHECK(kinds(weeks_of("before longest 50m week 2000m\n", {1000, 1100}))[1] == Kind::recovery);
}

TEST_CASE("the last weeks before the race are its taper") {
    auto const near = "race sprint on 2027-05-24\n"; // a Monday: three weeks before it
    CHECK(kinds(weeks_of(near, {1000, 1100, 500})) == std::vector{Kind::build, Kind::build, Kind::taper});
    CHECK(kinds(weeks_of(near, {1000, 1100, 1100})) == std::vector{Kind::build, Kind::build, Kind::build});
    // the rule warns of 700 m, over 60 % of 1100 m, so the chart praises nothing
    CHECK(kinds(weeks_of(near, {1000, 1100, 650}))[2] == Kind::taper);
    CHECK(kinds(weeks_of(near, {1000, 1100, 700}))[2] == Kind::build);
    CHECK(kinds(weeks_of(std::string{near} + "limit taper 70%\n", {1000, 1100, 700}))[2] == Kind::taper);
    auto const far = "race 1500m on 2027-06-21\n"; // seven weeks, and a race over 1000 m: two
    CHECK(kinds(weeks_of(far, {1000, 1000, 1000, 1000, 1100, 600, 400})) ==
          std::vector{Kind::build, Kind::build, Kind::build, Kind::build, Kind::build, Kind::taper,
                      Kind::taper});
}

TEST_CASE("a week that ends more than 14 days before the race is no taper") {
    // its last day is Sunday 23 May
    CHECK(kinds(weeks_of("race sprint on 2027-06-06\n", {1000, 1100, 500}))[2] == Kind::taper);
    CHECK(kinds(weeks_of("race sprint on 2027-06-07\n", {1000, 1100, 500}))[2] == Kind::build);
}

TEST_CASE("a mark is the least round number of lengths that has room") {
    auto const length = Distance::metres(25);
    CHECK(report::mark_for(Distance::metres(750), length, 30) == length);
    CHECK(report::mark_for(Distance::metres(751), length, 30) == length * 2);
    CHECK(report::mark_for(Distance::metres(7500), length, 30) == length * 10);
    CHECK(report::mark_for(Distance{}, length, 30) == length);
}

TEST_CASE("bars can be counted: one mark a length, the race a wall") {
    auto const text =
        shown(weeks_of("race 100m on 2027-06-01\n", {500}) + "session Thu\nmain\n75\n100\n125\n");
    // 125 m: four lengths up to the wall, one behind it
    CHECK(text.find("████▏█ 125") != std::string::npos);
    CHECK(text.find("█ = 25 m, one length") != std::string::npos);
    auto const short_of_it = shown(weeks_of("race 100m on 2027-06-01\n", {500}));
    CHECK(short_of_it.find("██  ▏ 50") != std::string::npos);
}

TEST_CASE("a bar comes up to the race only where the race is met") {
    // at 50 m a mark 725 m round to 15 marks, the race of 750 m, and 760 m to 15, a race of 760 m taking 16
    auto const one_rep = [](std::string const& race, std::string const& rep) {
        return shown("race " + race +
                     " on 2027-06-01\npool 25m\nbefore longest 300m week 1800m\nsession Tue\nmain\n" + rep +
                     "\n" + rep + "\n");
    };
    auto const wall = std::string{"▏"};
    CHECK(one_rep("750m", "725").find(" " + wall + " 725") != std::string::npos);
    CHECK(one_rep("750m", "750").find("█" + wall + " 750") != std::string::npos);
    CHECK(one_rep("760m", "760").find("█" + wall + " 760") != std::string::npos);
    CHECK(one_rep("20m", "10").find(wall + " 10") != std::string::npos);
}

TEST_CASE("the race line leaves every figure of a week free") {
    std::string text = "race sprint on 2027-09-01\npool 25m\n";
    for (int week = 0; week < 14; ++week) {
        text += "week " + std::to_string(week + 1) + (week == 0 ? " from 2027-05-03\n" : "\n") +
                "session Tue\nmain\n" + std::to_string(625 + 25 * week) + "\n";
    }
    auto const read = support::read_plan(text);
    REQUIRE(read.error() == "");
    auto const svg = report::chart_svg(report::chart_view(read.plan(), {}), report::ChartGround::white);
    std::smatch line;
    REQUIRE(std::regex_search(svg, line, std::regex{"<path d=\"([^\"]*)\"[^>]*stroke-dasharray=\"9 5\""}));
    auto const path = line[1].str();
    std::regex const piece{"M([0-9.]+) ([0-9.]+)H([0-9.]+)"};
    std::regex const figure{
        "<text x=\"([0-9.]+)\" y=\"([0-9.]+)\" text-anchor=\"middle\" font-size=\"12\">([0-9]+)"};
    int near = 0;
    for (std::sregex_iterator text_at{svg.begin(), svg.end(), figure}; text_at != std::sregex_iterator{};
         ++text_at) {
        auto const x = std::stod((*text_at)[1]);
        auto const y = std::stod((*text_at)[2]);
        auto const half = 3.4 * static_cast<double>((*text_at)[3].length()); // digits 0.56 of 12 wide
        for (std::sregex_iterator at{path.begin(), path.end(), piece}; at != std::sregex_iterator{}; ++at) {
            auto const height = std::stod((*at)[2]);
            bool const level = height > y - 9 && height < y + 1.5;
            near += level ? 1 : 0;
            CHECK_FALSE((level && std::stod((*at)[1]) < x + half && std::stod((*at)[3]) > x - half));
        }
    }
    CHECK(near > 0);
}

TEST_CASE("a chart keeps to its width") {
    for (std::uint64_t seed = 0; seed < 300; ++seed) {
        auto const read = support::read_plan(test::generate({.seed = seed}).text);
        REQUIRE(read.error() == "");
        auto const chart = report::chart_view(read.plan(), {});
        for (std::size_t const width : {40U, 60U, 80U}) {
            auto const text = report::chart_text(chart, {.width = width, .ascii = true}, report::Paint{});
            INFO(seed << '\n' << text);
            for (std::size_t begin = 0; begin < text.size(); begin = text.find('\n', begin) + 1) {
                CHECK(text.find('\n', begin) - begin <= width);
            }
        }
    }
}

TEST_CASE("a picture is well-formed whatever a plan is called, and names itself", "[programs]") {
    support::TempFolder const folder;
    auto const check = [&](std::string const& text) {
        auto const read = support::read_plan(text);
        REQUIRE(read.error() == "");
        auto const chart = report::chart_view(read.plan(), {});
        auto const svg = report::chart_svg(chart, report::ChartGround::white);
        CHECK(count(svg, "<title") == 1);
        CHECK(count(svg, "<circle") == chart.weeks.size());
        INFO(svg);
        // Debian: libxml2-utils
        CHECK(std::system(("xmllint --noout '" + folder.file("chart.svg", svg) + "'").c_str()) == 0);
    };
    check(
        weeks_of("plan \"<b> & \\\"quotes\\\" ]]>\"\nrace \"a<b\" sprint on 2027-06-20\n", {500, 800, 400}));
    check("plan \"empty\"\n");
    for (std::uint64_t seed = 0; seed < 20; ++seed) {
        check(test::generate({.seed = seed}).text);
    }
}
