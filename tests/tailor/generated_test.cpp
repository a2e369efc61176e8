#include "grammar/write.hpp"
#include "plan/spell.hpp"
#include "support/expand.hpp"
#include "support/generate.hpp"
#include "support/read_plan.hpp"
#include "tailor/pool.hpp"

#include <catch2/catch.hpp>

#include <array>
#include <numeric>
#include <vector>

using namespace lengthwise;

namespace {

using Reps = std::vector<support::ExpandedRep>;

Reps reps_of(plan::Plan const& plan, plan::Session const& session, support::Swimmer swimmer) {
    Reps reps;
    support::expand(plan, session, swimmer, [&](auto const& rep) { reps.push_back(rep); });
    return reps;
}

bool whole(std::int64_t amount, Pool const& pool) {
    return !pool.has_length() || amount % pool.length.units() == 0;
}

/// What must hold for a rep that became another.
void check_rep(support::ExpandedRep const& was, support::ExpandedRep const& now, plan::Plan const& plan,
               tailor::Wanted const& wanted) {
    REQUIRE(was.timed == now.timed);
    if (was.timed) {
        REQUIRE(was.amount == now.amount);
        return;
    }
    auto const pool = wanted.pool.value_or(was.pool);
    REQUIRE(now.pool == pool);
    REQUIRE(whole(now.amount, pool));
    REQUIRE(now.amount > 0);
    if (plan.race && was.amount >= plan.race->distance.units()) {
        REQUIRE(now.amount * 100 >= was.amount * std::int64_t{wanted.percent});
    }
    auto const off = now.amount * 100 - was.amount * std::int64_t{wanted.percent};
    auto const most = pool.has_length() ? lap(pool) : one(pool.unit);
    REQUIRE(std::abs(off) <= 100 * most.units());

    auto const& parts = now.terms->parts;
    REQUIRE(parts.count == was.terms->parts.count);
    auto const sum =
        std::accumulate(plan.parts.begin() + parts.first, plan.parts.begin() + parts.end(), std::int64_t{0},
                        [](std::int64_t total, plan::Part const& part) { return total + part.amount; });
    REQUIRE((parts.empty() || now.amount % sum == 0));
    REQUIRE(whole(now.terms->broken.piece, pool));
    REQUIRE(now.terms->broken.piece < now.amount);
    bool const one_length = pool.has_length() && now.amount == pool.length.units();
    REQUIRE((now.terms->broken.piece > 0) == (was.terms->broken.piece > 0 && !one_length));
}

void check_session(plan::Plan const& plan, plan::Index session, tailor::Wanted const& wanted) {
    auto const tailored = tailor::fit(plan, session, wanted);
    auto const text = grammar::write(plan::spell(tailored.plan));
    INFO(text);
    for (int const lane : {0, 1, 2, 3}) {
        for (bool const optional : {false, true}) {
            auto const before = reps_of(plan, plan.sessions[session], {lane, optional});
            auto const after = reps_of(tailored.plan, tailored.session(), {lane, optional});
            REQUIRE(before.size() == after.size());
            for (std::size_t i = 0; i < before.size(); ++i) {
                check_rep(before[i], after[i], tailored.plan, wanted);
            }
        }
    }
    auto const again = support::read_plan(text);
    REQUIRE(again.error() == "");
    REQUIRE(plan::same_meaning(again.plan(), tailored.plan));
}

/// Pools elsewhere, and shares; never the session's own pool in full, which changes nothing.
std::array<tailor::Wanted, 6> const wishes{
    tailor::Wanted{.pool = Pool::of(Distance::yards(25), Unit::yard)},
    tailor::Wanted{.pool = Pool::of(Distance::metres(50), Unit::metre)},
    tailor::Wanted{.pool = Pool::of(Distance::units(1'000'000), Unit::metre)},
    tailor::Wanted{.percent = 80},
    tailor::Wanted{.pool = Pool::of(Distance::units(1'005'840), Unit::yard), .percent = 60}, // 36 2/3 yd
    tailor::Wanted{.pool = Pool::of(Distance::metres(20), Unit::metre), .percent = 120},
};

void check_seed(std::uint64_t seed) {
    auto const made = test::generate({.seed = seed});
    auto const read = support::read_plan(made.text);
    INFO("seed " << seed << "\n" << made.text);
    REQUIRE(read.error() == "");
    for (plan::Index i = 0; i < read.plan().sessions.size(); ++i) {
        auto const& wanted = wishes[(seed + i) % wishes.size()];
        bool const stays =
            wanted.percent == 100 && wanted.pool == read.plan().pool_of(read.plan().sessions[i]);
        if (!stays) {
            check_session(read.plan(), i, wanted);
        }
    }
}

} // namespace

TEST_CASE("generated sessions made to fit are whole lengths and read back the same", "[tailor]") {
    for (std::uint64_t seed = 0; seed < 600; ++seed) {
        check_seed(seed);
    }
}

TEST_CASE("20 000 generated plans made to fit are whole lengths and read back the same", "[tailor][long]") {
    for (std::uint64_t seed = 600; seed < 20'600; ++seed) {
        check_seed(seed);
    }
}
