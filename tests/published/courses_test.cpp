#include "published/courses.hpp"

#include "grammar/bundle.hpp"
#include "plan/resolve.hpp"
#include "support/memory_reader.hpp"
#include "units/spell.hpp"

#include <catch2/catch.hpp>

#include <string>

using namespace lengthwise;
using published::pools;
using published::races;

namespace {

/// What the project makes of a text, the way every command does.
plan::Resolved resolved(grammar::Bundle const& bundle) {
    REQUIRE_FALSE(bundle.findings.has_errors());
    auto result = plan::resolve(bundle);
    REQUIRE_FALSE(result.findings.has_errors());
    return result;
}

} // namespace

TEST_CASE("a plan's race words stand for the rule books' distances", "[published][courses]") {
    for (auto const& race : races) {
        CAPTURE(race.word, race.source);
        support::MemoryReader reader;
        auto const bundle = grammar::bundle(
            "race.swim", "race " + std::string{race.word} + " on 2027-06-13\n", std::nullopt, reader);
        auto const result = resolved(bundle);
        REQUIRE(result.plan.race);
        CHECK(result.plan.race->distance == Distance::metres(race.metres));
    }
}

TEST_CASE("a plan's pools are the rule books' pools", "[published][courses]") {
    for (auto const& pool : pools) {
        CAPTURE(pool.name, pool.source);
        support::MemoryReader reader;
        auto const text = "pool " + std::string{pool.name} + "\nsession\n  main\n    4 lengths crawl\n";
        auto const bundle = grammar::bundle("pool.swim", text, std::nullopt, reader);
        auto const result = resolved(bundle);
        REQUIRE(result.plan.sessions.size() == 1);
        auto const& in_force = result.plan.pool_of(result.plan.sessions.front());
        CHECK(in_force.length == pool.length());
        CHECK(in_force.unit == pool.unit);
        CHECK(spell::distance(in_force.length, in_force.unit, true) == pool.name);
    }
}

// Worked with paper and pencil from the yard of 1959 (24 FR 5348): lengths that hold the
// race, and the metres then swum.
TEST_CASE("lengths that hold a race, worked by hand", "[published][courses]") {
    struct Row {
        int race;
        Distance pool;
        std::int64_t lengths;
        char const* swum;
    };
    auto const third_metres = Distance::units(1'000'000);
    auto const third_yards = Distance::units(914'400);
    auto const row = GENERATE_COPY(
        Row{750, Distance::metres(25), 30, "750"}, Row{1500, Distance::metres(25), 60, "1500"},
        Row{1900, Distance::metres(25), 76, "1900"}, Row{3800, Distance::metres(25), 152, "3800"},
        Row{750, Distance::metres(50), 15, "750"}, Row{1900, Distance::metres(50), 38, "1900"},
        Row{750, third_metres, 23, "766.6667"}, Row{1500, third_metres, 45, "1500"},
        Row{1900, third_metres, 57, "1900"}, Row{3800, third_metres, 114, "3800"},
        Row{750, Distance::yards(25), 33, "754.38"}, Row{1500, Distance::yards(25), 66, "1508.76"},
        Row{1900, Distance::yards(25), 84, "1920.24"}, Row{3800, Distance::yards(25), 167, "3817.62"},
        Row{750, third_yards, 25, "762"}, Row{1500, third_yards, 50, "1524"},
        Row{1900, third_yards, 63, "1920.24"}, Row{3800, third_yards, 125, "3810"},
        Row{750, Distance::yards(20), 42, "768.096"}, Row{1500, Distance::yards(20), 83, "1517.904"},
        Row{1900, Distance::yards(20), 104, "1901.952"}, Row{3800, Distance::yards(20), 208, "3803.904"});
    CAPTURE(row.race, row.swum);
    CHECK(Distance::ceiling(Distance::metres(row.race), row.pool) == row.lengths);
    CHECK(spell::json_metres(row.lengths * row.pool) == row.swum);
}
