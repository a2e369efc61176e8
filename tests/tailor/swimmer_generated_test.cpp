#include "calc/totals.hpp"
#include "support/expand.hpp"
#include "support/generate.hpp"
#include "support/read_plan.hpp"
#include "tailor/swimmer.hpp"

#include <catch2/catch.hpp>

#include <cstdlib>

using namespace lengthwise;

namespace {

/// A rep's share, found by trying one step after the other.
Distance slow_share(Distance written, Pool const& pool, std::uint32_t percent, Distance race) {
    auto step = one(pool.unit);
    if (pool.has_length()) {
        bool const away = Distance::divides(pool.length, written) && !Distance::divides(lap(pool), written);
        step = away ? pool.length : lap(pool);
    }
    auto const wanted = written.units() * std::int64_t{percent};
    auto const off = [&](Distance some) { return std::abs(some.units() * 100 - wanted); };
    auto best = step;
    while (off(best + step) < off(best)) {
        best += step;
    }
    bool const up = !race.zero() && written >= race && best.units() * 100 < wanted;
    return up ? best + step : best;
}

/// What the plan's reps become, one after the other.
calc::Totals slow_totals(plan::Plan const& plan, plan::Session const& session, support::Swimmer swimmer,
                         std::uint32_t percent) {
    auto const race = plan.race ? plan.race->distance : Distance{};
    calc::Totals totals;
    support::expand(plan, session, swimmer, [&](support::ExpandedRep const& rep) {
        ++totals.reps;
        if (!rep.timed) {
            auto const written = Distance::units(rep.amount);
            auto const now = percent == 100 ? written : slow_share(written, rep.pool, percent, race);
            totals.distance += now;
            totals.lengths += rep.pool.has_length() ? Distance::ceiling(now, rep.pool.length) : 0;
        }
    });
    return totals;
}

void check_share(plan::Plan const& plan, std::uint32_t percent) {
    auto const share = tailor::share_of(plan, percent);
    calc::Reckoner reckoner{share};
    for (plan::Index i = 0; i < plan.sessions.size(); ++i) {
        auto const sums = reckoner.of_session(share.sessions[i]);
        for (int const lane : {0, 1, 2, 3}) {
            for (bool const optional : {false, true}) {
                auto const slow = slow_totals(plan, plan.sessions[i], {lane, optional}, percent);
                auto const totals = optional ? sums.if_time(lane) : sums.swum(lane);
                REQUIRE(totals.distance == slow.distance);
                REQUIRE(totals.lengths == slow.lengths);
                REQUIRE(totals.reps == slow.reps);
                support::Adder adder{share};
                support::expand(share, share.sessions[i], {lane, optional},
                                [&](auto const& rep) { adder.add(rep); });
                REQUIRE(totals == adder.totals());
            }
        }
    }
}

void check_seed(std::uint64_t seed) {
    auto const made = test::generate({.seed = seed});
    auto const read = support::read_plan(made.text);
    INFO("seed " << seed << "\n" << made.text);
    REQUIRE(read.error() == "");
    REQUIRE(plan::same_meaning(tailor::share_of(read.plan(), 100), read.plan()));
    check_share(read.plan(), static_cast<std::uint32_t>(1 + seed * 37 % 200));
}

} // namespace

TEST_CASE("the share of a generated plan is that of its reps, one by one", "[tailor][swimmer]") {
    for (std::uint64_t seed = 0; seed < 500; ++seed) {
        check_seed(seed);
    }
}

TEST_CASE("20 000 generated plans are shared as their reps are", "[tailor][swimmer][long]") {
    for (std::uint64_t seed = 500; seed < 20'500; ++seed) {
        check_seed(seed);
    }
}
