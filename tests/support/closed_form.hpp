#pragma once

#include "plan/plan.hpp"
#include "support/slow_pace.hpp"
#include "units/range.hpp"

#include <optional>
#include <vector>

/// What src/calc says, in the figures of those who walk a plan rep by rep.
namespace lengthwise::support {

[[nodiscard]] Three three(Band<Duration> const& band);
[[nodiscard]] std::optional<Three> three(std::optional<Band<Duration>> const& band);

/// The lanes that lines and swimmers name, one that nobody does, and nobody's.
[[nodiscard]] std::vector<int> lanes_to_try(plan::Plan const& plan);

} // namespace lengthwise::support
