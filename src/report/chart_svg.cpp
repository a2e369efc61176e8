#include "report/chart_svg.hpp"

#include "report/markup.hpp"
#include "report/width.hpp"
#include "units/spell.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <iterator>
#include <utility>

namespace lengthwise::report {
namespace {

// All lengths are in the picture's own units, of which a letter is 13 high.
constexpr double left = 64;
constexpr double right = 24;
constexpr double race_room = 108;  // right of the weeks, for the name of the race's line
constexpr double head = 48;        // above each panel, for its name and the topmost figure
constexpr double rep_height = 170; // of a panel
constexpr double week_height = 130;
constexpr double foot = 30; // below each panel, for the weeks' names
constexpr double legend = 28;
constexpr double usual_slot = 54; // a week's share of the width
constexpr double narrow_slot = 10;
constexpr double widest = 1200; // of the weeks; beyond, they become narrower
constexpr double label_room = 48;

std::string spelled(Distance distance, Unit unit) {
    return distance.zero() ? "-" : spell::number(distance, unit);
}

/// One panel: where it lies, and how high a distance stands in it.
struct Panel {
    double top = 0;
    double height = 0;
    Distance step; ///< between two lines of its grid
    int steps = 0;

    [[nodiscard]] double bottom() const { return top + height; }
    [[nodiscard]] double y(Distance distance) const {
        return bottom() -
               height * static_cast<double>(distance.units()) / static_cast<double>((step * steps).units());
    }
};

Panel panel(double top, double height, Distance most, Unit unit) {
    constexpr int lines = 4;
    auto const step = mark_for(most, one(unit) * 25, lines);
    return {top, height, step, static_cast<int>(std::max<std::int64_t>(Distance::ceiling(most, step), 1))};
}

class Picture {
  public:
    explicit Picture(Chart const& chart)
        : chart_(chart),
          slot_(std::clamp(widest / static_cast<double>(std::max<std::size_t>(chart.weeks.size(), 1)),
                           narrow_slot, usual_slot)),
          every_(static_cast<std::size_t>((label_room + slot_ - 1) / slot_)) {
        Distance rep;
        Distance week;
        for (auto const& each : chart.weeks) {
            rep = std::max(rep, each.longest);
            week = std::max(week, each.volume.value_or(Distance{}));
        }
        rep = chart.race ? std::max(rep, chart.race->distance) : rep;
        reps_ = panel(head, rep_height, rep, chart.unit);
        weeks_ = panel(reps_.bottom() + foot + head, week_height, week, chart.unit);
    }

    [[nodiscard]] std::string text(ChartGround ground) {
        open(ground);
        grid(reps_, fmt::format("longest rep, {}", spell::symbol(chart_.unit)));
        race();
        climb();
        grid(weeks_, fmt::format("week, {}", spell::symbol(chart_.unit)));
        bars();
        kinds();
        out("</svg>\n");
        return std::move(text_);
    }

  private:
    template <typename... Values>
    void out(fmt::format_string<Values...> format, Values&&... values) {
        fmt::format_to(std::back_inserter(text_), format, std::forward<Values>(values)...);
    }

    [[nodiscard]] double beside() const { return chart_.race ? race_room : right; }
    [[nodiscard]] double width() const {
        return std::max(left + slot_ * static_cast<double>(chart_.weeks.size()) + beside(), 420.0);
    }
    [[nodiscard]] double height() const { return weeks_.bottom() + foot + legend; }
    [[nodiscard]] double middle(std::size_t week) const {
        return left + slot_ * (static_cast<double>(week) + 0.5);
    }
    /// Weeks whose figures are written: all of them, or as many as have room.
    [[nodiscard]] bool labelled(std::size_t week) const { return week % every_ == 0; }

    void open(ChartGround ground) {
        out("<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 {0:.0f} {1:.0f}\" width=\"{0:.0f}\" "
            "height=\"{1:.0f}\" role=\"img\" aria-labelledby=\"chart-title chart-text\" "
            "font-family=\"sans-serif\" font-size=\"13\" fill=\"currentColor\" stroke=\"none\"{2}>\n",
            width(), height(), ground == ChartGround::white ? " color=\"#000\"" : "");
        out("<title id=\"chart-title\">{}</title>\n", markup(title()));
        out("<desc id=\"chart-text\">{}</desc>\n", markup(description()));
        out("<defs><pattern id=\"chart-hatch\" width=\"6\" height=\"6\" patternUnits=\"userSpaceOnUse\" "
            "patternTransform=\"rotate(45)\"><rect width=\"2\" height=\"6\"/></pattern></defs>\n");
        if (ground == ChartGround::white) {
            out("<rect width=\"100%\" height=\"100%\" fill=\"#fff\"/>\n");
        }
    }

    [[nodiscard]] std::string title() const {
        std::string title;
        for (auto const& part : chart_.title) {
            title += (title.empty() ? "" : ", ") + part;
        }
        return title + ": longest rep and volume, week by week";
    }

    [[nodiscard]] std::string description() const {
        auto text = fmt::format("In {}. ", spell::symbol(chart_.unit));
        for (auto const& week : chart_.weeks) {
            text += fmt::format("{}: longest rep {}", week.label, spelled(week.longest, chart_.unit));
            text += week.volume ? fmt::format(", volume {}", spelled(*week.volume, chart_.unit)) : "";
            auto const word = word_of(week.kind);
            text += word.empty() ? "; " : fmt::format(", {}; ", word);
        }
        return chart_.race ? text + fmt::format("race: {}.", race_distance()) : text;
    }

    [[nodiscard]] std::string race_distance() const {
        return spell::distance(chart_.race->distance, chart_.race->unit);
    }

    /// A panel's name, its scale, and the weeks below it. No lines across: every dot and bar has its figure.
    void grid(Panel const& panel, std::string_view name) {
        out("<text x=\"{:.1f}\" y=\"{:.1f}\" font-weight=\"bold\">{}</text>\n", 12.0, panel.top - 30, name);
        out("<path d=\"M{:.1f} {:.1f}H{:.1f}\" stroke=\"currentColor\" stroke-width=\"1.5\"/>\n", left,
            panel.bottom(), width() - beside());
        for (int i = 0; i <= panel.steps; ++i) {
            auto const y = panel.y(panel.step * i);
            out("<path d=\"M{:.1f} {:.1f}H{:.1f}\" stroke=\"currentColor\"/>\n", left - 5, y, left);
            out("<text x=\"{:.1f}\" y=\"{:.1f}\" text-anchor=\"end\">{}</text>\n", left - 9, y + 4.5,
                spell::number(panel.step * i, chart_.unit));
        }
        for (std::size_t i = 0; i < chart_.weeks.size(); ++i) {
            if (labelled(i)) {
                out("<text x=\"{:.1f}\" y=\"{:.1f}\" text-anchor=\"middle\">{}</text>\n", middle(i),
                    panel.bottom() + 18, markup(chart_.weeks[i].label));
            }
        }
    }

    void race() {
        if (!chart_.race) {
            return;
        }
        auto const y = reps_.y(chart_.race->distance);
        auto const end = width() - beside();
        out("<path d=\"{}\" fill=\"none\" stroke=\"currentColor\" stroke-width=\"2.5\" "
            "stroke-dasharray=\"9 5\"/>\n",
            race_line(y, end));
        out("<text x=\"{:.1f}\" y=\"{:.1f}\">race {}</text>\n", end + 6, y + 4.5, markup(race_distance()));
    }

    /// Across the weeks, broken where a figure stands in its way.
    [[nodiscard]] std::string race_line(double y, double end) const {
        std::string path;
        auto from = left;
        auto const draw_to = [&](double x) {
            path += x > from ? fmt::format("M{:.1f} {:.1f}H{:.1f}", from, y, x) : "";
        };
        for (std::size_t i = 0; i < chart_.weeks.size(); ++i) {
            auto const at = figure_of(i);
            if (labelled(i) && y > at.y - 12 && y < at.y + 4) {
                auto const letters = cells(spelled(chart_.weeks[i].longest, chart_.unit));
                auto const half = 2 + 3.5 * static_cast<double>(letters);
                draw_to(at.x - half);
                from = std::max(from, at.x + half);
            }
        }
        draw_to(end);
        return path;
    }

    /// The longest rep: a line from week to week, a dot on each.
    void climb() {
        std::string path;
        for (std::size_t i = 0; i < chart_.weeks.size(); ++i) {
            path += fmt::format("{}{:.1f} {:.1f}", i == 0 ? "M" : "L", middle(i),
                                reps_.y(chart_.weeks[i].longest));
        }
        out("<path d=\"{}\" fill=\"none\" stroke=\"currentColor\" stroke-width=\"1.5\"/>\n", path);
        for (std::size_t i = 0; i < chart_.weeks.size(); ++i) {
            auto const y = reps_.y(chart_.weeks[i].longest);
            out("<circle cx=\"{:.1f}\" cy=\"{:.1f}\" r=\"4\"/>\n", middle(i), y);
            if (labelled(i)) {
                auto const at = figure_of(i);
                figure(at.x, at.y, chart_.weeks[i].longest);
            }
        }
    }

    /// Where a dot's figure stands clear of the lines to its neighbours: its middle, and the line it stands
    /// on.
    struct Point {
        double x = 0;
        double y = 0;
    };
    [[nodiscard]] Point figure_of(std::size_t week) const {
        auto const higher = [&](std::size_t other) {
            return other < chart_.weeks.size() && chart_.weeks[other].longest > chart_.weeks[week].longest;
        };
        bool const falls = week > 0 && higher(week - 1);
        bool const climbs = higher(week + 1);
        auto const x = middle(week);
        auto const y = reps_.y(chart_.weeks[week].longest);
        return falls && climbs ? Point{x, y + 20} : Point{x + (falls ? 14 : climbs ? -10 : 0), y - 9};
    }

    void bars() {
        for (std::size_t i = 0; i < chart_.weeks.size(); ++i) {
            auto const& week = chart_.weeks[i];
            if (!week.volume) {
                continue;
            }
            auto const top = weeks_.y(*week.volume);
            bar(middle(i) - slot_ * 0.3, top, slot_ * 0.6, weeks_.bottom() - top, week.kind);
            if (labelled(i)) {
                figure(middle(i), top - 5, *week.volume);
            }
        }
    }

    /// Kinds differ in their filling: full, hatched, empty, and a dotted edge for the time before.
    void bar(double x, double y, double bar_width, double bar_height, ChartWeek::Kind kind) {
        using Kind = ChartWeek::Kind;
        auto const fill = kind == Kind::build      ? "currentColor"
                          : kind == Kind::recovery ? "url(#chart-hatch)"
                                                   : "none";
        out("<rect x=\"{:.1f}\" y=\"{:.1f}\" width=\"{:.1f}\" height=\"{:.1f}\" fill=\"{}\" "
            "stroke=\"currentColor\" stroke-width=\"1.2\"{}/>\n",
            x, y, bar_width, bar_height, fill, kind == Kind::before ? " stroke-dasharray=\"2 2\"" : "");
    }

    void figure(double x, double y, Distance distance) {
        out("<text x=\"{:.1f}\" y=\"{:.1f}\" text-anchor=\"middle\" font-size=\"12\">{}</text>\n", x, y,
            spelled(distance, chart_.unit));
    }

    /// What the fillings mean, those that are there.
    void kinds() {
        auto x = left;
        for (auto const kind : {ChartWeek::Kind::recovery, ChartWeek::Kind::taper}) {
            if (std::ranges::none_of(chart_.weeks, [kind](auto const& week) { return week.kind == kind; })) {
                continue;
            }
            auto const y = weeks_.bottom() + foot + 4;
            bar(x, y, 14, 12, kind);
            out("<text x=\"{:.1f}\" y=\"{:.1f}\">{}</text>\n", x + 20, y + 11, word_of(kind));
            x += 110;
        }
    }

    Chart const& chart_;
    double slot_;
    std::size_t every_;
    Panel reps_;
    Panel weeks_;
    std::string text_;
};

} // namespace

std::string chart_svg(Chart const& chart, ChartGround ground) {
    return Picture{chart}.text(ground);
}

} // namespace lengthwise::report
