#include "calc/regression.hpp"

#include <catch2/catch.hpp>

/// Least squares, by hand.
namespace lengthwise::calc {
namespace {

TEST_CASE("a line through two points passes through both") {
    auto const line = line_through({{212, 200}, {442, 400}});
    CHECK(line.slope == Exact{20, 23});
    CHECK(line.intercept == Exact{360, 23});
    CHECK(line.residuals == std::vector<Exact>{0, 0});
    CHECK_FALSE(line.errors);
    CHECK(line.x_at(400) == 442);
}

// (0, 0), (1, 2), (2, 1): mean 1, 1; slope (-1 * -1 + 0 + 1 * 0) / 2 = 1/2; the line at
// 0, 1, 2 is 1/2, 1, 3/2, so e = -1/2, 1, -1/2 and their squares add up to 3/2.
TEST_CASE("a line through three points, with its errors") {
    auto const line = line_through({{0, 0}, {1, 2}, {2, 1}});
    CHECK(line.slope == Exact{1, 2});
    CHECK(line.intercept == Exact{1, 2});
    CHECK(line.residuals == std::vector<Exact>{{-1, 2}, 1, {-1, 2}});
    REQUIRE(line.errors);
    CHECK(line.errors->residual == Approx(1.224744871391589));  // root of 3/2 / (3 - 2)
    CHECK(line.errors->slope == Approx(0.866025403784439));     // s / root of 2
    CHECK(line.errors->intercept == Approx(1.118033988749895)); // s root of (1/3 + 1/2)
}

TEST_CASE("points on a line leave nothing over") {
    auto const line = line_through({{1, 5}, {2, 7}, {10, 23}, {100, 203}});
    CHECK(line.slope == 2);
    CHECK(line.intercept == 3);
    CHECK(line.residuals == std::vector<Exact>{0, 0, 0, 0});
    CHECK(line.errors->residual == 0);
    CHECK(line.errors->slope == 0);
}

TEST_CASE("large terms lose nothing") {
    constexpr std::int64_t far = 1'000'000'000'000'000;
    auto const line = line_through({{far, 3 * far}, {far + 1, 3 * far + 2}, {far + 2, 3 * far + 4}});
    CHECK(line.slope == 2);
    CHECK(line.intercept == far);
}

} // namespace
} // namespace lengthwise::calc
