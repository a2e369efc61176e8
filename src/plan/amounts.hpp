#pragma once

#include "grammar/tree.hpp"
#include "plan/report.hpp"
#include "units/distance.hpp"
#include "units/duration.hpp"
#include "units/pool.hpp"
#include "units/range.hpp"

#include <optional>

/// Written numbers and times as quantities. The rules: docs/notation.md, "Amounts and units".
namespace lengthwise::plan {

/// Where a leaf stands.
[[nodiscard]] inline Span span_of(grammar::Node const& leaf) {
    return {leaf.begin, leaf.begin + (leaf.is_string() ? leaf.value : leaf.length)};
}

/// The node's number in `unit`, in a pool. A bare number has the pool's unit; where the pool's length is no
/// whole number of it (33 1/3 m), a bare whole number that is a rounded or truncated count of lengths means
/// those lengths. Above 0. Nothing, and an error, when it cannot be.
[[nodiscard]] std::optional<Distance> distance_in(Report& report, Pool const& pool,
                                                  grammar::Node const& number, grammar::WrittenUnit unit);
[[nodiscard]] inline std::optional<Distance> distance_in(Report& report, Pool const& pool,
                                                         grammar::Node const& number) {
    return distance_in(report, pool, number, number.unit());
}

/// A distance that says `m` or `yd` itself.
[[nodiscard]] std::optional<Distance> distance_with_unit(Report& report, grammar::Node const& number);

/// What `pool` and `in` take: 1 to 1000 m; a bare number is metres.
[[nodiscard]] std::optional<Pool> pool_of(Report& report, grammar::Node const& number);

/// One written time.
[[nodiscard]] constexpr Duration duration_of(grammar::Node const& time) {
    return Duration::ms(time.value);
}

/// `rest` or a limit: a time, or a range whose high end is the following node. A bare low end takes the high
/// end's unit. Nothing for a range that runs backward, of which parsing has told.
[[nodiscard]] std::optional<Range<Duration>> range_of(grammar::Node const& low, grammar::Node const* high);

} // namespace lengthwise::plan
