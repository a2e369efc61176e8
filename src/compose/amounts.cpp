#include "compose/amounts.hpp"

#include "units/spell.hpp"

#include <fmt/core.h>

namespace lengthwise::compose {

namespace {

bool is_whole(Distance distance, Unit unit) {
    return Distance::divides(one(unit), distance);
}

/// Are all halves whole numbers too?
bool in_numbers(Pool const& pool) {
    auto const lap = lengthwise::lap(pool);
    return is_whole(lap, pool.unit) && (lap == pool.length || is_whole(pool.length, pool.unit));
}

std::string in_lengths(int lengths) {
    return fmt::format("{} length{}", lengths, lengths == 1 ? "" : "s");
}

} // namespace

std::string amount(Pool const& pool, Laps laps) {
    auto const lap = lengthwise::lap(pool);
    return in_numbers(pool) ? spell::number(lap * laps, pool.unit, true)
                            : in_lengths(static_cast<int>(Distance::whole(lap * laps, pool.length)));
}

std::string figure(Pool const& pool, Laps laps) {
    auto const text = amount(pool, laps);
    return text.substr(0, text.find(' '));
}

std::string amounts(Pool const& pool, std::vector<Laps> const& ladder) {
    std::string text;
    for (auto at = ladder.begin(); at != ladder.end(); ++at) {
        text += at == ladder.begin() ? "" : ", ";
        text +=
            std::next(at) == ladder.end() ? amount(pool, *at) : figure(pool, *at); // the last unit is all's
    }
    return text;
}

std::string half_amount(Pool const& pool, int halves, bool second) {
    auto const lap = lengthwise::lap(pool);
    if (lap != pool.length) {
        return in_numbers(pool) ? spell::number(pool.length * halves, pool.unit, true) : in_lengths(halves);
    }
    if (halves % 2 == 0) {
        return amount(pool, halves / 2);
    }
    auto const half = Distance::whole(lap, one(pool.unit) * 2) * one(pool.unit);
    return spell::number(lap * (halves / 2) + (second ? lap - half : half), pool.unit, true);
}

std::string distance(Distance distance, Unit unit) {
    auto const number = spell::number(distance, unit, true);
    auto const gap = number.find(' ') == std::string::npos ? "" : " ";
    return number + gap + std::string{spell::symbol(unit)};
}

} // namespace lengthwise::compose
