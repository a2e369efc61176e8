#pragma once

#include "calc/totals.hpp"
#include "plan/plan.hpp"
#include "report/paint.hpp"
#include "report/summary.hpp"
#include "report/table.hpp"
#include "report/tally_text.hpp"

#include <string>
#include <string_view>
#include <vector>

/// What the screens of `tally` have in common. Each is a title, an empty line, a table
/// and, below another empty line, remarks.
namespace lengthwise::report {

/// What a screen is made with.
struct Screen {
    Summary& summary;
    TallyOptions const& options;
    Paint const& paint;

    [[nodiscard]] plan::Plan const& plan() const { return summary.plan(); }
    [[nodiscard]] bool ascii() const { return options.ascii; }
};

[[nodiscard]] std::string session_screen(Screen const& screen, plan::Index session);
[[nodiscard]] std::string week_screen(Screen const& screen, plan::Index week);
[[nodiscard]] std::string plan_screen(Screen const& screen);
[[nodiscard]] std::string by_screen(Screen const& screen, std::string_view title, bool one_session);
[[nodiscard]] std::string swimmers_screen(Screen const& screen, std::string_view title);

/// "Two lanes · Thu 6 May 2027, 07:00 · pool 25 m", folded; empty parts are left out. The swimmer who was
/// asked for stands behind the first part.
[[nodiscard]] std::string title(Screen const& screen, std::vector<std::string> parts);
/// Remarks below a table: an empty line, then they, joined and folded; nothing for none.
[[nodiscard]] std::string remarks(Screen const& screen, std::vector<std::string> const& sentences);

/// The plan's name, safe to print; "plan" without one.
[[nodiscard]] std::string plan_label(plan::Plan const& plan);
/// The lanes that a tally is shown for: those it names, else lane 0.
[[nodiscard]] std::vector<int> lanes_shown(Tally const& tally);
/// "lane 1" where lanes may differ, else nothing.
[[nodiscard]] std::string lane_part(Tally const& tally);
/// "750 m", in the race's own unit.
[[nodiscard]] std::string race_part(Screen const& screen, plan::Race const& race);

/// Figures for a table; 0 is `-`: there is none.
[[nodiscard]] Cell distance_cell(Distance distance, Unit unit, bool ascii);
[[nodiscard]] Cell count_cell(std::int64_t count);
[[nodiscard]] Cell clock_cell(Duration time);
/// "~150", "?" where it is not known.
[[nodiscard]] Cell estimate_cell(Figures const& figures, Unit unit, bool ascii);
/// "36–42" minutes, "?" where they are not known.
[[nodiscard]] Cell band_cell(Figures const& figures, bool ascii);
/// `+4` for what is swum if there is time; nothing for 0.
[[nodiscard]] Cell extra(Cell const& cell);

/// Which columns a table of totals has beside the distance.
struct Shown {
    Unit unit = Unit::metre;
    bool lengths = false;
    bool longest = false;
    bool timed = false;
    bool estimated = false; ///< how far timed reps go
    bool time = false;      ///< `min`, as bands; else it is for the caller to add
};
/// True where a table would show the same.
[[nodiscard]] bool same(Figures const& a, Figures const& b);
/// What a tally fills of the columns, without `min`.
[[nodiscard]] Shown shown_of(Tally const& tally, Unit unit, bool longest);
[[nodiscard]] std::vector<Column> columns(Shown const& shown);
void append_cells(std::vector<Cell>& row, Figures const& figures, Shown const& shown, bool ascii);
void append_extra_cells(std::vector<Cell>& row, Figures const& figures, Shown const& shown, bool ascii);

/// "42 lengths are of 33⅓ m": those that are not of the usual pool.
[[nodiscard]] std::vector<std::string> pool_remarks(Screen const& screen, int lane);

} // namespace lengthwise::report
