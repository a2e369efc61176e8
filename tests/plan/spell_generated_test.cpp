#include "grammar/write.hpp"
#include "plan/spell.hpp"
#include "support/generate.hpp"
#include "support/read_plan.hpp"

#include <catch2/catch.hpp>

using namespace lengthwise;

namespace {

void check_seed(std::uint64_t seed) {
    auto const made = test::generate({.seed = seed, .include = seed % 5 == 0});
    auto const read = support::read_plan(made.text, {{"/library.swim", made.library}});
    auto const spelled = grammar::write(plan::spell(read.plan()));
    auto const again = support::read_plan(spelled);
    INFO("seed " << seed);
    REQUIRE(read.error() == "");
    REQUIRE(again.error() == "");
    REQUIRE(plan::same_meaning(read.plan(), again.plan()));
    REQUIRE(grammar::write(plan::spell(again.plan())) == spelled);
}

} // namespace

TEST_CASE("spell: a plan spelled and read again means the same") {
    for (std::uint64_t seed = 0; seed < 2000; ++seed) {
        check_seed(seed);
    }
}

TEST_CASE("spell: 50 000 plans spelled and read again mean the same", "[long]") {
    for (std::uint64_t seed = 2000; seed < 52'000; ++seed) {
        check_seed(seed);
    }
}
