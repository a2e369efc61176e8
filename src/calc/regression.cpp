#include "calc/regression.hpp"

#include <cmath>
#include <cstdint>

namespace lengthwise::calc {
namespace {

struct Sums {
    Exact n;
    Exact x;
    Exact y;
    Exact xx;
    Exact xy;
};

Sums sums_of(std::vector<Point> const& points) {
    Sums sums;
    for (auto const& [x, y] : points) {
        sums.x = (sums.x + x).reduced();
        sums.y = (sums.y + y).reduced();
        sums.xx = (sums.xx + x * x).reduced();
        sums.xy = (sums.xy + x * y).reduced();
    }
    sums.n = static_cast<std::int64_t>(points.size());
    return sums;
}

StandardErrors errors_of(Line const& line, Sums const& sums) {
    Exact squares;
    for (auto const& e : line.residuals) {
        squares = (squares + e * e).reduced();
    }
    auto const mean = sums.x / sums.n;
    auto const spread = (sums.xx - sums.x * mean).reduced(); // sum (x - mean)^2
    auto const variance = (squares / (sums.n - 2)).reduced();
    auto const root = [](Exact const& square) { return std::sqrt(square.reduced().approximate()); };
    return {.residual = root(variance),
            .slope = root(variance / spread),
            .intercept = root(variance * (Exact{1} / sums.n + mean * mean / spread))};
}

} // namespace

Line line_through(std::vector<Point> const& points) {
    auto const sums = sums_of(points);
    Line line;
    line.slope = ((sums.n * sums.xy - sums.x * sums.y) / (sums.n * sums.xx - sums.x * sums.x)).reduced();
    line.intercept = ((sums.y - line.slope * sums.x) / sums.n).reduced();
    line.residuals.reserve(points.size());
    for (auto const& [x, y] : points) {
        line.residuals.push_back((y - line.intercept - line.slope * x).reduced());
    }
    if (points.size() >= 3) {
        line.errors = errors_of(line, sums);
    }
    return line;
}

} // namespace lengthwise::calc
