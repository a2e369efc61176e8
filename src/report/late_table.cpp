#include "report/late_table.hpp"

#include "report/choose.hpp"
#include "report/fold_set.hpp"
#include "report/time_words.hpp"
#include "report/width.hpp"
#include "units/spell.hpp"

#include <algorithm>

namespace lengthwise::report {
namespace {

using tailor::Late;
using tailor::LateLine;

constexpr std::size_t least_set = 24; ///< cells that a set keeps beside several lanes

bool alike(Late const& late, std::size_t a, std::size_t b) {
    auto const same = [&](LateLine const& line) {
        auto const& one = line.lanes[a];
        auto const& other = line.lanes[b];
        return one.stays == other.stays && one.start == other.start && one.with_it == other.with_it;
    };
    return late.lanes[a].end == late.lanes[b].end && std::all_of(late.lines.begin(), late.lines.end(), same);
}

} // namespace

std::vector<LateLanes> late_columns(Late const& late) {
    std::vector<LateLanes> columns;
    for (std::size_t place = 0; place < late.lanes.size(); ++place) {
        auto found = std::find_if(columns.begin(), columns.end(),
                                  [&](LateLanes const& lanes) { return alike(late, lanes.front(), place); });
        (found == columns.end() ? columns.emplace_back() : *found).push_back(place);
    }
    return columns;
}

std::string late_label(Late const& late, LateLanes const& places, bool ascii) {
    calc::LaneSet lanes;
    for (auto const place : places) {
        lanes.set(static_cast<std::size_t>(late.lanes[place].lane));
    }
    return lanes.test(0) ? "" : lanes_label(lanes, ascii);
}

std::string late_second(Duration time) {
    constexpr auto second = Duration::seconds(1).ms();
    return spell::clock(Duration::seconds((time.ms() + second - 1) / second));
}

std::string LateTables::text(Paint const& paint) {
    std::string text;
    auto const& all = columns_;
    for (std::size_t first = 0; first < all.size();) {
        // Two blanks and "lane 1" at least: more need not be tried.
        std::vector<LateLanes> shown;
        for (auto i = first; i < std::min(all.size(), first + style_.width / 8); ++i) {
            shown.push_back(all[i]);
        }
        while (shown.size() > 1 && set_room(shown) < least_set) {
            shown.pop_back();
        }
        text += "\n" + table(shown, set_room(shown)).text(paint);
        first += shown.size();
    }
    return text;
}

std::size_t LateTables::set_room(std::vector<LateLanes> const& shown) {
    auto const taken = table(shown, 0).width() + 2;
    return std::max<std::size_t>(style_.width - std::min(style_.width, taken), 8);
}

/// Rows that stay, number first; sets are folded to `room` cells and left out where there is none.
Table LateTables::table(std::vector<LateLanes> const& shown, std::size_t room) {
    std::vector<Column> heads{{}};
    for (auto const& lanes : shown) {
        heads.push_back({.head = label(lanes)});
    }
    heads.push_back({.head = "lengths"});
    heads.push_back({.figures = false});
    Table table{heads};
    for (auto const& line : late_.lines) {
        if (std::any_of(shown.begin(), shown.end(),
                        [&](LateLanes const& lanes) { return line.lanes[lanes.front()].stays; })) {
            add(table, line, shown, room);
        }
    }
    std::vector<Cell> end{{}};
    for (auto const& lanes : shown) {
        end.push_back({late_second(late_.lanes[lanes.front()].end.high), {}});
    }
    end.push_back({});
    end.push_back({room > 0 ? "end" : "", {}});
    table.row(end, Ink::bold);
    return table;
}

void LateTables::add(Table& table, LateLine const& line, std::vector<LateLanes> const& shown,
                     std::size_t room) {
    auto const& item = plan_.items[line.item];
    std::vector<Cell> cells{{line.number > 0 ? std::to_string(line.number) : "", {}}};
    for (auto const& lanes : shown) {
        auto const& start = line.lanes[lanes.front()].start;
        cells.push_back({start ? late_second(*start) : "", {}});
    }
    cells.push_back({lengths(item), {}});
    auto const set = room > 0 ? fold_set(speller_.spell(item), room) : std::vector<std::string>{""};
    for (auto const& part : set) {
        cells.push_back({part, {}});
        table.row(cells);
        cells.assign(cells.size() - 1, {});
    }
}

std::string LateTables::lengths(plan::Item const& item) {
    if (!plan_.pool_of(session_).has_length()) {
        return {};
    }
    auto const totals = reckoner_.of_item(session_, item);
    if (totals.lengths == 0 && !totals.timed.zero()) {
        return spell::duration(totals.timed);
    }
    return totals.lengths > 0 ? std::to_string(totals.lengths) : "";
}

} // namespace lengthwise::report
