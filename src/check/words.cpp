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

std::string listed(std::vector<std::string> const& words, std::string_view last) {
    std::string text;
    for (std::size_t i = 0; i < words.size(); ++i) {
        text += i == 0 ? "" : i + 1 == words.size() ? fmt::format(" {} ", last) : ", ";
        text += words[i];
    }
    return text;
}

std::int64_t percent_more(Distance from, Distance to) {
    return Distance::ceiling(100 * (to - from), from);
}

std::string lanes_named(std::vector<int> const& lanes) {
    std::vector<std::string> numbers;
    for (int const lane : lanes) {
        numbers.push_back(std::to_string(lane));
    }
    return (lanes.size() == 1 ? "lane " : "lanes ") + listed(numbers, "and");
}

std::string minutes(Band<Duration> const& band) {
    auto const low = band.low.ms() / Duration::minutes(1).ms();
    auto const high = rounded_up(band.high, Duration::minutes(1)).ms() / Duration::minutes(1).ms();
    return low == high ? fmt::format("{} min", low) : fmt::format("{}–{} min", low, high);
}

std::string clocks(Band<Duration> const& band) {
    auto const low = Duration::ms(band.low.ms() / 1000 * 1000);
    auto const high = rounded_up(band.high);
    return low == high ? spell::clock(low) : fmt::format("{}–{}", spell::clock(low), spell::clock(high));
}

Duration rounded_up(Duration time, Duration step) {
    return Duration::ms((time.ms() + step.ms() - 1) / step.ms() * step.ms());
}

bool is_long(Pool const& pool) {
    return pool.length >= Distance::metres(40);
}

} // namespace lengthwise::check
