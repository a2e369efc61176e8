#pragma once

#include "plan/plan.hpp"
#include "support/slow_pace.hpp"

#include <cstdint>
#include <map>
#include <optional>
#include <vector>

/// A session timed by walking it rep by rep, start after start: every rest and send-off where it
/// comes. Without a look at src/calc, to hold the closed forms against.
namespace lengthwise::support {

struct WatchedSection {
    Three time{};
    Three swimming{};
    std::int64_t estimated = 0;
    bool known = true;
    bool measured = true;
};

struct WatchedLine {
    plan::Index item = 0;
    std::optional<Three> start;
    std::optional<Three> end;
};

struct WatchedRep {
    plan::Index line = 0;
    plan::Index item = 0;
    std::uint32_t number = 1;
    std::vector<std::uint32_t> rounds; ///< of each group around it, the outermost first
    plan::Terms const* terms = nullptr;
    std::int64_t amount = 0;
    bool timed = false;
    Three start{}; ///< of use where times are known
    Three swim{};
};

struct Watched {
    std::vector<WatchedRep> reps;         ///< all, one after the other
    std::vector<WatchedSection> sections; ///< of the session, in order
    std::vector<WatchedLine> lines;       ///< swum ones, in order
};

/// With `optional`, of the `if time` lines alone.
[[nodiscard]] Watched watch(plan::Plan const& plan, plan::Session const& session, int lane, bool optional);

} // namespace lengthwise::support
