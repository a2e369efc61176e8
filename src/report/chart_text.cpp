#include "report/chart_text.hpp"

#include "report/table.hpp"
#include "report/width.hpp"
#include "units/spell.hpp"

#include <fmt/core.h>

#include <algorithm>

namespace lengthwise::report {
namespace {

constexpr std::size_t side_by_side = 60;
constexpr std::size_t least_room = 8;

/// Marks for a distance: half up, but one at least for what is not nothing.
std::size_t marks(Distance distance, Distance mark) {
    auto const half_up = Distance::whole(distance * 2 + mark, mark * 2);
    return static_cast<std::size_t>(std::max<std::int64_t>(half_up, distance.zero() ? 0 : 1));
}

std::string repeated(std::string_view mark, std::size_t times) {
    std::string text;
    for (; times > 0; --times) {
        text += mark;
    }
    return text;
}

class ChartScreen {
  public:
    ChartScreen(Chart const& chart, ChartStyle const& style)
        : chart_(chart), style_(style), block_(style.ascii ? "#" : "█"), wall_(style.ascii ? "|" : "▏"),
          words_(std::ranges::any_of(chart.weeks,
                                     [](auto const& week) { return !word_of(week.kind).empty(); })) {
        for (auto const& week : chart.weeks) {
            label_ = std::max(label_, cells(week.label));
            rep_.most = std::max(rep_.most, week.longest);
            week_.most = std::max(week_.most, week.volume.value_or(Distance{}));
            rep_.figure = std::max(rep_.figure, cells(figure(week.longest)));
            week_.figure = std::max(week_.figure, cells(figure(week.volume.value_or(Distance{}))));
        }
        if (chart.race) {
            rep_.most = std::max(rep_.most, chart.race->distance);
        }
    }

    [[nodiscard]] std::string text(Paint const& paint) {
        if (style_.width >= side_by_side) {
            choose_marks_of_both();
            auto const table = both();
            if (table.width() <= style_.width) {
                return table.text(paint);
            }
        }
        choose_marks_of_each();
        return reps().text(paint) + '\n' + weeks().text(paint);
    }

  private:
    /// One half: how far its bars go, and what one mark of them stands for.
    struct Half {
        Distance most;
        Distance mark;
        std::size_t figure = 0; ///< cells of the widest
        [[nodiscard]] std::size_t longest_bar() const { return marks(most, mark); }
    };

    [[nodiscard]] std::string figure(Distance distance) const {
        return distance.zero() ? "-" : spell::number(distance, chart_.unit, style_.ascii);
    }

    /// Cells of a row that are no marks: those of the longest rep, and those of the week.
    [[nodiscard]] std::size_t beside_reps() const {
        return label_ + 2 + (chart_.race ? 1 : 0) + 1 + rep_.figure;
    }
    [[nodiscard]] std::size_t beside_weeks() const {
        return 1 + week_.figure + (words_ ? 2 + cells("recovery") : 0);
    }

    [[nodiscard]] std::int64_t left_beside(std::size_t taken) const {
        return static_cast<std::int64_t>(std::max(style_.width, taken + least_room) - taken);
    }
    [[nodiscard]] Distance rep_unit() const {
        return chart_.length.zero() ? one(chart_.unit) * 25 : chart_.length;
    }
    [[nodiscard]] Distance week_unit() const { return one(chart_.unit) * 25; }

    void choose_marks_of_both() {
        auto const taken = beside_reps() + 2 + beside_weeks();
        rep_.mark = mark_for(rep_.most, rep_unit(),
                             std::max<std::int64_t>(left_beside(taken) / 2, std::int64_t{least_room}));
        auto const bars = std::max(rep_.longest_bar() + beside_reps() - label_ - 2, cells(rep_head()));
        week_.mark = mark_for(week_.most, week_unit(), left_beside(label_ + 2 + bars + 2 + beside_weeks()));
    }
    void choose_marks_of_each() {
        rep_.mark = mark_for(rep_.most, rep_unit(), left_beside(beside_reps()));
        week_.mark = mark_for(week_.most, week_unit(), left_beside(label_ + 2 + beside_weeks()));
    }

    // --- rows ---------------------------------------------------------------------

    /// The wall stands where the race is; a bar comes up to it only where the race is met, however marks
    /// round.
    [[nodiscard]] std::string rep_bar(Distance longest) const {
        auto bar = marks(longest, rep_.mark);
        if (!chart_.race) {
            return fmt::format("{} {}", repeated(block_, bar), figure(longest));
        }
        auto const race = static_cast<std::size_t>(Distance::ceiling(chart_.race->distance, rep_.mark));
        bar = longest < chart_.race->distance ? std::min(bar, race - 1) : std::max(bar, race);
        return fmt::format("{}{}{}{} {}", repeated(block_, std::min(bar, race)),
                           std::string(race - std::min(bar, race), ' '), wall_,
                           repeated(block_, bar - std::min(bar, race)), figure(longest));
    }

    [[nodiscard]] std::string week_bar(std::optional<Distance> volume) const {
        return volume ? fmt::format("{} {}", repeated(block_, marks(*volume, week_.mark)), figure(*volume))
                      : std::string{};
    }

    [[nodiscard]] std::string rep_head() const {
        auto head = fmt::format("longest rep, {}", spell::symbol(chart_.unit));
        if (!chart_.race) {
            return head;
        }
        auto const& race = *chart_.race;
        auto const distance = race.unit == chart_.unit
                                  ? spell::number(race.distance, race.unit, style_.ascii)
                                  : spell::distance(race.distance, race.unit, style_.ascii);
        auto const label = fmt::format("race {}", distance);
        auto const wall =
            rep_.mark.zero() ? 0 : static_cast<std::size_t>(Distance::ceiling(race.distance, rep_.mark));
        auto const bar = wall + 2 + rep_.figure; // cells of the whole column
        auto const start =
            std::min(wall - std::min(wall, cells(label) / 2), bar - std::min(bar, cells(label)));
        return pad_right(head, std::max(cells(head) + 2, start)) + label;
    }

    [[nodiscard]] std::string week_head() const {
        return fmt::format("week, {}", spell::symbol(chart_.unit));
    }

    /// "█ = 25 m, one length"
    [[nodiscard]] std::string key(Half const& half) const {
        auto text = fmt::format("{} = {}", block_, spell::distance(half.mark, chart_.unit, style_.ascii));
        if (&half == &rep_ && !chart_.length.zero()) {
            auto const lengths = Distance::whole(half.mark, chart_.length);
            text += lengths == 1 ? ", one length" : fmt::format(", {} lengths", lengths);
        }
        return text;
    }

    // --- tables -------------------------------------------------------------------

    [[nodiscard]] Table both() const {
        Table table{{{.figures = false},
                     {.head = rep_head(), .figures = false},
                     {.head = week_head(), .figures = false},
                     {.figures = false}}};
        for (auto const& week : chart_.weeks) {
            table.row({{.text = week.label},
                       {.text = rep_bar(week.longest)},
                       {.text = week_bar(week.volume)},
                       {.text = word_of(week.kind)}});
        }
        table.gap();
        table.row({{}, {.text = key(rep_)}, {.text = key(week_)}});
        return table;
    }

    [[nodiscard]] Table reps() const {
        Table table{{{.figures = false}, {.head = rep_head(), .figures = false}}};
        for (auto const& week : chart_.weeks) {
            table.row({{.text = week.label}, {.text = rep_bar(week.longest)}});
        }
        table.gap();
        table.row({{}, {.text = key(rep_)}});
        return table;
    }

    [[nodiscard]] Table weeks() const {
        Table table{{{.figures = false}, {.head = week_head(), .figures = false}, {.figures = false}}};
        for (auto const& week : chart_.weeks) {
            table.row({{.text = week.label}, {.text = week_bar(week.volume)}, {.text = word_of(week.kind)}});
        }
        table.gap();
        table.row({{}, {.text = key(week_)}});
        return table;
    }

    Chart const& chart_;
    ChartStyle style_;
    std::string_view block_;
    std::string_view wall_;
    bool words_;
    std::size_t label_ = 0;
    Half rep_;
    Half week_;
};

} // namespace

std::string chart_text(Chart const& chart, ChartStyle const& style, Paint const& paint) {
    auto const title = fold_parts(chart.title, style.ascii ? ", " : " · ", style.width);
    auto text = paint(Ink::bold, title) + "\n\n";
    if (chart.weeks.empty()) {
        return text + "no session, so nothing to draw\n";
    }
    return text + ChartScreen{chart, style}.text(paint);
}

} // namespace lengthwise::report
