#pragma once

#include "calc/totals.hpp"
#include "plan/plan.hpp"
#include "report/late_text.hpp"
#include "report/line_speller.hpp"
#include "report/paint.hpp"
#include "report/table.hpp"
#include "tailor/late.hpp"

#include <cstddef>
#include <string>
#include <vector>

/// The rows that stay of a late session, with the times at which each lane begins them.
namespace lengthwise::report {

/// Lanes that swim the same at the same times, by their places in Late::lanes.
using LateLanes = std::vector<std::size_t>;

[[nodiscard]] std::vector<LateLanes> late_columns(tailor::Late const& late);

/// "lane 2", "lanes 1, 2"; nothing where the session has no lane lines.
[[nodiscard]] std::string late_label(tailor::Late const& late, LateLanes const& places, bool ascii);

/// To the second, late rather than early.
[[nodiscard]] std::string late_second(Duration time);

/// As many lanes side by side as there is room for, the others below.
class LateTables {
  public:
    LateTables(plan::Plan const& plan, plan::Session const& session, tailor::Late const& late,
               std::vector<LateLanes> const& columns, LateStyle const& style)
        : plan_(plan), session_(session), late_(late), columns_(columns), style_(style), reckoner_(plan),
          speller_(plan, session) {}

    /// Each table behind an empty line.
    [[nodiscard]] std::string text(Paint const& paint);

  private:
    [[nodiscard]] std::size_t set_room(std::vector<LateLanes> const& shown);
    [[nodiscard]] Table table(std::vector<LateLanes> const& shown, std::size_t room);
    void add(Table& table, tailor::LateLine const& line, std::vector<LateLanes> const& shown,
             std::size_t room);
    [[nodiscard]] std::string lengths(plan::Item const& item);
    [[nodiscard]] std::string label(LateLanes const& places) const {
        return late_label(late_, places, style_.ascii);
    }

    plan::Plan const& plan_;
    plan::Session const& session_;
    tailor::Late const& late_;
    std::vector<LateLanes> const& columns_;
    LateStyle const& style_;
    calc::Reckoner reckoner_;
    LineSpeller speller_;
};

} // namespace lengthwise::report
