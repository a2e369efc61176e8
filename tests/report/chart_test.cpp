#include "report/chart_svg.hpp"
#include "report/chart_text.hpp"
#include "report/chart_view.hpp"
#include "support/generate.hpp"
#include "support/read_plan.hpp"
#include "support/temp_folder.hpp"

#include <catch2/catch.hpp>

#include <cstdlib>
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
    auto const far = "race 1500m on 2027-06-21\n"; // seven weeks, and a race over 1000 m: two
    CHECK(kinds(weeks_of(far, {1000, 1000, 1000, 1000, 1100, 600, 400})) ==
          std::vector{Kind::build, Kind::build, Kind::build, Kind::build, Kind::build, Kind::taper,
                      Kind::taper});
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
