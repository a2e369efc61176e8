#pragma once

#include "compose/drill_book.hpp"
#include "compose/place.hpp"

/// The part of a session that is for the stroke. Common practice, no published source.
namespace lengthwise::compose {

/// `count` laps, half of each the drill and half crawl, which keeps what it found. With a drill at the
/// wall crawl comes first, so that the wall lies between.
[[nodiscard]] Line drill_line(int count, std::string_view drill);

/// What stands behind plain swimming among drills.
inline constexpr std::string_view same_feeling = "no drill, same feeling";

/// `laps` is 1 or more.
[[nodiscard]] Section drill_section(Place const& place, Laps laps, WeekDrills const& drills, DrillBook& book);

} // namespace lengthwise::compose
