#pragma once

#include "calc/regression.hpp"
#include "units/distance.hpp"
#include "units/range.hpp"

#include <optional>

/// Times all out from the critical-speed line and from Riegel's power law.
namespace lengthwise::calc {

struct Prediction {
    Distance distance;
    Band<double> seconds;
};

/// What a power law starts from: a swim of at least 3:30.
struct LongSwim {
    Exact metres;
    Exact seconds;
};

/// t (D/D_t)^b, Riegel 1981. The exponent is 1.03 to 1.06 for swims; records have 1.04.
[[nodiscard]] double power_law(LongSwim const& from, double metres, double exponent);

/// Up to 30 min on the line: the line is expected, the band reaches to the power law's ends.
/// Beyond, where the line does not hold: exponent 1.04, between 1.03 and 1.06. The band is at
/// least 2 % to each side. Nothing where neither holds.
[[nodiscard]] std::optional<Prediction> predict(Line const& line, std::optional<LongSwim> const& longest,
                                                Distance distance);

} // namespace lengthwise::calc
