#include "cards/strip.hpp"

#include "units/spell.hpp"

#include <algorithm>
#include <array>
#include <limits>

namespace lengthwise::cards {
namespace {

constexpr std::int64_t most_cells = 40;
constexpr double least_width = 7;
constexpr double least_height = 6.9;
constexpr double number_air = 1.8;
constexpr std::array<std::size_t, 9> widths{4, 5, 6, 8, 10, 12, 15, 16, 20};

/// Small capitals.
constexpr double usual_height = 2.1;
constexpr double greatest_height = 2.9;

std::string swum(std::int64_t lengths, Pool const& pool) {
    return spell::distance(pool.length * lengths, pool.unit);
}

std::vector<std::string> row_ends(report::CardStrip const& strip, std::int64_t step, std::size_t columns) {
    std::vector<std::string> ends;
    auto const row = step * static_cast<std::int64_t>(columns);
    for (auto at = row;; at += row) {
        ends.push_back(swum(std::min(at, strip.lengths), strip.pool));
        if (at >= strip.lengths) {
            return ends;
        }
    }
}

/// The less, the easier to read off: rows of whole hundreds, few empty cells, few rows.
double cost(report::CardStrip const& strip, std::int64_t step, std::size_t columns, std::size_t cells) {
    auto const row = strip.pool.length * (step * static_cast<std::int64_t>(columns));
    auto const unit = one(strip.pool.unit);
    auto const rows = (cells + columns - 1) / columns;
    auto const room = static_cast<double>(rows * columns);
    double const odd = rows == 1 || Distance::divides(unit * 100, row) ? 0
                       : Distance::divides(unit * 50, row)             ? 0.4
                                                                       : 2;
    return odd + (room - static_cast<double>(cells)) / room + 0.35 * static_cast<double>(rows);
}

} // namespace

Strip strip_of(report::CardStrip const& rep, Setting const& setting, Measure& measure) {
    auto const em = setting.scale.small_em();
    auto const small = setting.scale.small();
    Strip strip;
    while ((rep.lengths + strip.step - 1) / strip.step > most_cells) {
        strip.step *= 2;
    }
    for (std::int64_t at = strip.step;; at += strip.step) {
        strip.cells.push_back(std::to_string(std::min(at, rep.lengths)));
        if (at >= rep.lengths) {
            break;
        }
    }
    auto const number = measure.width(strip.cells.back(), Weight::medium) * em;
    auto const least = std::max(number + number_air, least_width);
    auto best = std::numeric_limits<double>::max();
    for (auto const columns : widths) {
        auto ends = row_ends(rep, strip.step, columns);
        double widest = 0;
        for (auto const& end : ends) {
            widest = std::max(widest, measure.width(end, Weight::semibold) * em);
        }
        auto const room = setting.right() - safe_edge - widest - 0.45 * em;
        auto const wide = room / static_cast<double>(columns);
        auto const price = cost(rep, strip.step, columns, strip.cells.size());
        if (wide >= least && price < best) {
            best = price;
            strip.columns = columns;
            strip.cell_width = wide;
            strip.row_ends = std::move(ends);
            strip.row = rep.pool.length * (strip.step * static_cast<std::int64_t>(columns));
        }
    }
    if (setting.level.strip_label) {
        strip.label = swum(rep.lengths, rep.pool) + (rep.lengths > 2 ? ": tick each touch at the start" : "");
        if (strip.step > 2) {
            strip.label =
                swum(rep.lengths, rep.pool) + ": tick every " + std::to_string(strip.step) + " lengths";
        }
        if (measure.width(strip.label, Weight::medium) * em > setting.right() - safe_edge) {
            strip.label.clear();
        }
        strip.label_height = strip.label.empty() ? 0 : (rise_of_em + fall_of_em) * em + 0.25 * small;
    }
    strip.cell_height = std::max(usual_height * small, least_height);
    strip.most_height = std::max(greatest_height * small, strip.cell_height);
    return strip;
}

void draw(Strip const& strip, double y, Setting const& setting, Measure& measure, std::vector<Mark>& marks) {
    auto const em = setting.scale.small_em();
    auto const text = [&](double x, double at, std::string const& words, Weight weight, Anchor anchor) {
        marks.emplace_back(Text{{x, at}, words, em, weight, anchor, measure.width(words, weight) * em});
    };
    if (!strip.label.empty()) {
        text(safe_edge, y + rise_of_em * em, strip.label, Weight::medium, Anchor::left);
        y += strip.label_height;
    }
    auto const rows = strip.row_ends.size();
    auto const cell = [&](std::size_t i) { return safe_edge + strip.cell_width * static_cast<double>(i); };
    auto const line = [&](Point from, Point to) { marks.emplace_back(Line{from, to, hair_rule}); };
    for (std::size_t row = 0; row < rows; ++row) {
        auto const first = row * strip.columns;
        auto const filled = std::min(strip.columns, strip.cells.size() - first);
        auto const top = y + strip.cell_height * static_cast<double>(row);
        auto const bottom = top + strip.cell_height;
        auto const base = (top + bottom + setting.scale.small()) / 2;
        if (row == 0) {
            line({safe_edge, top}, {cell(filled), top});
        }
        line({safe_edge, bottom}, {cell(filled), bottom});
        for (std::size_t i = 0; i <= filled; ++i) {
            line({cell(i), top}, {cell(i), bottom});
        }
        for (std::size_t i = 0; i < filled; ++i) {
            auto const& words = strip.cells[first + i];
            auto const wide = measure.width(words, Weight::medium) * em;
            text((cell(i) + cell(i + 1) - wide) / 2, base, words, Weight::medium, Anchor::left);
        }
        text(setting.right(), base, strip.row_ends[row], Weight::semibold, Anchor::right);
    }
}

} // namespace lengthwise::cards
