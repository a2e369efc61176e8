#include "calc/longest.hpp"
#include "support/read_plan.hpp"

#include <catch2/catch.hpp>

/// Where the longest rep stands.
namespace lengthwise {
namespace {

support::ReadPlan three_sessions(std::string const& head = "") {
    auto read = support::read_plan("pool 25m\n" + head +
                                   "week 1\n"
                                   "session \"A\"\nmain\n200\n2 x (100 + 300 crawl)\nlane 1: 300\n"
                                   "session \"B\"\nmain\nlane 2: 500\nif time: 600\n400 kick\n"
                                   "week 2\n"
                                   "session \"C\"\nmain\n10min\n");
    REQUIRE(read.error() == "");
    return read;
}

std::string text_of(support::ReadPlan const& read, calc::LongestRep const& longest) {
    return std::string{read.bundle->root().source.slice(read.plan().items[longest.item].span)};
}

} // namespace

TEST_CASE("the longest rep of a session is the first of equals, wherever it is nested") {
    auto const read = three_sessions();
    auto const longest = calc::longest_of_session(read.plan(), 0, 1);
    CHECK(longest.distance == Distance::metres(300));
    CHECK(longest.session == 0);
    CHECK(text_of(read, longest) == "300 crawl");
}

TEST_CASE("the longest rep of a week and a plan is a lane's own") {
    auto const read = three_sessions();
    auto const& plan = read.plan();
    CHECK(calc::longest_of_week(plan, plan.weeks[0], 1).distance == Distance::metres(300));
    CHECK(calc::longest_of_week(plan, plan.weeks[0], 2).distance == Distance::metres(500));
    CHECK(calc::longest_of_plan(plan, 2).session == 1);
    CHECK(calc::longest_of_plan(plan, 0).distance == Distance::metres(300));
}

TEST_CASE("of sessions with reps as long the first has the longest") {
    auto const read = support::read_plan("pool 25m\nsession \"A\"\nmain\n200\nsession \"B\"\nmain\n300 easy\n"
                                         "session \"C\"\nmain\n300 steady\n");
    REQUIRE(read.error() == "");
    auto const longest = calc::longest_of_plan(read.plan(), 0);
    CHECK(longest.session == 1);
    CHECK(text_of(read, longest) == "300 easy");
}

TEST_CASE("a session without a qualifying rep has no longest one") {
    auto const read = three_sessions();
    auto const longest = calc::longest_of_session(read.plan(), 2, 1);
    CHECK(longest.distance.zero());
    CHECK(longest.item == plan::no_index);
    CHECK(longest.session == plan::no_index);
}

TEST_CASE("the longest before a session is that of the sessions above it") {
    auto const read = three_sessions();
    CHECK_FALSE(calc::longest_before(read.plan(), 0, 2).has_value());
    CHECK(calc::longest_before(read.plan(), 1, 2)->distance == Distance::metres(300));
    CHECK(calc::longest_before(read.plan(), 2, 2)->distance == Distance::metres(500));
}

TEST_CASE("what the group swims before the plan counts as before") {
    auto const read = three_sessions("before longest 400m\n");
    auto const before = calc::longest_before(read.plan(), 0, 1);
    REQUIRE(before.has_value());
    CHECK(before->distance == Distance::metres(400));
    CHECK(before->item == plan::no_index);
    CHECK(calc::longest_before(read.plan(), 2, 2)->distance == Distance::metres(500));
}

} // namespace lengthwise
