#pragma once

#include "calc/totals.hpp"
#include "plan/plan.hpp"
#include "units/date.hpp"

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

/// `--week`, `--session` and `--lane`: the same everywhere.
namespace lengthwise::report {

/// What is asked for.
struct Wish {
    std::optional<std::uint32_t> week;
    std::optional<std::string> session; ///< a day, a date, a name, or a place in the list: 1, 2, …
    std::optional<int> lane;
    std::optional<std::string> swimmer{}; ///< a name; report/choose_swimmer.hpp
};

/// What a screen is about.
struct Scope {
    enum class Kind : std::uint8_t { plan, week, session };
    Kind kind = Kind::plan;
    plan::Index index = 0; ///< of Plan::weeks or Plan::sessions
};

/// The scope, or why there is none: `problem` is then a sentence and, where several
/// fit, a list of them below it. It ends without a line feed, and ends the command with 2.
struct Picked {
    Scope scope;
    std::string problem;

    [[nodiscard]] bool found() const { return problem.empty(); }
};

/// The whole plan when nothing is asked. A lane that the plan does not name is a problem.
[[nodiscard]] Picked pick_scope(plan::Plan const& plan, Wish const& wish, bool ascii = false);

/// One session: the one asked for; else the only one; else the one of `today`.
[[nodiscard]] Picked pick_session(plan::Plan const& plan, Wish const& wish, std::optional<Date> today,
                                  bool ascii = false);

/// All sessions that fit the wish, in the plan's order.
[[nodiscard]] std::vector<plan::Index> sessions_like(plan::Plan const& plan, Wish const& wish);

/// "Long hall", safe to print; without a name its day and time, "Tue 07:00"; else "session 3".
[[nodiscard]] std::string session_label(plan::Plan const& plan, plan::Index session);

/// "Tue", as written or worked out; nothing without a day.
[[nodiscard]] std::string day_label(plan::Session const& session);

/// "week 3", or "no week" for the sessions before any.
[[nodiscard]] std::string week_label(plan::Week const& week);

/// "lane 2", "lanes 1, 2", "lanes 1–3, 5".
[[nodiscard]] std::string lanes_label(calc::LaneSet const& lanes, bool ascii = false);

} // namespace lengthwise::report
