#include "report/tally_parts.hpp"

#include "report/choose_swimmer.hpp"
#include "report/time_words.hpp"
#include "report/width.hpp"
#include "units/spell.hpp"

#include <algorithm>

namespace lengthwise::report {

std::string title(Screen const& screen, std::vector<std::string> parts) {
    if (screen.options.swimmer != nullptr) {
        parts.insert(parts.begin() + 1, swimmer_label(*screen.options.swimmer));
    }
    return fold_parts(parts, screen.ascii() ? ", " : " · ", screen.options.width) + "\n\n";
}

std::string remarks(Screen const& screen, std::vector<std::string> const& sentences) {
    auto const text = fold_parts(sentences, "; ", screen.options.width, 0);
    return text.empty() ? text : "\n" + text + "\n";
}

std::string plan_label(plan::Plan const& plan) {
    return plan.name.empty() ? "plan" : visible(plan.name);
}

std::vector<int> lanes_shown(Tally const& tally) {
    return tally.lanes().any() ? calc::numbers(tally.lanes()) : std::vector<int>{0};
}

std::string lane_part(Tally const& tally) {
    return tally.has_lane_lines() ? "lane " + std::to_string(tally.lane()) : std::string{};
}

std::string race_part(Screen const& screen, plan::Race const& race) {
    return spell::distance(race.distance, race.unit, screen.ascii());
}

Cell distance_cell(Distance distance, Unit unit, bool ascii) {
    if (distance.zero()) {
        return {"-", {}};
    }
    auto figure = spell::figure(distance, unit, ascii);
    return {std::move(figure.whole), std::move(figure.hang)};
}

Cell count_cell(std::int64_t count) {
    return {count == 0 ? "-" : std::to_string(count), {}};
}

Cell clock_cell(Duration time) {
    return {time.zero() ? "-" : spell::clock(time), {}};
}

Cell estimate_cell(Figures const& figures, Unit unit, bool ascii) {
    if (figures.totals.timed_reps == 0) {
        return {"-", {}};
    }
    auto const goes = figures.estimated();
    if (!goes) {
        return {"?", {}};
    }
    auto cell = distance_cell(*goes, unit, ascii);
    return cell.text == "-" ? cell : Cell{"~" + cell.text, cell.hang};
}

Cell band_cell(Figures const& figures, bool ascii) {
    auto const time = figures.time();
    return {time ? band_minutes(*time, ascii) : "?", {}};
}

Cell extra(Cell const& cell) {
    return cell.text == "-" ? Cell{} : Cell{"+" + cell.text, cell.hang};
}

bool same(Figures const& a, Figures const& b) {
    return a.totals == b.totals && a.time() == b.time() && a.estimated() == b.estimated();
}

Shown shown_of(Tally const& tally, Unit unit, bool longest) {
    Shown shown{unit, tally.has_lengths(), longest};
    for (int const lane : lanes_shown(tally)) {
        for (auto const& figures : {tally.swum(lane), tally.if_time(lane)}) {
            shown.timed = shown.timed || figures.totals.timed_reps > 0;
            shown.estimated = shown.estimated || !figures.times.estimated.zero();
        }
    }
    return shown;
}

std::vector<Column> columns(Shown const& shown) {
    auto const unit = std::string{spell::symbol(shown.unit)};
    std::vector<Column> columns{{unit}};
    if (shown.lengths) {
        columns.push_back({"lengths"});
    }
    if (shown.longest) {
        columns.push_back({"longest " + unit});
    }
    if (shown.timed) {
        columns.push_back({"timed"});
    }
    if (shown.estimated) {
        columns.push_back({"timed " + unit});
    }
    if (shown.time) {
        columns.push_back({"min"});
    }
    return columns;
}

void append_cells(std::vector<Cell>& row, Figures const& figures, Shown const& shown, bool ascii) {
    auto const& totals = figures.totals;
    row.push_back(distance_cell(totals.distance, shown.unit, ascii));
    if (shown.lengths) {
        row.push_back(count_cell(totals.lengths));
    }
    if (shown.longest) {
        row.push_back(distance_cell(totals.longest, shown.unit, ascii));
    }
    if (shown.timed) {
        row.push_back(clock_cell(totals.timed));
    }
    if (shown.estimated) {
        row.push_back(estimate_cell(figures, shown.unit, ascii));
    }
    if (shown.time) {
        row.push_back(band_cell(figures, ascii));
    }
}

void append_extra_cells(std::vector<Cell>& row, Figures const& figures, Shown const& shown, bool ascii) {
    auto const first = static_cast<std::ptrdiff_t>(row.size());
    auto without_longest = figures;
    without_longest.totals.longest = Distance{};
    append_cells(row, without_longest, shown, ascii);
    std::transform(row.begin() + first, row.end(), row.begin() + first, extra);
}

std::vector<std::string> pool_remarks(Screen const& screen, int lane) {
    constexpr std::size_t most = 3;
    if (!screen.summary.has_several_pools()) {
        return {};
    }
    std::vector<std::string> sentences;
    auto const pools = screen.summary.pools(lane);
    for (std::size_t i = 1; i < pools.size() && i <= most; ++i) {
        sentences.push_back(std::to_string(pools[i].lengths) +
                            (pools[i].lengths == 1 ? " length is of " : " lengths are of ") +
                            spell::distance(pools[i].pool.length, pools[i].pool.unit, screen.ascii()));
    }
    if (pools.size() > most + 1) {
        sentences.push_back("others are of " + std::to_string(pools.size() - most - 1) + " more pools");
    }
    return sentences;
}

} // namespace lengthwise::report
