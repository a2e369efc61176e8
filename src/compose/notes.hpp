#pragma once

#include "compose/page.hpp"
#include "compose/place.hpp"

/// What is said to swimmers beside the lines.
namespace lengthwise::compose {

struct Occasion {
    Place const& place;
    bool first = false;      ///< the plan's first session
    bool open_water = false; ///< the race may be swum there
    bool looking = false;    ///< the first build week that practises looking ahead
};

/// Adds what the occasion asks for, and leaves out the least important where that makes too many.
/// Open water is no session of a plan: its water and weather are unknown here.
void add_notes(Session& session, Occasion const& occasion);

} // namespace lengthwise::compose
