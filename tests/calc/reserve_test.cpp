#include "calc/reserve.hpp"

#include "calc/drain.hpp"
#include "support/plan_text.hpp"
#include "support/read_plan.hpp"
#include "support/slow_reserve.hpp"

#include <catch2/catch.hpp>

#include <cmath>
#include <string>
#include <vector>

namespace lengthwise {
namespace {

/// With CS 1.25 m/s and 25 m of reserve a 100 in 1:15 swims 6.25 m beyond it.
std::string const head = "pool 25m\nthreshold 1:20 reserve 25m\n";

calc::ReserveOver over(std::string const& lines, std::string const& own_head = head) {
    INFO(lines);
    auto const read = support::read_plan(support::session_with(lines, own_head));
    REQUIRE(read.error() == "");
    calc::Clock clock{read.plan()};
    auto const result = calc::Reserve{read.plan(), clock}.over(0, 0);
    REQUIRE(result);
    return *result;
}

/// Of the first: rep, and rounds from the outermost inward.
std::vector<std::uint32_t> first(std::string const& lines, std::string const& own_head = head) {
    auto const all = over(lines, own_head);
    std::vector<std::uint32_t> numbers;
    if (!all.runs_out.empty()) {
        numbers.push_back(all.runs_out.front().rep.number);
        for (auto const& round : all.runs_out.front().rounds) {
            numbers.push_back(round.number);
        }
    }
    return numbers;
}

using Numbers = std::vector<std::uint32_t>;

} // namespace

TEST_CASE("the reserve over reps of 100 m in 1:15, reckoned by hand") {
    CHECK(first("12 x 100 at 1:15 per 100 rest 0s") == Numbers{5});
    CHECK(first("4 x 100 at 1:15 per 100 rest 0s").empty());
    CHECK(first("12 x 100 at 1:15 per 100 rest 5s") == Numbers{9});
    CHECK(first("8 x 100 at 1:15 per 100 rest 5s").empty());
    CHECK(first("9999 x 100 at 1:15 per 100 rest 10s").empty());
    CHECK(first("9999 x 100 at 1:15 per 100 rest 15s").empty());
    CHECK(25 - over("8 x 100 at 1:15 per 100 rest 5s").used == Approx(0.569).margin(0.0005));
    CHECK(25 - over("9999 x 100 at 1:15 per 100 rest 10s").used == Approx(9.116).margin(0.0005));
    CHECK(25 - over("9999 x 100 at 1:15 per 100 rest 15s").used == Approx(13.155).margin(0.0005));
}

TEST_CASE("a send-off leaves rest, a pause takes the place of the last") {
    CHECK(first("12 x 100 at 1:15 per 100 on 1:20") == Numbers{9});
    CHECK(first("12 x 100 at 1:15 per 100 on 1:10") == Numbers{5});
    auto const e = [](double seconds) { return std::exp(-1.25 * seconds / 25); };
    CHECK(over("100 at 1:15 per 100 rest 5s\npause 20s\n100 at 1:15 per 100").used ==
          Approx(6.25 * e(20) + 6.25));
    CHECK(over("2 x (2 x 100 at 1:15 per 100 rest 5s) rest 20s\n100 at 1:15 per 100").used ==
          Approx((((6.25 * e(5) + 6.25) * e(20) + 6.25) * e(5) + 6.25) * e(20) + 6.25));
    CHECK(over("400 broken at 100 for 5s at 1:15 per 100").used ==
          Approx(((6.25 * e(5) + 6.25) * e(5) + 6.25) * e(5) + 6.25));
    CHECK(over("1min tread\n100 at 1:15 per 100\n20s tread").used == Approx(6.25 * e(20)));
}

TEST_CASE("rounds are told from the outermost inward") {
    // Four without rest are 25 m: that is not beyond it yet.
    CHECK(first("5 x (4 x 100 at 1:15 per 100 rest 0s)") == Numbers{1, 2});
    CHECK(first("2 x (5 x (2 x 100 at 1:15 per 100 rest 0s) rest 0s) rest 0s") == Numbers{1, 1, 3});
    CHECK(first("9 x (2 x 100 rest 0s) at 1:15 per 100 rest 0s") == Numbers{1, 3});
    CHECK(first("9 x (2 x 100 rest 0s) at 1:15 per 100 rest 0s, evens easy").empty());
    auto const found = over("2 x (3 x (2 x 100 at 1:15 per 100 rest 0s) rest 0s)").runs_out.front();
    CHECK(found.rep == calc::Nth{1, 2});
    CHECK(found.rounds == std::vector<calc::Nth>{{1, 2}, {3, 3}});
}

TEST_CASE("reps are counted on over those that a selector makes easier") {
    // At 1:20 nothing is used and nothing comes back; of the others the fifth is too much: 1, 2, 4, 5, 7.
    CHECK(first("12 x 100 at 1:15 per 100 rest 0s, every 3rd at 1:20 per 100") == Numbers{7});
    // With 56.25 m it is the tenth: 1, 2, 4, 5, 7, 8, 10, 11, 13, 14.
    CHECK(first("24 x 100 at 1:15 per 100 rest 0s, every 3rd at 1:20 per 100",
                "pool 25m\nthreshold 1:20 reserve 56.25m\n") == Numbers{14});
}

TEST_CASE("a line that has run out is said once and goes on empty") {
    auto const all =
        over("12 x 100 at 1:15 per 100 rest 0s\n100 at 1:15 per 100\npause 1h\n100 at 1:15 per 100");
    REQUIRE(all.runs_out.size() == 2);
    CHECK(all.runs_out[1].rep.number == 1);
    CHECK(all.used == Approx(6.25));
}

TEST_CASE("a rep held to the whole reserve empties it fresh, and may") {
    CHECK(first("200 sprint", "pool 25m\nthreshold 1:40\n").empty());
    CHECK(over("200 sprint", "pool 25m\nthreshold 1:40\n").used == Approx(20));
    CHECK(first("400 kick sprint", "pool 25m\nthreshold 1:40\n").empty());
    // 20 m, less what comes back in a minute: exp(-3); a quarter, 5 m, is let pass.
    CHECK(first("9 x 200 sprint rest 1min", "pool 25m\nthreshold 1:40\n").empty());
    CHECK(first("9 x 200 sprint rest 20s", "pool 25m\nthreshold 1:40\n") == Numbers{2});
}

TEST_CASE("long rows of reps are what they are one after the other") {
    std::string const plain = "pool 25m\nthreshold 1:40 reserve 30m\n";
    for (auto const* const line : {
             "999 x 100 hard rest 15s, every 3rd easy",
             "9999 x 25 hard on 0:25, odds easy",
             "2000 x 25 sprint on 0:27, every 50th easy, odds hard",
             "500 x (50 hard rest 5s + 50 easy) rest 3s, evens hard",
             "30 x (10 x (5 x 50 at 104% rest 4s) rest 6s, last easy) rest 1s",
             "3000 x 50 at 103% rest 1s, first 20 easy, last 100 at 110%",
             "10000 broken at 50 for 2s at 110%",
             "9900 broken at 50 for 1s as 75 hard / 25 easy",
             "99600 broken at 75 for 2s as 175 at 104% / 25 easy",
             "600 x 20s hard rest 2s",
         }) {
        INFO(line);
        auto const read = support::read_plan(support::session_with(line, plain));
        REQUIRE(read.error() == "");
        auto const& plan = read.plan();
        calc::Clock clock{plan};
        auto const fast = calc::Reserve{plan, clock}.over(0, 0);
        auto const slow = support::slow_reserve(plan, plan.sessions.front(), 0, support::by_formula);
        REQUIRE(fast);
        REQUIRE(slow);
        CHECK(fast->used == Approx(slow->used).epsilon(1e-6).margin(1e-9));
        REQUIRE(fast->runs_out.size() == slow->runs_out.size());
        if (!slow->runs_out.empty()) {
            CHECK(fast->runs_out.front().rep.number == slow->runs_out.front().number);
            CHECK(fast->runs_out.front().rounds.size() == slow->runs_out.front().rounds.size());
            for (std::size_t i = 0; i < slow->runs_out.front().rounds.size(); ++i) {
                CHECK(fast->runs_out.front().rounds[i].number == slow->runs_out.front().rounds[i]);
            }
        }
    }
}

TEST_CASE("drains compose as if one went through them") {
    auto const up = calc::faster(3, 10, 10.01);
    auto const down = calc::slower(4, 10);
    auto const both = up.then(down).then(up);
    for (double const x : {0.0, 1.0, 5.0, 6.9, 7.1, 9.0}) {
        auto const middle = (x + 3) * std::exp(-0.4);
        CHECK(both.at(x) == Approx(middle + 3));
        CHECK(both.runs_out(x) == (x + 3 > 10.01 || middle + 3 > 10.01));
    }
    auto power = calc::Drain{};
    for (int i = 0; i < 77; ++i) {
        power = power.then(both);
    }
    CHECK(both.times(77).at(2) == Approx(power.at(2)));
    CHECK(both.times(77).lasts == Approx(power.lasts));
    CHECK(both.times(0).at(2) == 2);
    // A rest so long that nothing is left of where it began.
    auto const fresh = up.then(calc::slower(1e6, 10)).then(calc::slower(1e6, 10));
    CHECK(fresh.at(5) == 0);
    CHECK(fresh.runs_out(8));
    CHECK_FALSE(fresh.then(fresh).runs_out(7));
    // What is too much for a full reserve is so behind the longest rest.
    CHECK(calc::slower(1e6, 10).then(calc::faster(12, 10, 10.01)).runs_out(0));
}

TEST_CASE("where the reserve was cut off it comes back from there") {
    // 30 m beyond a reserve of 10 m leave all 10 used; half of them are left behind a rest of ln 2 times 10
    // m.
    auto const emptied = calc::faster(30, 10, 10.01).then(calc::slower(10 * std::log(2.0), 10));
    CHECK(emptied.most == Approx(5));
    CHECK(emptied.at(0) == Approx(15)); // not cut off
    // 4 m more on top of the 5 are 9; another 4 would be 13, and are cut off at 10.
    CHECK(emptied.then(calc::faster(4, 10, 10.01)).most == Approx(9));
    CHECK(emptied.then(calc::faster(8, 10, 10.01)).most == Approx(10));
}

} // namespace lengthwise
