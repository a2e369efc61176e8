#pragma once

#include "calc/threshold.hpp"
#include "report/paint.hpp"

#include <cstddef>
#include <string>

namespace lengthwise::report {

struct PaceStyle {
    std::size_t width = 80; ///< sentences are folded at 60 at most
    bool ascii = false;
};

/// The threshold of test swims for people: the answer first, then what it stands on, what
/// follows from it and what to write into a plan. Ends in a line feed. There is a threshold.
[[nodiscard]] std::string pace_text(calc::Trials const& trials, calc::Verdict const& verdict,
                                    Paint const& paint, PaceStyle style = {});

} // namespace lengthwise::report
