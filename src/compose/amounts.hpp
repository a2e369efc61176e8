#pragma once

#include "compose/page.hpp"
#include "units/pool.hpp"

#include <string>
#include <vector>

/// Laps as a coach writes them.
namespace lengthwise::compose {

/// "400", or "16 lengths" in a pool whose lap is no whole number of its unit.
[[nodiscard]] std::string amount(Pool const& pool, Laps laps);

/// The number alone, where its unit stands close by: "400", "16".
[[nodiscard]] std::string figure(Pool const& pool, Laps laps);

/// Rungs of a ladder: "50, 100, 50"; "2, 4, 2 lengths".
[[nodiscard]] std::string amounts(Pool const& pool, std::vector<Laps> const& ladder);

/// The same for half laps. Where a lap is one length that has no middle in whole numbers, its first half is
/// the smaller one; `second`: what is left of it.
[[nodiscard]] std::string half_amount(Pool const& pool, int halves, bool second);

/// A distance with its unit, as the notation has it: "750m", "266 2/3 m".
[[nodiscard]] std::string distance(Distance distance, Unit unit);

} // namespace lengthwise::compose
