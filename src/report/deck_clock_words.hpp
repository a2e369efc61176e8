#pragma once

#include "report/deck_view.hpp"
#include "units/duration.hpp"

#include <string>
#include <vector>

/// A deck's times in words.
namespace lengthwise::report {

/// A moment so long after the first start, as the clock on the wall shows it ("07:05", seconds cut off, past
/// midnight from 00:00 again), or counted from 0:00 ("5:10") where it is not known when the session begins.
[[nodiscard]] std::string moment(DeckClock const& clock, Duration after);

/// When all is over, rounded half up as `tally` rounds what it takes: the two agree.
[[nodiscard]] std::string end_moment(DeckClock const& clock, Duration after);

/// What stands over them: "clock", or "after".
[[nodiscard]] std::string moments_head(DeckClock const& clock);

/// What stands below the table: whose pace the clock goes by, when each lane ends, or why there is no clock.
/// Ends are rounded outward to minutes.
[[nodiscard]] std::string clock_pace(Deck const& deck, bool ascii = false);
[[nodiscard]] std::vector<std::string> clock_notes(Deck const& deck, bool ascii = false);

} // namespace lengthwise::report
