#include "calc/regression.hpp"
#include "calc/threshold.hpp"
#include "published/norris.hpp"
#include "support/swims.hpp"

#include <catch2/catch.hpp>
#include <gsl/gsl_fit.h>

#include <cmath>
#include <random>
#include <set>

/// Our line against the GNU Scientific Library's (Debian: libgsl-dev), which shares no code with
/// it and works in floating point, and against figures that NIST certifies.
namespace lengthwise {
namespace {

struct Theirs {
    double slope = 0;
    double intercept = 0;
    double slope_error = 0;
    double intercept_error = 0;
    double residual = 0;
};

Theirs gsl(std::vector<double> const& x, std::vector<double> const& y) {
    Theirs theirs;
    double covariance = 0;
    double squares = 0;
    REQUIRE(gsl_fit_linear(x.data(), 1, y.data(), 1, x.size(), &theirs.intercept, &theirs.slope,
                           &theirs.intercept_error, &covariance, &theirs.slope_error, &squares) == 0);
    theirs.slope_error = std::sqrt(theirs.slope_error);
    theirs.intercept_error = std::sqrt(theirs.intercept_error);
    theirs.residual = std::sqrt(squares / (static_cast<double>(x.size()) - 2));
    return theirs;
}

/// Relative to theirs.
void close(double ours, double theirs, double within = 1e-9) {
    CHECK(std::abs(ours - theirs) <= within * std::abs(theirs));
}

void compare(calc::Line const& line, Theirs const& theirs) {
    close(line.slope.approximate(), theirs.slope);
    close(line.intercept.approximate(), theirs.intercept);
    if (line.errors) {
        close(line.errors->slope, theirs.slope_error);
        close(line.errors->intercept, theirs.intercept_error);
        close(line.errors->residual, theirs.residual);
    }
}

/// Metres on seconds, both ways.
void compare(std::vector<support::Timed> const& swims) {
    std::vector<calc::Point> points;
    std::vector<double> x;
    std::vector<double> y;
    for (auto const& swim : support::trials(swims).swims) {
        points.push_back({{swim.time.ms(), 1000}, {swim.distance.units(), Distance::per_metre}});
        x.push_back(static_cast<double>(swim.time.ms()) / 1000);
        y.push_back(static_cast<double>(swim.distance.units()) / Distance::per_metre);
    }
    compare(calc::line_through(points), gsl(x, y));
}

} // namespace

TEST_CASE("NIST's certified figures of Norris come out, to the digits that are certified", "[published]") {
    using namespace published;
    std::vector<calc::Point> points;
    for (auto const& [y, x] : norris::tenths) {
        points.push_back({{x, 10}, {y, 10}});
    }
    auto const line = calc::line_through(points);
    close(line.slope.approximate(), norris::slope, 1e-14);
    close(line.intercept.approximate(), norris::intercept, 1e-14);
    close(line.errors->slope, norris::slope_error, 1e-14);
    close(line.errors->intercept, norris::intercept_error, 1e-14);
    close(line.errors->residual, norris::residual_deviation, 1e-14);
}

// Sets of swims as tests have them: two, three and four distances, short ones among them. Beside
// each what numpy 1.24.2 (polyfit) made of it.
TEST_CASE("trial sets have GSL's and numpy's line", "[published]") {
    struct Row {
        std::vector<support::Timed> swims;
        double speed;
        double reserve;
    };
    for (auto const& [swims, speed, reserve] : std::vector<Row>{
             {{{200, 150}, {400, 320}}, 1.176471, 23.529412},
             {{{200, 126}, {400, 270}}, 1.388889, 25.000000},
             {{{200, 180}, {400, 400}}, 0.909091, 36.363636},
             {{{200, 215}, {400, 460}}, 0.816327, 24.489796},
             {{{200, 152}, {400, 322}, {800, 668}}, 1.1618041227, 24.4065639523},
             {{{100, 70}, {200, 152}, {400, 322}, {800, 668}}, 1.1681444493, 21.0522318631},
             {{{200, 150}, {400, 318}, {800, 660}, {1500, 1270}}, 1.1594599488, 29.9037606719},
             {{{50, 28.5}, {100, 62}, {200, 136}, {400, 291}}, 1.3256240951, 15.9973826912},
         }) {
        compare(swims);
        auto const verdict = calc::judge(support::trials(swims));
        REQUIRE(verdict.threshold);
        CHECK(verdict.threshold->speed.approximate() == Approx(speed).margin(6e-7));
        CHECK(verdict.threshold->reserve.approximate() == Approx(reserve).margin(6e-7));
    }
}

TEST_CASE("10 000 random sets have GSL's line", "[published]") {
    std::mt19937_64 random{20'270'613};
    std::uniform_int_distribution<int> count{2, 10};
    std::uniform_int_distribution<int> quarter{2, 120}; // 50 to 3000 m
    std::uniform_real_distribution<double> speed{0.4, 2};
    std::uniform_real_distribution<double> reserve{5, 40};
    std::normal_distribution<double> noise{0, 0.02};
    for (int set = 0; set < 10'000; ++set) {
        std::set<int> lengths;
        for (auto n = static_cast<std::size_t>(count(random)); lengths.size() < n;) {
            lengths.insert(quarter(random));
        }
        std::vector<support::Timed> swims;
        auto const v = speed(random);
        auto const ahead = reserve(random);
        for (auto const length : lengths) {
            auto const metres = 25.0 * length;
            swims.push_back({metres, (metres - ahead) / v * (1 + noise(random))});
        }
        compare(swims);
    }
}

} // namespace lengthwise
