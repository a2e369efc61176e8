#pragma once

#include "units/distance.hpp"
#include "units/pool.hpp"

#include <algorithm>
#include <cstdint>

namespace lengthwise {

/// A fraction of whole numbers; the denominator is above 0.
struct Ratio {
    std::int64_t numerator = 1;
    std::int64_t denominator = 1;

    friend constexpr bool operator==(Ratio const&, Ratio const&) = default;
};

/// The share of a length that has to be swum, K(L) = 1 - 1 m / max(L, 10 m): each length
/// begins with a push-off that is worth 1 m. 1 in open water and where no pool is said.
[[nodiscard]] constexpr Ratio swum_share(Pool const& pool) {
    if (!pool.has_length()) {
        return {};
    }
    auto const length = std::max(pool.length, Distance::metres(10)).units();
    return {length - Distance::metres(1).units(), length};
}

/// What a pace of `course` is multiplied with to be one of `pool`: K(pool) / K(course). 1 where
/// one of the two was not said. Both terms are below 2^50.
///
/// Source: Wolfrum et al. 2013, SpringerPlus 2:643: 25 m courses are 2.0 +- 0.6 % faster than
/// 50 m courses; here 2.08 %.
[[nodiscard]] constexpr Ratio course_ratio(Pool const& pool, Pool const& course) {
    if (pool.kind == Pool::Kind::unsaid || course.kind == Pool::Kind::unsaid || pool == course) {
        return {};
    }
    auto const here = swum_share(pool);
    auto const there = swum_share(course);
    return {here.numerator * there.denominator, here.denominator * there.numerator};
}

} // namespace lengthwise
