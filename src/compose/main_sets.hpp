#pragma once

#include "compose/place.hpp"

#include <cstdint>
#include <optional>
#include <string_view>
#include <vector>

/// The sets that a day of pace and technique turns on. Common practice, no published source.
namespace lengthwise::compose {

enum class Set : std::uint8_t {
    build,
    rounds,
    alternate,
    ladder,
    pieces,
    pull,
    descend,
    start,
    change,
    threshold,
    negative,
    sight,
    count,
    race
};

/// As a session is called after it.
[[nodiscard]] std::string_view title_of(Set set);

/// From which stage it is for a swimmer.
[[nodiscard]] int first_stage(Set set);

/// The set with exactly `laps` laps, one line or (in pieces) two, when it is swum for the `visit`-th time,
/// from 1; nothing where it cannot be written well: no rep over the week's longest, counts and sizes that are
/// round, no more hard laps than the session may have.
[[nodiscard]] std::optional<std::vector<Line>> lines_of(Set set, Laps laps, Place const& place, int visit);

} // namespace lengthwise::compose
