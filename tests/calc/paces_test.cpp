#include "calc/paces.hpp"
#include "support/plan_text.hpp"
#include "support/read_plan.hpp"

#include <catch2/catch.hpp>

/// What is remembered of one rep is not said of another (docs/time.md).
namespace lengthwise {

TEST_CASE("a minute and 2 m are the same number, and two reps all the same") {
    auto const minute = Duration::minutes(1).ms();
    auto const metres = Distance::metres(2).units();
    REQUIRE(minute == metres); // 60 000 ms, and 60 000 of 1/30 000 m
    auto const read = support::read_plan(support::session_with("1min easy", "pool 25m\nthreshold 1:40\n"));
    CHECK(read.error() == "");
    auto const& plan = read.plan();
    auto const& item = plan.items[plan.sections.front().body];
    calc::Paces paces{plan};
    auto const pacing = paces.of(plan.sessions.front(), 0);

    // Easy, 2 m take 1.1 to 1.2 times the 2 s that they take at the threshold.
    for (auto const timed : {true, false, true}) {
        auto const rep = paces.rep(pacing, item.terms, minute, timed);
        CAPTURE(timed);
        CHECK((rep.swim.high == Duration::minutes(1)) == timed);
        CHECK((rep.swim.high < Duration::seconds(3)) == !timed);
        CHECK(rep.estimated.zero() == !timed); // a minute goes some way, in whole lengths
    }
}

} // namespace lengthwise
