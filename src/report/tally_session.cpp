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

struct Part {
    std::string label;
    Tally tally;
};

std::vector<Part> parts_of(Screen const& screen, plan::Index session, calc::LaneSet const& lanes) {
    std::vector<Part> parts;
    auto const& run = screen.plan().sessions[session].sections;
    for (auto i = run.first; i < run.end(); ++i) {
        auto const& section = screen.plan().sections[i];
        auto label = std::string{spelling(word_of(section.kind))};
        if (!screen.plan().heading_of(section).name.empty()) {
            label.append(" ").append(visible(screen.plan().heading_of(section).name));
        }
        parts.push_back({std::move(label), screen.summary.section(session, i, lanes)});
    }
    return parts;
}

/// Lanes with the same figures in every row share their columns.
struct Block {
    int lane = 0;
    calc::LaneSet lanes;
};

bool same(std::vector<Part> const& parts, int a, int b) {
    return std::all_of(parts.begin(), parts.end(), [&](Part const& part) {
        return part.tally.swum(a).totals == part.tally.swum(b).totals &&
               part.tally.if_time(a).totals == part.tally.if_time(b).totals;
    });
}

std::vector<Block> blocks_of(Tally const& whole, std::vector<Part> const& parts) {
    std::vector<Block> blocks;
    for (int const lane : calc::numbers(whole.lanes())) {
        auto found = std::find_if(blocks.begin(), blocks.end(),
                                  [&](Block const& block) { return same(parts, block.lane, lane); });
        if (found == blocks.end()) {
            found = blocks.insert(found, Block{lane, {}});
        }
        found->lanes.set(static_cast<std::size_t>(lane));
    }
    return blocks.empty() ? std::vector<Block>{Block{}} : blocks;
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
        : screen_(screen), pool_(screen.plan().pool_of(screen.plan().sessions[session])),
          whole_(screen.summary.session(session)), parts_(parts_of(screen, session, whole_.lanes())),
          blocks_(blocks_of(whole_, parts_)), shown_{pool_.unit, whole_.has_lengths(), false,
                                                     has_timed(whole_)} {}

    /// As many lanes side by side as there is room for, the others below.
    [[nodiscard]] std::string text() const {
        std::string text;
        for (std::size_t first = 0; first < blocks_.size();) {
            auto count = blocks_.size() - first;
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
        auto const row = [&](std::string const& label, Ink ink, auto append) {
            std::vector<Cell> cells{{label, {}}};
            for (auto i = first; i < first + count; ++i) {
                append(cells, blocks_[i].lane);
            }
            table.row(std::move(cells), ink);
        };
        for (auto const& part : parts_) {
            row(part.label, Ink::plain,
                [&](auto& cells, int lane) { add(cells, part.tally.swum(lane).totals); });
        }
        table.gap();
        row("total", Ink::bold, [&](auto& cells, int lane) { add(cells, whole_.swum(lane).totals); });
        row("longest rep", Ink::bold, [&](auto& cells, int lane) {
            add(cells, as_row(whole_.swum(lane).totals.longest, pool_));
            cells.back() = shown_.timed ? Cell{} : cells.back();
        });
        if (std::any_of(blocks_.begin() + static_cast<std::ptrdiff_t>(first),
                        blocks_.begin() + static_cast<std::ptrdiff_t>(first + count),
                        [&](Block const& block) { return whole_.has_if_time(block.lane); })) {
            row("if time", Ink::plain, [&](auto& cells, int lane) {
                append_extra_cells(cells, whole_.if_time(lane).totals, shown_, screen_.ascii());
            });
        }
        return table;
    }

    void add(std::vector<Cell>& cells, calc::Totals const& totals) const {
        append_cells(cells, totals, shown_, screen_.ascii());
    }

    [[nodiscard]] std::vector<Column> columns_of(std::size_t first, std::size_t count) const {
        std::vector<Column> all{{"", false}};
        for (auto i = first; i < first + count; ++i) {
            auto block = columns(shown_);
            if (blocks_[i].lanes.any()) {
                block.back().group = lanes_label(blocks_[i].lanes, screen_.ascii());
                block.back().span = block.size();
            }
            all.insert(all.end(), block.begin(), block.end());
        }
        return all;
    }

    Screen const& screen_;
    Pool const& pool_;
    Tally whole_;
    std::vector<Part> parts_;
    std::vector<Block> blocks_;
    Shown shown_;
};

} // namespace

std::string session_screen(Screen const& screen, plan::Index session) {
    auto const& pool = screen.plan().pool_of(screen.plan().sessions[session]);
    auto const head = title(screen, session_title(screen.plan(), session, pool, screen.ascii()));
    return head + SessionTable{screen, session}.text();
}

} // namespace lengthwise::report
