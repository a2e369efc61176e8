#pragma once

#include "units/distance.hpp"
#include "units/duration.hpp"
#include "units/pool.hpp"

#include <algorithm>
#include <cstddef>
#include <cstdint>
#include <optional>

/// How fast a plan may grow, and what a race asks of it: the figures that `check` holds plans
/// against and `compose` builds them from. Where a source exists it stands with the rule in
/// src/check; all else here is common practice without a published source.
namespace lengthwise::calc {

/// What the rules ask where a file sets no `limit`.
namespace usual {
inline constexpr std::int64_t week_growth = 10; ///< percent
inline constexpr std::int64_t sessions = 2;     ///< a week
inline constexpr std::int64_t race_rep = 100;   ///< percent of the race
inline constexpr std::int64_t taper = 60;       ///< percent of the highest week
} // namespace usual

/// For 100 of a pool's unit; nobody has a faster threshold. What does not fit its slot at it fits at none.
inline constexpr Duration fastest_threshold = Duration::seconds(30);

/// A session of no more than this is short whatever came before.
inline constexpr std::int64_t fewest_laps = 4;

/// How far the longest rep may come after one of `longest`: a lap more, or `percent` more; a
/// third exactly where none is set.
[[nodiscard]] constexpr Distance next_rep(Distance longest, Distance lap,
                                          std::optional<std::int64_t> percent) {
    auto const share = percent ? longest.units() * *percent / 100 : longest.units() / 3;
    return longest + std::max(lap, Distance::units(share));
}

/// How far a week may come after a highest week so far of `highest`: a lap more in each of its
/// sessions (`laps` in all), or `percent` more.
[[nodiscard]] constexpr Distance next_week(Distance highest, Distance laps, std::int64_t percent) {
    return highest + std::max(laps, Distance::units(highest.units() * percent / 100));
}

/// The most metres of a taper week whose sessions come to `laps` when each has one lap.
[[nodiscard]] constexpr Distance eased_week(Distance highest, Distance laps, std::int64_t percent) {
    return std::max(Distance::units(highest.units() * percent / 100), fewest_laps * laps);
}

/// The rep that a race asks for: all of it, or the share that `limit race-rep` says.
[[nodiscard]] constexpr Distance race_rep(Distance race, std::int64_t percent) {
    return Distance::units((race.units() * percent + 99) / 100);
}

/// Laps of a session that holds a rep of `rep` laps: three more, or a third more.
[[nodiscard]] constexpr std::int64_t session_need(std::int64_t rep) {
    return std::max(rep + 3, (4 * rep + 2) / 3);
}
static_assert(session_need(1) == 4 && session_need(9) == 12 && session_need(10) == 14 &&
              session_need(15) == 20);

/// Days between a week's last and race day, at most, where that week can be a taper: then it begins 21 days
/// before the race, as the longest studied ones do (Wang et al. 2023, PLoS ONE 18:e0282838).
inline constexpr int taper_reach = 14;

/// How many weeks before the race are eased: two of more than six when it is over 1000 m, else one.
[[nodiscard]] constexpr std::size_t taper_weeks(Distance race, std::size_t weeks) {
    return race <= Distance::metres(1000) || weeks <= 6 ? 1 : 2;
}

} // namespace lengthwise::calc
