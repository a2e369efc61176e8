#include "report/swimmer_figures.hpp"

#include "support/read_plan.hpp"

#include <catch2/catch.hpp>

#include <string>

using namespace lengthwise;
using report::Scope;
using report::swimmer_figures;

namespace {

auto const group = support::read_plan(R"(
swimmer "Ann" lane 2 distance 80% threshold 2:20
swimmer "Bo"
swimmer "Cy" lane 3
swimmer "Di" threshold about 2:10
pool 25m
session
  threshold 2:00
  main
    lane 1: 400
    lane 2: 200
    lane 3: 100
session
  threshold 1:50
  main
    600
)");

std::int64_t metres(report::SwimmerFigures const& one) {
    return Distance::whole(one.figures.totals.distance, Distance::metres(1));
}

} // namespace

TEST_CASE("swimmers side by side: a share, a lane, or the lowest lane", "[swimmer]") {
    REQUIRE(group.error() == "");
    auto const all = swimmer_figures(group.plan(), {}, {});
    REQUIRE(all.size() == 4);
    CHECK(metres(all[0]) == 150 + 500); // 160 and 480 m
    CHECK(metres(all[1]) == 400 + 600);
    CHECK(metres(all[2]) == 100 + 600);
    CHECK(all[0].lane == 2);
    CHECK(all[1].lane == 1);
    CHECK(all[1].has_lanes);
    CHECK(all[0].figures.totals.longest == Distance::metres(500));
    CHECK(all[0].swimmer == &group.plan().swimmers[0]);
}

TEST_CASE("a lane asked for leaves out those who have another", "[swimmer]") {
    auto const two = swimmer_figures(group.plan(), {}, 2);
    REQUIRE(two.size() == 3);
    CHECK(two[0].swimmer->name == "Ann");
    CHECK(metres(two[1]) == 200 + 600);
    auto const session = swimmer_figures(group.plan(), {Scope::Kind::session, 1}, {});
    CHECK(metres(session[1]) == 600);
    CHECK_FALSE(session[1].has_lanes);
    CHECK(swimmer_figures(group.plan(), {}, {}, &group.plan().swimmers[2]).size() == 1);
}

TEST_CASE("a pace is named where all sessions have the same", "[swimmer]") {
    auto const all = swimmer_figures(group.plan(), {}, {});
    CHECK(all[0].pace->time == Duration::seconds(140));
    CHECK(all[3].pace->about);
    CHECK_FALSE(all[1].pace);
    CHECK(all[1].several_paces);
    auto const session = swimmer_figures(group.plan(), {Scope::Kind::session, 1}, {});
    CHECK(session[1].pace->time == Duration::seconds(110));
    CHECK_FALSE(session[1].several_paces);
}

TEST_CASE("nobody to show is said", "[swimmer]") {
    CHECK(report::no_swimmers(group.plan(), {}).empty());
    CHECK(report::no_swimmers(group.plan(), 7).empty()); // Bo and Di may swim in any
    CHECK(report::no_swimmers(plan::Plan{}, {}) ==
          "the plan names no swimmer; at its head: swimmer \"Ann\" threshold 1:55");
    auto const lanes = support::read_plan("swimmer \"Ann\" lane 2\npool 25m\nsession\nmain\nlane 1: 100\n");
    CHECK(report::no_swimmers(lanes.plan(), 1) == "no swimmer swims in lane 1");
}
