#pragma once

#include "compose/page.hpp"
#include "compose/ramp.hpp"
#include "compose/request.hpp"

#include <vector>

/// From a ramp to sessions a coach would hand out. docs/compose.md has the rules.
namespace lengthwise::compose {

/// The weeks that have a session. Each session's laps are those of its day, to the lap.
[[nodiscard]] std::vector<Week> sessions_of(Request const& request, Ramp const& ramp);

/// At most so many notes are read at the pool side.
inline constexpr std::size_t most_notes = 4;

/// Notes in a session, above lines and behind them.
[[nodiscard]] std::size_t notes_in(Session const& session);

} // namespace lengthwise::compose
