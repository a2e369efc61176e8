#pragma once

#include "calc/timeline.hpp"
#include "calc/totals.hpp"
#include "plan/plan.hpp"
#include "report/summary.hpp"
#include "units/duration.hpp"
#include "units/range.hpp"

#include <cstddef>
#include <cstdint>
#include <optional>
#include <string>
#include <vector>

/// A session as exports give it to other programs: its lines with their figures and times, worked out
/// before anything is written. What it costs goes by the session, not by the plan.
namespace lengthwise::report {

/// Counted from the session's first start; nothing where it is unknown.
struct ViewTimes {
    std::optional<Band<Duration>> start;
    std::optional<Band<Duration>> end;
};

struct ViewLane {
    int lane = 0;     ///< 0: the session has no lane lines
    int timed_as = 0; ///< whose pace it goes by (report/deck_clock.hpp)
    std::optional<plan::Threshold> threshold{};
    Figures swum{};
    Figures if_time{};
    std::optional<Band<Duration>> takes{}; ///< the whole session
};

struct ViewLine {
    enum class Kind : std::uint8_t {
        swum,
        optional, ///< `if time:`: no row number, no times
        pause,
        note
    };
    Kind kind = Kind::note;
    int row = 0;              ///< the number `deck` prints; 0: none
    plan::Index item = 0;     ///< of Plan::items
    std::string set{};        ///< in the notation, labels left out; not safe to print
    calc::Totals totals{};    ///< of whoever swims it
    std::vector<bool> swum{}; ///< by place in SessionView::lanes

    [[nodiscard]] bool swims() const { return kind == Kind::swum || kind == Kind::optional; }
};

struct ViewSection {
    plan::Index section = 0; ///< of Plan::sections
    std::string heading{};   ///< `drill "Body line" easy rest 20s`; safe to print
    std::vector<ViewLine> lines{};
};

struct SessionView {
    plan::Index session = 0;       ///< of Plan::sessions
    std::vector<ViewLane> lanes{}; ///< ascending, at least one
    std::vector<ViewSection> sections{};
    std::vector<std::string> kit{};                    ///< every `with` word in force on a line that is there
    std::vector<std::vector<calc::LineTimes>> lines{}; ///< by place in `lanes`, as calc::Clock gives them

    [[nodiscard]] ViewTimes times(std::size_t place, ViewLine const& line) const;
};

/// Lanes are those of the session, or the one that `summary` was made for; lines that none of them swims
/// are left out.
[[nodiscard]] SessionView session_view(Summary& summary, plan::Index session);

/// The longest that any of its lanes may take; nothing while a lane's time is unknown.
[[nodiscard]] std::optional<Duration> longest_time(SessionView const& view);

} // namespace lengthwise::report
