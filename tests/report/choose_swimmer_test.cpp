#include "report/choose_swimmer.hpp"

#include "support/read_plan.hpp"

#include <catch2/catch.hpp>

using namespace lengthwise;
using report::PickedSwimmer;
using report::Wish;

namespace {

support::ReadPlan const group = support::read_plan("swimmer \"Ann\" lane 2\nswimmer \"Anke\" distance 80%\n"
                                                   "swimmer \"ann\"\nswimmer \"Bo\"\nswimmer \"Cleo\"\n"
                                                   "swimmer \"Dov\" distance 100%\npool 25m\n");

PickedSwimmer pick(std::string name, std::optional<int> lane = {}) {
    Wish wish;
    wish.swimmer = std::move(name);
    wish.lane = lane;
    return report::pick_swimmer(group.plan(), wish);
}

std::string problem(std::string name, std::optional<int> lane = {}) {
    return pick(std::move(name), lane).problem;
}

} // namespace

TEST_CASE("a swimmer goes by name, by capitals or not, by a beginning", "[choose]") {
    CHECK(pick("Ann").index == 0);
    CHECK(pick("ann").index == 2);
    CHECK(pick("ANKE").index == 1);
    CHECK(pick("ank").index == 1);
    CHECK(pick("c").index == 4);
    CHECK_FALSE(report::pick_swimmer(group.plan(), {}).index);
    CHECK(report::pick_swimmer(group.plan(), {}).found());
}

TEST_CASE("a swimmer who is not there, or is several", "[choose]") {
    CHECK(problem("ANN") == "\"ANN\" may be Ann, ann");
    CHECK(problem("an") == "\"an\" may be Ann, Anke, ann");
    CHECK(problem("Clea") == "no swimmer \"Clea\"; did you mean \"Cleo\"?");
    CHECK(problem("Zacharias") ==
          "no swimmer \"Zacharias\"; the plan has Ann, Anke, ann, Bo, Cleo and 1 more");
    Wish wish;
    wish.swimmer = "Ann";
    CHECK(report::pick_swimmer(plan::Plan{}, wish).problem == "no swimmer \"Ann\"; the plan names none");
}

TEST_CASE("a swimmer swims in one lane", "[choose]") {
    CHECK(pick("Ann").lane == 2);
    CHECK(pick("Ann", 2).lane == 2);
    CHECK(problem("Ann", 1) == "Ann swims in lane 2, not in lane 1");
    CHECK_FALSE(pick("Bo").lane);
    CHECK(pick("Bo", 1).lane == 1);
}

TEST_CASE("a swimmer's share stands behind the name", "[choose]") {
    CHECK(report::swimmer_label(group.plan().swimmers[0]) == "Ann");
    CHECK(report::swimmer_label(group.plan().swimmers[1]) == "Anke, 80 %");
    CHECK(report::swimmer_label(group.plan().swimmers[5]) == "Dov");
}
