#include "check/words.hpp"

#include "units/spell.hpp"

#include <fmt/core.h>

namespace lengthwise::check {

std::string said(Distance amount, plan::WrittenUnit unit, Pool const& pool) {
    switch (unit) {
    case plan::WrittenUnit::metres:
        return spell::distance(amount, Unit::metre);
    case plan::WrittenUnit::yards:
        return spell::distance(amount, Unit::yard);
    case plan::WrittenUnit::bare:
    case plan::WrittenUnit::lengths:
        break;
    }
    return said(amount, pool);
}

std::string said(Distance amount, Pool const& pool) {
    return spell::distance(amount, pool.unit);
}

std::string either(std::int64_t low, std::int64_t high, Pool const& pool) {
    auto const figures = low == 0 ? said(high * pool.length, pool)
                                  : fmt::format("{} or {}", spell::number(low * pool.length, pool.unit),
                                                said(high * pool.length, pool));
    if (Distance::divides(one(pool.unit), pool.length)) {
        return figures;
    }
    return low == 0 ? fmt::format("{} ({})", counted(high, "length"), figures)
                    : fmt::format("{} or {} ({})", low, counted(high, "length"), figures);
}

std::string counted(std::int64_t n, std::string_view singular) {
    return fmt::format("{} {}{}", n, singular, n == 1 ? "" : "s");
}

bool is_long(Pool const& pool) {
    return pool.length >= Distance::metres(40);
}

} // namespace lengthwise::check
