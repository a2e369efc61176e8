#pragma once

#include "plan/plan.hpp"
#include "report/tally_parts.hpp"

#include <optional>
#include <string>
#include <vector>

/// What the screens of `tally` say about times below their tables, and above lanes.
namespace lengthwise::report {

/// Expected minutes of rows, which add up to those of their total where it is known. Where it is not,
/// nothing, unless most rows are known; then the others are "?".
struct Minutes {
    std::vector<Cell> rows;
    Cell total;
};
[[nodiscard]] Minutes minutes_of(std::vector<std::optional<Band<Duration>>> const& rows,
                                 std::optional<Band<Duration>> const& total);

/// "38", "?".
[[nodiscard]] Cell minutes_cell(std::optional<Band<Duration>> const& time);

/// "1:55 per 100 m"; nothing without a pace.
[[nodiscard]] std::string lane_pace(Screen const& screen, plan::Index session, int lane);

/// "lane 1, 1:55 per 100 m", "lane 1" without a pace.
[[nodiscard]] std::string lanes_head(Screen const& screen, plan::Index session, calc::LaneSet const& lanes);

/// For a session whose lines have no lanes: whether it fits, a line for each pace at which it may be swum,
/// "lane 1  35–41 of 45 min at 1:55 per 100 m"; an empty line before them. Nothing without a time.
[[nodiscard]] std::string answers(Screen const& screen, plan::Index session);

/// "timed reps are not in the metres", or yards: what the column of distances leaves out.
[[nodiscard]] std::string timed_apart(Unit unit);

/// That, where it is shown how far they go, and "35, 20, 10 m of reserve assumed", where that decides
/// a time of these lanes.
[[nodiscard]] std::vector<std::string> time_remarks(Tally const& tally, Unit unit);

/// Why no time is known, and the question turned round: at which threshold the sessions would fit their
/// slots. An empty line before it; nothing where all is known.
[[nodiscard]] std::string unknown_time(Screen const& screen, plan::Run sessions, Tally const& tally);

/// The pace of a lane, where all sessions of the scope have the same: "1:55 per 100 m".
[[nodiscard]] std::string common_pace(Screen const& screen, int lane);

} // namespace lengthwise::report
