#pragma once

#include "plan/plan.hpp"
#include "units/distance.hpp"
#include "units/pool.hpp"

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

/// A plan's weeks on their way to the race: how much, and how far in one piece.
namespace lengthwise::report {

struct ChartWeek {
    enum class Kind : std::uint8_t {
        before,   ///< what `before` tells of the time until the plan
        build,    ///< a week like any other
        recovery, ///< at most 80 % of the highest so far, and a higher one comes
        taper     ///< eased before the race, as the rule of that name has it
    };
    Kind kind = Kind::build;
    std::string label;              ///< "week 3", safe to print
    Distance longest;               ///< the longest qualifying rep before race day, 0 without one
    std::optional<Distance> volume; ///< of the sessions before race day; unknown of the time before
};

struct Chart {
    std::vector<std::string> title; ///< the plan's name, lane or swimmer; safe to print
    std::vector<ChartWeek> weeks;   ///< those with a session before race day, in order
    std::optional<plan::Race> race;
    Unit unit = Unit::metre;
    Distance length; ///< of the pool that is named first, 0 without one
};

struct ChartOptions {
    std::optional<int> lane{};              ///< nothing: the lowest
    plan::Swimmer const* swimmer = nullptr; ///< who is shown; `plan` is then what he swims
};

[[nodiscard]] Chart chart_view(plan::Plan const& plan, ChartOptions const& options);

/// "recovery", "taper"; nothing for other weeks.
[[nodiscard]] std::string word_of(ChartWeek::Kind kind);

/// The least of 1, 2, 4, 5, 10, 20, 40, 50, 100 … times `unit` of which at most `room` make `most`.
[[nodiscard]] Distance mark_for(Distance most, Distance unit, std::int64_t room);

} // namespace lengthwise::report
