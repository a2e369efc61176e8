#pragma once

#include "calc/exact.hpp"

#include <optional>
#include <vector>

/// A straight line through measured points by least squares. Slope and intercept are exact;
/// only the square roots of the standard errors are rounded.
namespace lengthwise::calc {

struct Point {
    Exact x;
    Exact y;
};

struct StandardErrors {
    double residual = 0; ///< s, of one point off the line: s^2 = sum e^2 / (n - 2)
    double slope = 0;
    double intercept = 0;
};

struct Line {
    Exact slope;
    Exact intercept;
    std::vector<Exact> residuals;         ///< e = y - intercept - slope x, a point each
    std::optional<StandardErrors> errors; ///< from three points on

    /// Where it reaches `y`; its slope is not 0.
    [[nodiscard]] Exact x_at(Exact const& y) const { return (y - intercept) / slope; }
};

/// The least squares of y on x. There are at least two points, of which two differ in x.
[[nodiscard]] Line line_through(std::vector<Point> const& points);

} // namespace lengthwise::calc
