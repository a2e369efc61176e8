#include "calc/prediction.hpp"

#include <algorithm>
#include <cmath>

namespace lengthwise::calc {
namespace {

/// Riegel 1981, Athletic Records and Human Endurance: 1.06 is his usual exponent, about 1.03 his
/// swimmers'. Between them lie the records of 400 to 1500 m (tests/published/records.hpp).
constexpr double least_exponent = 1.03;
constexpr double usual_exponent = 1.04;
constexpr double most_exponent = 1.06;

/// Swimmers do not repeat a time more closely: coefficient of variation below 2 %, Scott 2023.
constexpr double repeatable = 0.02;

/// How long critical speed can be held at most, roughly: 14 to 39 min, Dekerle 2010.
constexpr std::int64_t line_holds_seconds = 1800;

Band<double> with_least_width(Band<double> band) {
    return {std::min(band.low, band.expected * (1 - repeatable)), band.expected,
            std::max(band.high, band.expected * (1 + repeatable))};
}

} // namespace

double power_law(LongSwim const& from, double metres, double exponent) {
    auto const ratio = metres / from.metres.reduced().approximate();
    return from.seconds.reduced().approximate() * std::pow(ratio, exponent);
}

std::optional<Prediction> predict(Line const& line, std::optional<LongSwim> const& longest,
                                  Distance distance) {
    Exact const metres{distance.units(), Distance::per_metre};
    auto const on_line = line.x_at(metres).reduced();
    auto const line_holds = Exact{0} < on_line && !(Exact{line_holds_seconds} < on_line);
    if (!longest) {
        auto const t = on_line.approximate();
        return line_holds ? std::optional{Prediction{distance, with_least_width({t, t, t})}} : std::nullopt;
    }
    auto const power = [&](double exponent) { return power_law(*longest, metres.approximate(), exponent); };
    auto const [low, high] = std::minmax({power(least_exponent), power(most_exponent)});
    if (!line_holds) {
        return Prediction{distance, with_least_width({low, power(usual_exponent), high})};
    }
    return Prediction{distance, with_least_width({low, on_line.approximate(), high})};
}

} // namespace lengthwise::calc
