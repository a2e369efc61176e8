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

namespace {

/// "100 or 125 m".
std::string figures(std::int64_t low, std::int64_t high, Pool const& pool) {
    auto const text = said(high * pool.length, pool);
    return low == 0 ? text : fmt::format("{} or {}", spell::number(low * pool.length, pool.unit), text);
}

} // namespace

std::string either(std::int64_t low, std::int64_t high, Pool const& pool) {
    return Distance::divides(one(pool.unit), pool.length) ? figures(low, high, pool)
                                                          : either_length(low, high, pool);
}

std::string either_length(std::int64_t low, std::int64_t high, Pool const& pool) {
    auto const lengths = counted(high, "length");
    return low == 0 ? fmt::format("{} ({})", lengths, figures(low, high, pool))
                    : fmt::format("{} or {} ({})", low, lengths, figures(low, high, pool));
}

std::string counted(std::int64_t n, std::string_view singular) {
    return fmt::format("{} {}{}", n, singular, n == 1 ? "" : "s");
}

bool is_long(Pool const& pool) {
    return pool.length >= Distance::metres(40);
}

} // namespace lengthwise::check
