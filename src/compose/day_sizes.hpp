#pragma once

#include "units/pool.hpp"

#include <cstdint>

/// How a session's laps are shared out among its sections. Common practice, no published source.
namespace lengthwise::compose {

/// What a session is for; their order in a week.
enum class DayKind : std::uint8_t { pace, long_day, third, fourth };

/// Laps of each section.
struct DaySizes {
    int warm_up = 0;
    int drill = 0;
    int main = 0;
    int cool_down = 0;

    [[nodiscard]] constexpr int laps() const { return warm_up + drill + main + cool_down; }
    friend bool operator==(DaySizes const&, DaySizes const&) = default;
};

/// Shares out `laps` (4 or more; on a long day `rep` + 3 or more) by highest averages: from
/// (1, 1, rep, 1) on a long day, else (1, 1, 1, 1), each further lap goes to the section with the
/// largest share / (2s + 1), s its laps so far, the earlier one where two are equal. Shares are
/// 18/12/60/10 and 18/27/45/10; warm-up, drill and cool-down end at 900, 500 and 250 m.
/// `last` is the plan's last session, whose drills beyond two laps join the warm-up.
[[nodiscard]] DaySizes day_sizes(DayKind kind, int laps, int rep, Pool const& pool, bool last = false);

/// Laps of a warm-up: relaxed choice, then one thing, then crawl that builds.
struct WarmUp {
    int choice = 0;
    int one_thing = 0;
    int build = 0;

    friend bool operator==(WarmUp const&, WarmUp const&) = default;
};

/// `laps` is 1 or more.
[[nodiscard]] WarmUp warm_up(int laps);

} // namespace lengthwise::compose
