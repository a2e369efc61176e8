#include "compose/day_sizes.hpp"

#include <algorithm>
#include <array>
#include <cstddef>

namespace lengthwise::compose {

namespace {

constexpr std::size_t sections = 4; ///< warm-up, drill, main, cool-down
constexpr std::size_t main_section = 2;

using Laps = std::array<int, sections>;

constexpr Laps long_day_shares{18, 12, 60, 10};
constexpr Laps other_day_shares{18, 27, 45, 10};

constexpr int no_cap = 1 << 30;

Laps caps(Pool const& pool) {
    auto const laps = [&](std::int64_t metres) {
        return static_cast<int>(Distance::whole(Distance::metres(metres), lap(pool)));
    };
    return {laps(900), laps(500), no_cap, laps(250)};
}

/// The section that is next to have a lap.
std::size_t next(Laps const& laps, Laps const& shares, Laps const& cap) {
    auto best = main_section;
    for (std::size_t i = 0; i < sections; ++i) {
        // An earlier section goes before main where the two are equal.
        auto const mine = shares[i] * (2 * laps[best] + 1);
        auto const its = shares[best] * (2 * laps[i] + 1);
        if (laps[i] < cap[i] && (mine > its || (mine == its && i < best))) {
            best = i;
        }
    }
    return best;
}

/// Sections too short to be worth a heading give their laps to the warm-up.
void tidy(DaySizes& sizes, DayKind kind, bool last) {
    auto const give = [&](int laps) {
        sizes.drill -= laps;
        sizes.warm_up += laps;
    };
    if (kind == DayKind::long_day) {
        give(sizes.drill == 1 && sizes.warm_up < 3 ? 1 : 0);
    } else {
        give(sizes.warm_up == 1 && sizes.drill >= 2 ? 1 : 0);
    }
    if (last && sizes.drill > 2) {
        give(sizes.drill - 2);
    }
}

} // namespace

DaySizes day_sizes(DayKind kind, int laps, int rep, Pool const& pool, bool last) {
    auto const is_long = kind == DayKind::long_day;
    auto const& shares = is_long ? long_day_shares : other_day_shares;
    auto const cap = caps(pool);
    Laps sizes{1, 1, is_long ? rep : 1, 1};
    for (auto left = laps - 3 - sizes[main_section]; left > 0; --left) {
        ++sizes[next(sizes, shares, cap)];
    }
    DaySizes result{sizes[0], sizes[1], sizes[2], sizes[3]};
    tidy(result, kind, last);
    return result;
}

WarmUp warm_up(int laps) {
    constexpr std::array<std::array<int, 3>, 21> table{{
        {0, 0, 0}, {1, 0, 0}, {2, 0, 0}, {2, 1, 0},  {2, 2, 0},  {3, 2, 0},  {4, 2, 0},
        {4, 3, 0}, {4, 2, 2}, {4, 3, 2}, {6, 2, 2},  {6, 3, 2},  {6, 4, 2},  {6, 4, 3},
        {6, 4, 4}, {8, 4, 3}, {8, 4, 4}, {10, 4, 3}, {10, 4, 4}, {12, 4, 3}, {12, 4, 4},
    }};
    if (laps < static_cast<int>(table.size())) {
        auto const& row = table[static_cast<std::size_t>(std::max(laps, 0))];
        return {row[0], row[1], row[2]};
    }
    auto const build = laps % 2 == 0 ? 4 : 3;
    return {laps - 4 - build, 4, build};
}

} // namespace lengthwise::compose
