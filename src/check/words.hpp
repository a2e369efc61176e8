#pragma once

#include "plan/plan.hpp"

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

/// Figures as findings say them.
namespace lengthwise::check {

/// An amount in the unit it was written in: "110 m", "120 yd".
[[nodiscard]] std::string said(Distance amount, plan::WrittenUnit unit, Pool const& pool);

/// In the pool's unit.
[[nodiscard]] std::string said(Distance amount, Pool const& pool);

/// "100 or 125 m"; where the pool's own length is no round figure, "3 or 4 lengths (100 or 133⅓ m)".
/// `low` of 0 lengths is left out.
[[nodiscard]] std::string either(std::int64_t low, std::int64_t high, Pool const& pool);

/// The same always by lengths: "14 or 16 lengths (350 or 400 m)".
[[nodiscard]] std::string either_length(std::int64_t low, std::int64_t high, Pool const& pool);

/// "1 length", "5 lengths".
[[nodiscard]] std::string counted(std::int64_t n, std::string_view singular);

/// "a", "a or b", "a, b or c", with "or" as `last`.
[[nodiscard]] std::string listed(std::vector<std::string> const& words, std::string_view last);

/// How many percent more, rounded up: what a limit would have to say to let it pass.
[[nodiscard]] std::int64_t percent_more(Distance from, Distance to);

/// "lane 2", "lanes 2, 3 and 5".
[[nodiscard]] std::string lanes_named(std::vector<int> const& lanes);

/// In whole minutes, rounded outward so that what fits does: "39–46 min".
[[nodiscard]] std::string minutes(Band<Duration> const& band);

/// In whole seconds, rounded outward: "1:44–1:50".
[[nodiscard]] std::string clocks(Band<Duration> const& band);

/// The next whole second: "0:13".
[[nodiscard]] Duration rounded_up(Duration time, Duration step = Duration::seconds(1));

/// Both walls are alike: a pool of 40 m or more.
[[nodiscard]] bool is_long(Pool const& pool);

} // namespace lengthwise::check
