#pragma once

#include "plan/plan.hpp"
#include "report/paint.hpp"

#include <cstddef>
#include <string>

/// The longest rep week by week, on its way to the race: what `check` proves its verdict with.
namespace lengthwise::report {

/// A table, a row for all lanes that swim alike and for swimmers whose share is another, turned on its
/// side where it is too wide; ends in a line feed. Empty where the plan has no numbered week.
[[nodiscard]] std::string ramp_text(plan::Plan const& plan, Paint const& paint, std::size_t width,
                                    bool ascii);

} // namespace lengthwise::report
