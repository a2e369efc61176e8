#include "cards/layout.hpp"
#include "cards/type.hpp"

#include <catch2/catch.hpp>

using namespace lengthwise::cards;

// h = 2 d tan(a / 2), reckoned with another program: echo "2*700*s(a/2)/c(a/2)" with a = 22/60 degree, bc -l.
TEST_CASE("how high letters have to be") {
    CHECK(height_of_arc(700, 22) == Approx(4.4797).epsilon(1e-4));
    CHECK(height_of_arc(700, 16) == Approx(3.2579).epsilon(1e-4));
    CHECK(height_of_arc(1000, 22) == Approx(6.3995).epsilon(1e-4));
    CHECK(height_of_arc(1500, 16) == Approx(6.9813).epsilon(1e-4));
    CHECK(height_of_arc(700, 31) == Approx(6.3123).epsilon(1e-4));
}

TEST_CASE("the two sizes of a card are seen under 22 and 16 minutes of arc") {
    Scale const scale{height_of_arc(700, set_arc)};
    CHECK(scale.small() == Approx(height_of_arc(700, small_arc)).epsilon(0.001));
    CHECK(scale.em() == Approx(6.162).epsilon(0.001)); // 17.5 pt
}

TEST_CASE("lines of the set stand as close as they may, and letters never touch") {
    for (auto const& level : levels) {
        CHECK(level.pitch * capital_of_em >= rise_of_em + fall_of_em);
    }
}
