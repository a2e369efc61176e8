#include "cards/strip.hpp"
#include "support/card_checks.hpp"

#include <catch2/catch.hpp>

using namespace lengthwise;
using namespace lengthwise::cards;

namespace {

Strip strip(int metres, int pool) {
    support::FakeMeasure measure;
    Setting const quarter{{99, 142.5}, {4.48}, levels[0], false, false, false};
    auto const in = Pool::of(Distance::metres(pool), Unit::metre);
    return strip_of({Distance::metres(metres), metres / pool, in}, quarter, measure);
}

} // namespace

TEST_CASE("a box stands for a touch at the start, a row for whole hundreds") {
    auto const s = strip(750, 25);
    CHECK(s.step == 2);
    CHECK(s.cells.size() == 15);
    CHECK(s.cells.front() == "2");
    CHECK(s.cells.back() == "30");
    CHECK(s.columns == 8);
    CHECK(s.row_ends == std::vector<std::string>{"400 m", "750 m"});
    CHECK(s.label == "750 m: tick each touch at the start");
}

TEST_CASE("longer reps have more rows, then boxes of more lengths") {
    CHECK(strip(1500, 25).row_ends == std::vector<std::string>{"400 m", "800 m", "1200 m", "1500 m"});
    CHECK(strip(1500, 50).row_ends == std::vector<std::string>{"800 m", "1500 m"});
    auto const s = strip(3800, 25);
    CHECK(s.step == 4);
    CHECK(s.cells.size() == 38);
    CHECK(s.row_ends.back() == "3800 m");
    CHECK(s.label == "3800 m: tick every 4 lengths");
}

TEST_CASE("an odd end has a box of its own") {
    auto const s = strip(325, 25);
    CHECK(s.cells == std::vector<std::string>{"2", "4", "6", "8", "10", "12", "13"});
    CHECK(s.row_ends.back() == "325 m");
}

TEST_CASE("boxes are wide enough for a pencil and their number") {
    for (int lengths = 12; lengths < 400; lengths += 7) {
        auto const s = strip(lengths * 25, 25);
        INFO(lengths);
        CHECK(s.cells.size() <= 40);
        CHECK(s.cells.back() == std::to_string(lengths));
        REQUIRE(s.columns > 0);
        CHECK(s.cell_width >= 7);
        CHECK(s.cell_height >= 6.9);
        CHECK(s.row_ends.size() == (s.cells.size() + s.columns - 1) / s.columns);
    }
}
