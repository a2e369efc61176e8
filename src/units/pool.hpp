#pragma once

#include "units/distance.hpp"

#include <cstdint>

namespace lengthwise {

/// What a bare number in a plan stands for.
enum class Unit : std::uint8_t { metre, yard };

[[nodiscard]] constexpr Distance one(Unit unit) {
    return unit == Unit::yard ? Distance::yards(1) : Distance::metres(1);
}

/// Where reps are swum: nothing said, open water, or a pool of one length.
struct Pool {
    enum class Kind : std::uint8_t { unsaid, open_water, pool };

    Kind kind = Kind::unsaid;
    Unit unit = Unit::metre; ///< of bare numbers; metres unless the pool was given in yards
    Distance length;         ///< 1 to 1000 m; 0 unless kind is pool

    [[nodiscard]] static constexpr Pool open_water() { return {Kind::open_water, Unit::metre, {}}; }
    [[nodiscard]] static constexpr Pool of(Distance length, Unit unit) { return {Kind::pool, unit, length}; }

    [[nodiscard]] constexpr bool has_length() const { return kind == Kind::pool; }

    friend constexpr bool operator==(Pool const&, Pool const&) = default;
};

/// From the wall a swimmer starts at and back to it: two lengths, but one in pools of
/// 40 m or more. Only for pools with a length.
[[nodiscard]] constexpr Distance lap(Pool const& pool) {
    return pool.length < Distance::metres(40) ? pool.length * 2 : pool.length;
}

} // namespace lengthwise
