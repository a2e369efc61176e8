#include "calc/reserve.hpp"
#include "calc/timeline.hpp"
#include "calc/totals.hpp"
#include "support/generate.hpp"
#include "support/read_plan.hpp"
#include "support/slow_reserve.hpp"

#include <catch2/catch.hpp>

#include <cmath>
#include <cstdint>
#include <vector>

/// The reserve in closed form against sessions swum piece by piece. A failure names its seed.
namespace lengthwise {
namespace {

using support::SlowRunsOut;

std::vector<SlowRunsOut> simple(std::vector<calc::RunsOut> const& all) {
    std::vector<SlowRunsOut> result;
    for (auto const& one : all) {
        SlowRunsOut simple{one.line, one.item, one.rep.number, {}};
        for (auto const& round : one.rounds) {
            simple.rounds.push_back(round.number);
        }
        result.push_back(simple);
    }
    return result;
}

struct Counts {
    int sessions = 0;
    int run_out = 0;
    int in_rounds = 0;
};

void check_session(plan::Plan const& plan, calc::Clock& clock, calc::Reserve& reserve, plan::Index session,
                   int lane, support::Drink const& drink, Counts& counts) {
    CAPTURE(session, lane);
    auto const slow = support::slow_reserve(plan, plan.sessions[session], lane, drink);
    auto const fast = reserve.over(session, lane);
    if (clock.lines(session, lane).empty() || !slow) {
        return;
    }
    REQUIRE(fast);
    auto const found = simple(fast->runs_out);
    REQUIRE(found.size() == slow->runs_out.size());
    for (std::size_t i = 0; i < found.size(); ++i) {
        CAPTURE(i);
        REQUIRE(found[i].line == slow->runs_out[i].line);
        REQUIRE(found[i].item == slow->runs_out[i].item);
        REQUIRE(found[i].rounds == slow->runs_out[i].rounds);
        REQUIRE(found[i].number == slow->runs_out[i].number);
        counts.in_rounds += found[i].rounds.empty() ? 0 : 1;
    }
    REQUIRE(std::abs(fast->used - slow->used) <= 0.001 * slow->used + 1e-9);
    ++counts.sessions;
    counts.run_out += static_cast<int>(found.size());
}

Counts check_plans(std::uint64_t first, std::uint64_t end, support::Drink const& drink) {
    Counts counts;
    for (auto seed = first; seed < end; ++seed) {
        CAPTURE(seed);
        test::Wanted wanted;
        wanted.seed = seed;
        auto const read = support::read_plan(test::generate(wanted).text);
        REQUIRE(read.error() == "");
        auto const& plan = read.plan();
        calc::Clock clock{plan};
        calc::Reserve reserve{plan, clock};
        auto lanes = calc::numbers(calc::lanes_of(plan));
        lanes.push_back(0);
        for (plan::Index i = 0; i < plan.sessions.size(); ++i) {
            for (int const lane : lanes) {
                check_session(plan, clock, reserve, i, lane, drink, counts);
            }
        }
    }
    return counts;
}

} // namespace

TEST_CASE("the reserve over generated sets is that of integrating its equation step by step") {
    auto const counts = check_plans(1, 600, support::by_steps);
    CHECK(counts.sessions > 1'000);
    CHECK(counts.run_out > 100);
    CHECK(counts.in_rounds > 10);
}

TEST_CASE("where the reserve runs out in generated plans is where it does piece by piece") {
    auto const counts = check_plans(1'000, 2'500, support::by_formula);
    CHECK(counts.sessions > 2'000);
}

TEST_CASE("where the reserve runs out in many generated plans is where it does piece by piece", "[long]") {
    auto const counts = check_plans(10'000, 20'000, support::by_formula);
    CHECK(counts.run_out > 1'000);
}

} // namespace lengthwise
