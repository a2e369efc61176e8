#include "calc/reps.hpp"
#include "grammar/words.hpp"
#include "report/session_title.hpp"
#include "report/tally_parts.hpp"
#include "report/tally_time.hpp"
#include "report/time_words.hpp"
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
    return same(tally.swum(a), tally.swum(b)) && same(tally.if_time(a), tally.if_time(b));
}

/// Splits lanes that were alike so far where two of them are not `same`.
template <typename Same>
std::vector<calc::LaneSet> split(std::vector<calc::LaneSet> const& alike, Same same) {
    std::vector<calc::LaneSet> result;
    for (auto const& lanes : alike) {
        auto const first = static_cast<std::ptrdiff_t>(result.size());
        for (int const lane : calc::numbers(lanes)) {
            auto found = std::find_if(result.begin() + first, result.end(), [&](calc::LaneSet const& others) {
                return same(calc::lowest(others), lane);
            });
            if (found == result.end()) {
                found = result.insert(found, calc::LaneSet{});
            }
            found->set(static_cast<std::size_t>(lane));
        }
    }
    return result;
}

/// Lanes with one pace and the same figures in every row share their columns; without any lane
/// there is one block for all.
std::vector<calc::LaneSet> blocks_of(Screen const& screen, plan::Index session, Tally const& whole) {
    std::vector<calc::LaneSet> blocks{whole.lanes()};
    if (whole.lanes().none()) {
        return blocks;
    }
    blocks = split(
        blocks, [&](int a, int b) { return lane_pace(screen, session, a) == lane_pace(screen, session, b); });
    for (auto const& tally : screen.summary.sections(session)) {
        blocks = split(blocks, [&](int a, int b) { return same(tally, a, b); });
    }
    std::sort(blocks.begin(), blocks.end(),
              [](auto const& a, auto const& b) { return calc::lowest(a) < calc::lowest(b); });
    return blocks;
}

/// A rep as a row: its distance and its lengths; no rep has a sum of timed ones.
Figures as_row(Distance rep, Pool const& pool) {
    Figures row;
    row.totals.distance = rep;
    row.totals.lengths = calc::lengths_of(rep, pool).value_or(0);
    return row;
}

Minutes section_minutes(std::vector<Tally> const& sections, Tally const& whole, int lane) {
    std::vector<std::optional<Band<Duration>>> times;
    for (auto const& section : sections) {
        times.push_back(section.swum(lane).time());
    }
    return minutes_of(times, whole.swum(lane).time());
}

class SessionTable {
  public:
    SessionTable(Screen const& screen, plan::Index session)
        : screen_(screen), pool_(screen.plan().pool_of(screen.plan().sessions[session])), session_(session),
          whole_(screen.summary.session(session)), blocks_(blocks_of(screen, session, whole_)),
          shown_(shown_of(whole_, pool_.unit, false)) {
        for (auto const& lanes : blocks_) {
            minutes_.push_back(
                section_minutes(screen.summary.sections(session), whole_, calc::lowest(lanes)));
        }
    }

    [[nodiscard]] Tally const& whole() const { return whole_; }
    /// True if lanes stand over their columns; else what is said of lanes follows below.
    [[nodiscard]] bool has_heads() const { return blocks_.front().any(); }

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
                append(cells, i);
            }
            table.row(cells, ink);
        };
        auto const& sections = screen_.summary.sections(session_);
        auto const& first_section = screen_.plan().sessions[session_].sections.first;
        for (std::size_t i = 0; i < sections.size(); ++i) {
            auto const& section = screen_.plan().sections[first_section + i];
            row(section_label(screen_.plan(), section), Ink::plain, [&](auto& cells, std::size_t block) {
                add(cells, sections[i].swum(lane(block)));
                cells.push_back(minutes_[block].rows.empty() ? Cell{} : minutes_[block].rows[i]);
            });
        }
        table.gap();
        row("total", Ink::bold, [&](auto& cells, std::size_t block) {
            add(cells, whole_.swum(lane(block)));
            cells.push_back(minutes_[block].total);
        });
        row("longest rep", Ink::bold, [&](auto& cells, std::size_t block) {
            auto const end = cells.size() + columns(shown_).size() + 1;
            append_cells(cells, as_row(whole_.swum(lane(block)).totals.longest, pool_), without_timed(),
                         screen_.ascii());
            cells.resize(end);
        });
        if (has_if_time(first, count)) {
            row("if time", Ink::plain, [&](auto& cells, std::size_t block) {
                append_extra_cells(cells, whole_.if_time(lane(block)), shown_, screen_.ascii());
                auto const time = minutes_cell(whole_.if_time(lane(block)).time());
                cells.push_back(minutes_[block].rows.empty() ? Cell{} : extra(time));
            });
        }
        if (has_heads() && has_time(first, count)) {
            add_slot(row);
        }
        return table;
    }

    /// Does it fit? Each lane's answer stands below its columns.
    template <typename Row>
    void add_slot(Row row) const {
        auto const& slot = screen_.plan().sessions[session_].slot();
        row(slot ? "slot " + slot_minutes(*slot) : "time", Ink::plain, [&](auto& cells, std::size_t block) {
            cells.resize(cells.size() + columns(shown_).size());
            auto const figures = whole_.swum(lane(block));
            cells.push_back(minutes_[block].rows.empty() ? Cell{} : band_cell(figures, screen_.ascii()));
        });
    }

    [[nodiscard]] int lane(std::size_t block) const { return calc::lowest(blocks_[block]); }

    [[nodiscard]] Shown without_timed() const {
        auto shown = shown_;
        shown.timed = false;
        shown.estimated = false;
        return shown;
    }

    [[nodiscard]] bool has_time(std::size_t first, std::size_t count) const {
        auto const begin = blocks_.begin() + static_cast<std::ptrdiff_t>(first);
        return std::any_of(
            begin, begin + static_cast<std::ptrdiff_t>(count),
            [&](calc::LaneSet const& lanes) { return whole_.swum(calc::lowest(lanes)).time().has_value(); });
    }

    [[nodiscard]] bool has_if_time(std::size_t first, std::size_t count) const {
        auto const begin = blocks_.begin() + static_cast<std::ptrdiff_t>(first);
        return std::any_of(
            begin, begin + static_cast<std::ptrdiff_t>(count),
            [&](calc::LaneSet const& lanes) { return whole_.has_if_time(calc::lowest(lanes)); });
    }

    void add(std::vector<Cell>& cells, Figures const& figures) const {
        append_cells(cells, figures, shown_, screen_.ascii());
    }

    [[nodiscard]] std::vector<Column> columns_of(std::size_t first, std::size_t count) const {
        std::vector<Column> all{{"", false}};
        for (auto i = first; i < first + count; ++i) {
            auto block = columns(shown_);
            block.push_back({"min"});
            if (blocks_[i].any()) {
                block.back().group = lanes_head(screen_, session_, blocks_[i]);
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
    std::vector<Minutes> minutes_; ///< by block
};

} // namespace

std::string session_screen(Screen const& screen, plan::Index session) {
    auto const& pool = screen.plan().pool_of(screen.plan().sessions[session]);
    auto const head = title(screen, session_title(screen.plan(), session, pool, screen.ascii()));
    SessionTable const table{screen, session};
    return head + table.text() + (table.has_heads() ? "" : answers(screen, session)) +
           remarks(screen, time_remarks(table.whole(), screen.summary.unit(session))) +
           unknown_time(screen, {session, 1}, table.whole());
}

} // namespace lengthwise::report
