#pragma once

#include "calc/threshold.hpp"

#include <string>

namespace lengthwise::report {

/// The threshold of test swims as one line of JSON, schema `lengthwise.pace/1`
/// (docs/pace.schema.json). Figures half up to at most six decimals.
[[nodiscard]] std::string pace_json(calc::Trials const& trials, calc::Verdict const& verdict);

} // namespace lengthwise::report
