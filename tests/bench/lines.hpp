#pragma once

#include "random.hpp"
#include "twin.hpp"

#include <string_view>

/// One invented line of a session at a time; `lap` is the session's pool in metres.
namespace lengthwise::bench {

inline constexpr std::string_view ladder_set = "Harbour ladder";
inline constexpr int ladder_set_metres = 400;
inline constexpr std::string_view turns_set = "Turns";
inline constexpr int turns_set_metres = 300;

void define_sets(Twin& out);

void warm_up_line(Twin& out, Random& random, int lap);
void drill_line(Twin& out, Random& random, int lap);
void main_line(Twin& out, Random& random, int lap);
void cool_down_line(Twin& out, Random& random, int lap);

/// A block of alternatives, one line a lane.
void two_lanes(Twin& out, Random& random, int lap);
void optional_sprints(Twin& out, Random& random, int lap);
void wait(Twin& out, Random& random);

} // namespace lengthwise::bench
