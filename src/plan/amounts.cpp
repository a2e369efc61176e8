#include "plan/amounts.hpp"

#include "units/spell.hpp"

#include <fmt/core.h>

#include <cstdint>

namespace lengthwise::plan {
namespace {

using grammar::Node;
using grammar::number_scale;
using grammar::WrittenTime;
using grammar::WrittenUnit;

constexpr auto shortest_pool = Distance::metres(1);
constexpr auto longest_pool = Distance::metres(1000);

/// `value` / 600 of `unit`, when that is a whole number of Distance units.
std::optional<Distance> times(std::uint32_t value, Distance unit) {
    auto const product = value * unit.units();
    return product % number_scale == 0 ? std::optional{Distance::units(product / number_scale)}
                                       : std::nullopt;
}

/// The lengths that a bare whole number stands for where lengths are no whole numbers: k with
/// trunc(k L) = n or round(k L) = n, that is n - 1/2 <= k L < n + 1; the smallest such k.
Distance snapped(Distance exact, Pool const& pool) {
    auto const unit = one(pool.unit);
    if (Distance::divides(unit, pool.length) || Distance::divides(pool.length, exact)) {
        return exact;
    }
    auto const twice_low = exact * 2 - unit;
    auto const count = Distance::ceiling(twice_low, pool.length * 2);
    auto const lengths = pool.length * count;
    return count >= 1 && lengths < exact + unit ? lengths : exact;
}

std::optional<Distance> in_yards(Report& report, Node const& number) {
    auto const yards = times(number.value, Distance::yards(1));
    if (!yards || number.decimal()) {
        report.error(code::amount, span_of(number), "yards take whole numbers or fractions, no decimals",
                     "write it as 12 1/2 yd");
        return std::nullopt;
    }
    return yards;
}

std::optional<Distance> in_lengths(Report& report, Pool const& pool, Node const& number) {
    if (!pool.has_length()) {
        report.error(code::amount, span_of(number),
                     pool.kind == Pool::Kind::open_water ? "open water has no lengths"
                                                         : "lengths need a pool, and none is named",
                     "write metres, or name the pool: pool 25m");
        return std::nullopt;
    }
    if (number.value % number_scale != 0) {
        report.error(code::amount, span_of(number), "lengths come in whole numbers",
                     "write the distance in metres");
        return std::nullopt;
    }
    return pool.length * (number.value / number_scale);
}

std::optional<Distance> bare(Report& report, Pool const& pool, Node const& number) {
    if (pool.unit == Unit::yard) {
        auto const yards = in_yards(report, number);
        return yards && number.value % number_scale == 0 && pool.has_length() ? snapped(*yards, pool) : yards;
    }
    auto const metres = times(number.value, Distance::metres(1));
    return metres && number.value % number_scale == 0 && pool.has_length() ? snapped(*metres, pool) : metres;
}

std::int64_t unit_ms(WrittenTime written) {
    switch (written) {
    case WrittenTime::hours:
        return Duration::hours(1).ms();
    case WrittenTime::minutes:
        return Duration::minutes(1).ms();
    default:
        return Duration::seconds(1).ms();
    }
}

} // namespace

std::optional<Distance> distance_in(Report& report, Pool const& pool, Node const& number, WrittenUnit unit) {
    std::optional<Distance> distance;
    switch (unit) {
    case WrittenUnit::metres:
        distance = times(number.value, Distance::metres(1));
        break;
    case WrittenUnit::yards:
        distance = in_yards(report, number);
        break;
    case WrittenUnit::lengths:
        distance = in_lengths(report, pool, number);
        break;
    case WrittenUnit::bare:
        distance = bare(report, pool, number);
        break;
    }
    if (distance && distance->zero()) {
        report.error(code::amount, span_of(number), "a distance of 0 is not swum", "write how many metres");
        return std::nullopt;
    }
    return distance;
}

std::optional<Distance> distance_with_unit(Report& report, Node const& number) {
    if (number.unit() == WrittenUnit::bare || number.unit() == WrittenUnit::lengths) {
        report.error(code::amount, span_of(number), "metres or yards? this distance needs its unit",
                     fmt::format("write {0}m or {0}yd", number.value / number_scale));
        return std::nullopt;
    }
    return distance_in(report, Pool{}, number);
}

std::optional<Pool> pool_of(Report& report, Node const& number) {
    if (number.unit() == WrittenUnit::lengths) {
        report.error(code::amount, span_of(number), "a pool's length is given in metres or yards",
                     "pool 25m");
        return std::nullopt;
    }
    auto const length = distance_in(report, Pool{}, number);
    if (!length) {
        return std::nullopt;
    }
    auto const unit = number.unit() == WrittenUnit::yards ? Unit::yard : Unit::metre;
    if (*length < shortest_pool || *length > longest_pool) {
        report.error(
            code::amount, span_of(number),
            fmt::format("a pool of {}: pools from 1 m to 1000 m are read", spell::distance(*length, unit)));
        return std::nullopt;
    }
    return Pool::of(*length, unit);
}

std::optional<Range<Duration>> range_of(Node const& low, Node const* high) {
    if (high == nullptr) {
        return Range<Duration>{duration_of(low), duration_of(low)};
    }
    auto const scale = low.written_time() == WrittenTime::bare ? unit_ms(high->written_time()) : 1;
    Range<Duration> const range{Duration::ms(low.value * scale), duration_of(*high)};
    if (range.low > range.high) { // parsing has said so
        return std::nullopt;
    }
    return range;
}

} // namespace lengthwise::plan
