#include "cards/layout.hpp"
#include "cards/sheet.hpp"

#include <catch2/catch.hpp>

#include <cmath>

using namespace lengthwise::cards;

namespace {

/// What a row of docs/cards.md, "Sheets", says.
struct Expected {
    char const* name;
    Size paper;
    double margin;
    std::size_t cards;
    bool landscape;
    Point origin;
};

Grid grid_of(char const* name, Size const& paper, double margin) {
    auto const* const size = find_card_size(name);
    REQUIRE(size != nullptr);
    auto const grid = impose(size_on(*size, paper, margin), paper, margin);
    REQUIRE(grid.has_value());
    return *grid;
}

/// Where a point of a card's back comes to lie, seen from the front through the paper, when the sheet is
/// turned over its long edge.
Point through_paper(Grid const& grid, std::size_t number, Point at) {
    auto const back = back_place(grid, number);
    if (back.upside_down) {
        at = {grid.card.width - at.x, grid.card.height - at.y};
    }
    Point const page{back.at.x + at.x, back.at.y + at.y};
    return grid.landscape() ? Point{page.x, grid.paper.height - page.y}
                            : Point{grid.paper.width - page.x, page.y};
}

} // namespace

// Reckoned on paper: columns = floor((W - 2 m) / w), rows alike, the rest shared by both sides.
TEST_CASE("as many cards as have room lie in the middle of the sheet") {
    auto const row =
        GENERATE(Expected{"quarter", a4, 6, 4, false, {6, 6}}, Expected{"eighth", a4, 6, 8, true, {6, 6}},
                 Expected{"half", a4, 6, 2, true, {6, 6}}, Expected{"whole", a4, 6, 1, false, {6, 6}},
                 Expected{"quarter", letter, 6, 4, false, {6, 6}}, Expected{"a6", a4, 0, 4, false, {0, 0.5}},
                 Expected{"a6", a4, 6, 2, true, {43.5, 31}}, Expected{"a7", a4, 0, 8, true, {0.5, 0}},
                 Expected{"a7", a4, 6, 4, false, {31, 43.5}}, Expected{"a5", a4, 6, 1, false, {31, 43.5}},
                 Expected{"3x5in", letter, 6, 4, false, {31.75, 12.7}},
                 Expected{"4x6in", a4, 6, 2, true, {46.9, 28.8}});
    INFO(row.name);
    auto const grid = grid_of(row.name, row.paper, row.margin);
    CHECK(grid.cards() == row.cards);
    CHECK(grid.landscape() == row.landscape);
    CHECK(grid.origin.x == Approx(row.origin.x).margin(0.01));
    CHECK(grid.origin.y == Approx(row.origin.y).margin(0.01));
}

TEST_CASE("a card that is larger than the room for it has no place") {
    CHECK_FALSE(impose({205, 205}, a4, 6).has_value());
    CHECK(impose({198, 285}, a4, 6).has_value());
}

TEST_CASE("cards lie apart, inside the margin") {
    for (auto const& size : card_sizes()) {
        for (auto const& paper : {a4, letter}) {
            auto const grid = impose(size_on(size, paper, 6), paper, 6);
            REQUIRE(grid.has_value());
            for (std::size_t i = 0; i < grid->cards(); ++i) {
                auto const at = place(*grid, i);
                CHECK(at.x >= 6 - 0.001);
                CHECK(at.y >= 6 - 0.001);
                CHECK(at.x + grid->card.width <= grid->paper.width - 6 + 0.001);
                CHECK(at.y + grid->card.height <= grid->paper.height - 6 + 0.001);
                for (std::size_t k = 0; k < i; ++k) {
                    auto const other = place(*grid, k);
                    CHECK((std::abs(at.x - other.x) > grid->card.width - 0.001 ||
                           std::abs(at.y - other.y) > grid->card.height - 0.001));
                }
            }
        }
    }
}

TEST_CASE("a back lies behind its front, and the hole goes through both marks") {
    for (auto const& size : card_sizes()) {
        for (auto const& paper : {a4, letter}) {
            auto const grid = impose(size_on(size, paper, 6), paper, 6);
            REQUIRE(grid.has_value());
            for (std::size_t i = 0; i < grid->cards(); ++i) {
                INFO(size.name << " " << i);
                Point const behind_hole{hole_centre, hole_centre}; // at the back's left
                Point const hole{grid->card.width - hole_centre, hole_centre};
                auto const front = place(*grid, i);
                auto const seen = through_paper(*grid, i, behind_hole);
                CHECK(seen.x == Approx(front.x + hole.x));
                CHECK(seen.y == Approx(front.y + hole.y));
            }
        }
    }
}

TEST_CASE("cut marks stand outside the cards and on the paper") {
    auto const grid = grid_of("quarter", a4, 6);
    auto const marks = cut_marks(grid);
    CHECK(marks.size() == 2 * 3 + 2 * 3 + 2); // three cuts each way, a cross in the middle
    for (auto const& mark : marks) {
        for (auto const& end : {mark.from, mark.to}) {
            CHECK(end.x >= 0);
            CHECK(end.y >= 0);
            CHECK(end.x <= 210);
            CHECK(end.y <= 297);
        }
    }
}
