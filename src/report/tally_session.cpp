#include "calc/reps.hpp"
#include "grammar/words.hpp"
#include "report/session_title.hpp"
#include "report/tally_parts.hpp"
#include "report/width.hpp"
#include "units/spell.hpp"

#include <algorithm>

/// One session: a row a section, a block of columns for each lane that differs.
namespace lengthwise::report {
namespace {

std::string section_label(plan::Plan const& plan, plan::Section const& section) {
    auto label = std::string{spelling(word_of(section.kind))};
    auto const name = plan.heading_of(section).name;
    return name.empty() ? label : label + " " + visible(name);
}

bool same(Tally const& tally, int a, int b) {
    return tally.swum(a).totals == tally.swum(b).totals && tally.if_time(a).totals == tally.if_time(b).totals;
}

/// Splits lanes that were alike so far where this section's figures differ.
std::vector<calc::LaneSet> split_by(Tally const& tally, std::vector<calc::LaneSet> const& alike) {
    std::vector<calc::LaneSet> result;
    for (auto const& lanes : alike) {
        auto const first = static_cast<std::ptrdiff_t>(result.size());
        for (int const lane : calc::numbers(lanes)) {
            auto found = std::find_if(result.begin() + first, result.end(), [&](calc::LaneSet const& others) {
                return same(tally, calc::lowest(others), lane);
            });
            if (found == result.end()) {
                found = result.insert(found, calc::LaneSet{});
            }
            found->set(static_cast<std::size_t>(lane));
        }
    }
    return result;
}

/// Lanes with the same figures in every row share their columns; without any lane
/// there is one block for all.
std::vector<calc::LaneSet> blocks_of(Screen const& screen, plan::Index session, Tally const& whole) {
    std::vector<calc::LaneSet> blocks{whole.lanes()};
    auto const& run = screen.plan().sessions[session].sections;
    for (auto i = run.first; i < run.end(); ++i) {
        auto const tally = screen.summary.section(session, i, whole.lanes());
        if (tally.has_lane_lines()) {
            blocks = split_by(tally, blocks);
        }
    }
    std::sort(blocks.begin(), blocks.end(),
              [](auto const& a, auto const& b) { return calc::lowest(a) < calc::lowest(b); });
    return blocks;
}

/// A rep as a row: its distance and its lengths; no rep has a sum of timed ones.
calc::Totals as_row(Distance rep, Pool const& pool) {
    calc::Totals row;
    row.distance = rep;
    row.lengths = calc::lengths_of(rep, pool).value_or(0);
    return row;
}

class SessionTable {
  public:
    SessionTable(Screen const& screen, plan::Index session)
        : screen_(screen), pool_(screen.plan().pool_of(screen.plan().sessions[session])), session_(session),
          whole_(screen.summary.session(session)),
          blocks_(blocks_of(screen, session, whole_)), shown_{pool_.unit, whole_.has_lengths(), false,
                                                              has_timed(whole_)} {}

    /// As many lanes side by side as there is room for, the others below.
    [[nodiscard]] std::string text() const {
        std::string text;
        for (std::size_t first = 0; first < blocks_.size();) {
            // Two blanks and "lane 1" at least: more need not be tried.
            auto count = std::min(blocks_.size() - first, screen_.options.width / 8 + 1);
            while (count > 1 && table(first, count).width() > screen_.options.width) {
                --count;
            }
            auto fitted = table(first, count);
            fitted.fit(0, screen_.options.width, screen_.ascii());
            text.append(text.empty() ? "" : "\n").append(fitted.text(screen_.paint));
            first += count;
        }
        return text;
    }

  private:
    [[nodiscard]] Table table(std::size_t first, std::size_t count) const {
        Table table{columns_of(first, count)};
        auto const row = [&](std::string label, Ink ink, auto append) {
            std::vector<Cell> cells{{std::move(label), {}}};
            for (auto i = first; i < first + count; ++i) {
                append(cells, calc::lowest(blocks_[i]));
            }
            table.row(cells, ink);
        };
        auto const& run = screen_.plan().sessions[session_].sections;
        for (auto i = run.first; i < run.end(); ++i) {
            auto const tally = screen_.summary.section(session_, i, whole_.lanes());
            row(section_label(screen_.plan(), screen_.plan().sections[i]), Ink::plain,
                [&](auto& cells, int lane) { add(cells, tally.swum(lane).totals); });
        }
        table.gap();
        row("total", Ink::bold, [&](auto& cells, int lane) { add(cells, whole_.swum(lane).totals); });
        row("longest rep", Ink::bold, [&](auto& cells, int lane) {
            add(cells, as_row(whole_.swum(lane).totals.longest, pool_));
            cells.back() = shown_.timed ? Cell{} : cells.back();
        });
        if (has_if_time(first, count)) {
            row("if time", Ink::plain, [&](auto& cells, int lane) {
                append_extra_cells(cells, whole_.if_time(lane).totals, shown_, screen_.ascii());
            });
        }
        return table;
    }

    [[nodiscard]] bool has_if_time(std::size_t first, std::size_t count) const {
        auto const begin = blocks_.begin() + static_cast<std::ptrdiff_t>(first);
        return std::any_of(
            begin, begin + static_cast<std::ptrdiff_t>(count),
            [&](calc::LaneSet const& lanes) { return whole_.has_if_time(calc::lowest(lanes)); });
    }

    void add(std::vector<Cell>& cells, calc::Totals const& totals) const {
        append_cells(cells, totals, shown_, screen_.ascii());
    }

    [[nodiscard]] std::vector<Column> columns_of(std::size_t first, std::size_t count) const {
        std::vector<Column> all{{"", false}};
        for (auto i = first; i < first + count; ++i) {
            auto block = columns(shown_);
            if (blocks_[i].any()) {
                block.back().group = lanes_label(blocks_[i], screen_.ascii());
                block.back().span = block.size();
            }
            all.insert(all.end(), block.begin(), block.end());
        }
        return all;
    }

    Screen const& screen_;
    Pool const& pool_;
    plan::Index session_;
    Tally whole_;
    std::vector<calc::LaneSet> blocks_;
    Shown shown_;
};

} // namespace

std::string session_screen(Screen const& screen, plan::Index session) {
    auto const& pool = screen.plan().pool_of(screen.plan().sessions[session]);
    auto const head = title(screen, session_title(screen.plan(), session, pool, screen.ascii()));
    return head + SessionTable{screen, session}.text();
}

} // namespace lengthwise::report
