#pragma once

#include "plan/plan.hpp"
#include "units/date.hpp"
#include "units/distance.hpp"
#include "units/duration.hpp"
#include "units/pool.hpp"

#include <array>
#include <cstddef>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

/// From what a swimmer does today to a plan that ends on race day.
namespace lengthwise::compose {

/// What lies at the poolside for the sessions to use.
struct Kit {
    bool board = true;
    bool buoy = true;
};

/// What a coach asks for. `refusals` says what of it cannot be composed at all.
struct Request {
    struct Race {
        std::string name;             ///< may be empty
        std::optional<RaceKind> kind; ///< `sprint`; the distance is its own
        Distance distance;
        Unit unit = Unit::metre; ///< as the distance was said
        Date on;
    };

    Race race;
    Date from;                      ///< the first day of week 1
    std::vector<std::uint8_t> days; ///< 0 Monday … 6 Sunday, ascending, each once; one to four
    std::optional<TimeOfDay> at;
    std::array<std::optional<TimeOfDay>, 7> at_on{}; ///< by day of the week, where it is not `at`
    Duration slot;                                   ///< booked for each session
    Pool pool;                                       ///< 15 to 100 m
    std::optional<Duration> threshold;               ///< for 100 of the pool's unit
    Distance longest;                                ///< rep of today
    Distance session;                                ///< of today
    std::vector<Date> closed;                        ///< no session on these days; in any order
    std::vector<plan::Limit> limits;                 ///< each rule at most once; their spans mean nothing
    Kit kit;
    bool race_in_pool = false;

    int first_week = 1; ///< the number of the first one
    int weeks_swum = 0; ///< weeks with a session that the plan has before it: what goes round from week to
                        ///< week goes on behind them, and they count where it is the whole plan that counts
    bool race_swum = false; ///< all of it in one go, in one of them
};

/// The file's own figure for a rule by its name, or `usual`.
[[nodiscard]] std::optional<std::int64_t> limit(Request const& request, std::string_view rule);
[[nodiscard]] std::int64_t limit_or(Request const& request, std::string_view rule, std::int64_t usual);

/// A lap in lengths, 2, or 1 in pools of 40 m or more.
[[nodiscard]] std::int64_t lengths_a_lap(Pool const& pool);

/// The race in laps, rounded up: all of it, or the share that `limit race-rep` asks for.
[[nodiscard]] std::int64_t race_rep_laps(Request const& request);

/// Has the race's distance been swum in one go, today or in a week before?
[[nodiscard]] bool race_was_swum(Request const& request);

/// When a session on this day of the week begins.
[[nodiscard]] std::optional<TimeOfDay> time_on(Request const& request, Date day);

/// 0 Monday … 6 Sunday.
[[nodiscard]] std::uint8_t weekday(Date date);

/// The time that sessions may take: the slot without what `limit slot` keeps free. May be below 0.
[[nodiscard]] Duration usable_slot(Request const& request);

/// Why a request is not one that could be composed.
enum class Refusal : std::uint8_t {
    pool,      ///< open water, no pool, or not 15 to 100 m
    race,      ///< no distance, or above `longest_race`
    days,      ///< none, or more than four
    few_days,  ///< fewer days than `limit sessions` asks for (two unless said)
    longest,   ///< under one length
    session,   ///< under one length, or above `longest_session`
    threshold, ///< not above 0, or above `slowest`
    order,     ///< the race is not after the first day
    weeks      ///< the race is more than `most_weeks` away
};

inline constexpr Distance longest_race = Distance::metres(10'000);
inline constexpr Distance longest_session = Distance::metres(10'000);
inline constexpr Duration slowest = Duration::minutes(10);
inline constexpr std::size_t most_weeks = 104;

/// All that hold, in the order above.
[[nodiscard]] std::vector<Refusal> refusals(Request const& request);

} // namespace lengthwise::compose
