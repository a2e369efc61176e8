#include "cards/body.hpp"

#include "cards/line_writer.hpp"
#include "cards/row_writer.hpp"
#include "cards/wrap.hpp"

#include <algorithm>
#include <utility>

namespace lengthwise::cards {
namespace {

using report::CardRow;

/// Writes sections and groups.
class Writer {
  public:
    Writer(report::Card const& card, Setting const& setting, Measure& measure)
        : card_(card), lines_(card, setting, measure), rows_(lines_) {}

    Body write(bool halves) {
        lines_.body.halves = halves;
        lines_.notes(card_.notes, safe_edge);
        for (std::size_t i = 0; i < card_.sections.size(); ++i) {
            lines_.section = i;
            section(card_.sections[i]);
        }
        return std::move(lines_.body);
    }

    /// Some split has no room for its halves.
    [[nodiscard]] bool clashed() const { return rows_.clashed(); }

    /// Clock, title and what holds stand behind the name on one line; what has no room there goes below.
    BodyLine heading(std::string const& name, std::string const& clock, std::string const& title,
                     std::vector<std::string> const& holds) {
        heading_line();
        auto const named = lines_.put(safe_edge, name, Weight::semibold, lines_.small_em()) +
                           figures_air * lines_.small_em();
        auto const axis = std::min(lines_.columns().words, lines_.columns().text);
        auto x = std::max(named, axis);
        std::string between;
        if (!clock.empty()) {
            x = lines_.put(x, clock, Weight::medium, lines_.small_em());
            between = "  ";
        }
        auto const behind = [&](std::string const& text) {
            if (text.empty()) {
                return;
            }
            if (x + lines_.width(between + text, Weight::medium, lines_.small_em()) <=
                lines_.setting().right()) {
                x = lines_.put_behind(x, between + text);
                return;
            }
            for (auto const& part :
                 wrap(text, Weight::medium, (lines_.setting().right() - axis) / lines_.small_em(),
                      lines_.measure())) {
                heading_line();
                x = lines_.put(axis, part, Weight::medium, lines_.small_em());
            }
        };
        behind(title);
        between = title.empty() ? between : " · ";
        for (auto const& hold : holds) {
            behind(hold);
            between = ", ";
        }
        return lines_.body.lines.front();
    }

    /// On one line, whatever has to be left out.
    BodyLine heading_again(std::string const& name, std::string const& clock) {
        auto line = heading(name, clock, "continued", {});
        if (lines_.body.lines.size() > 1) {
            lines_.body.lines.clear();
            line = heading(name, {}, "continued", {});
        }
        return line;
    }

  private:
    void heading_line() {
        lines_.small_line();
        lines_.line().heading = true;
    }

    void section(report::CardSection const& section) {
        lines_.cut = Cut::section;
        bool const first = lines_.body.lines.empty();
        auto const clock =
            lines_.setting().clock_column || section.rows.empty() ? std::string{} : clock_of(section);
        auto const at = lines_.body.lines.size();
        heading(section.name, clock, section.title, section.holds);
        auto& head = lines_.body.lines[at];
        if (!first) {
            head.advance = 0.98 * lines_.setting().level.pitch * lines_.setting().scale.capital;
            head.rule = lines_.setting().scale.small() + 0.29 * lines_.setting().scale.capital;
        }
        bool first_row = true;
        bool optional = false;
        for (auto const& row : section.rows) {
            lines_.cut = std::exchange(first_row, false) ? Cut::torn : Cut::item;
            lines_.clock = row.clock.empty() ? nullptr : &row.clock;
            optional = row.optional ? if_time(row, optional) : false;
            if (!row.optional) {
                this->row(row, 0);
            }
            lines_.swum = row.so_far.empty() ? lines_.swum : &row;
        }
    }

    static std::string clock_of(report::CardSection const& section) {
        for (auto const& row : section.rows) {
            if (!row.clock.empty()) {
                return row.clock;
            }
        }
        return {};
    }

    /// Lines that are swum if there is time stand under one head.
    bool if_time(CardRow const& row, bool goes_on) {
        if (!goes_on) {
            lines_.small_line();
            lines_.put(lines_.columns().bars, "if time", Weight::semibold, lines_.small_em());
            lines_.body.bars.push_back({lines_.columns().bars, optional_bar});
        }
        lines_.bars = {static_cast<std::uint32_t>(lines_.body.bars.size() - 1)};
        this->row(row, 1);
        lines_.bars.clear();
        return true;
    }

    void row(CardRow const& row, std::size_t depth) {
        switch (row.kind) {
        case CardRow::Kind::set:
            return rows_.write(row, depth == 0);
        case CardRow::Kind::group:
            return group(row, depth);
        case CardRow::Kind::pause:
            lines_.small_line();
            lines_.put(lines_.columns().text, row.recovery, Weight::semibold, lines_.small_em());
            return lines_.notes(row.notes, lines_.columns().text);
        case CardRow::Kind::note:
            return lines_.notes(row.notes, lines_.columns().text);
        }
    }

    void group(CardRow const& row, std::size_t depth) {
        group_head(row, depth);
        auto const lane = lines_.columns().lane;
        lines_.body.bars.push_back({lines_.columns().bar(depth), lane / bar_lane * bar_width});
        lines_.bars.push_back(static_cast<std::uint32_t>(lines_.body.bars.size() - 1));
        for (auto const& inner : row.rows) {
            this->row(inner, depth + 1);
        }
        bool const counted = !row.lengths.empty() && lines_.setting().level.lengths &&
                             (row.rows.size() > 1 || !row.count.empty());
        auto const x = lines_.columns().bar(depth + 1);
        auto const room = (lines_.columns().recovery_right - x) / lines_.small_em();
        auto const recovery = wrap(row.recovery, Weight::semibold, room, lines_.measure());
        for (auto const& part : recovery) {
            lines_.small_line();
            lines_.put(x, part, Weight::semibold, lines_.small_em());
        }
        if (counted) {
            if (recovery.empty()) {
                lines_.small_line();
            }
            lines_.lengths(lines_.line(), row.lengths, depth == 0);
        }
        lines_.bars.pop_back();
    }

    void group_head(CardRow const& row, std::size_t depth) {
        std::vector<Piece> pieces;
        for (auto const& how : row.how) {
            pieces.push_back({how, Weight::medium});
        }
        if (lines_.setting().level.hand && !row.hand.empty()) {
            pieces.push_back({row.hand, Weight::medium});
        }
        auto const x = lines_.columns().text;
        auto const room = (lines_.columns().right - x) / lines_.small_em();
        auto placed = flow_pieces(pieces, room, lines_.measure());
        std::size_t noted = 0;
        for (auto const& note : row.notes) {
            for (auto const& text : wrap_evenly(note, Weight::medium, room, lines_.measure())) {
                placed.push_back(placed_alone({text, Weight::medium}, lines_.measure()));
                ++noted;
            }
        }
        auto const how = placed.size() - noted;
        std::size_t next = 0;
        if (!row.count.empty()) {
            lines_.set_line();
            lines_.leave_time();
            auto const end =
                lines_.put(lines_.columns().bar(depth), row.count + " ×", Weight::semibold, lines_.em());
            if (!placed.empty() && end + 0.3 * lines_.em() <= x) {
                lines_.place(placed[next++], x);
            }
        }
        for (; next < placed.size(); ++next) {
            lines_.small_line();
            lines_.line().note = next >= how;
            lines_.place(placed[next], x);
        }
    }

    report::Card const& card_;
    LineWriter lines_;
    RowWriter rows_;
};

} // namespace

Body body_of(report::Card const& card, Setting const& setting, Measure& measure) {
    Writer writer{card, setting, measure};
    auto body = writer.write(true);
    return writer.clashed() ? Writer{card, setting, measure}.write(false) : body;
}

BodyLine continued(report::Card const& card, BodyLine const& line, Setting const& setting, Measure& measure) {
    auto const clock = setting.clock_column || line.clock == nullptr ? std::string{} : *line.clock;
    return Writer{card, setting, measure}.heading_again(card.sections[line.section].name, clock);
}

} // namespace lengthwise::cards
