#include "cards/body.hpp"

#include "cards/wrap.hpp"

#include <algorithm>
#include <utility>

namespace lengthwise::cards {
namespace {

using report::CardRow;

/// Beside figures words are broken only where they have as many em.
constexpr double least_room = 4;

/// Writes the lines of one card.
class Writer {
  public:
    Writer(report::Card const& card, Setting const& setting, Measure& measure)
        : card_(card), setting_(setting), measure_(measure), em_(setting.scale.em()),
          small_em_(setting.scale.small_em()) {
        body_.columns = columns_of(card, setting, measure);
    }

    Body write(bool halves) {
        body_.halves = halves;
        notes(card_.notes, safe_edge);
        for (std::size_t i = 0; i < card_.sections.size(); ++i) {
            section_ = i;
            section(card_.sections[i]);
        }
        return std::move(body_);
    }

    /// Some split has no room for its halves.
    [[nodiscard]] bool clashed() const { return clashed_; }

    /// Clock, title and what holds stand behind the name on one line; what has no room there goes below.
    BodyLine heading(std::string const& name, std::string const& clock, std::string const& title,
                     std::vector<std::string> const& holds) {
        small_line();
        auto const named = put(safe_edge, name, Weight::semibold, small_em_) + figures_air * small_em_;
        auto const axis = std::min(columns().words, columns().text);
        auto x = std::max(named, axis);
        std::string between;
        if (!clock.empty()) {
            x = put(x, clock, Weight::medium, small_em_);
            between = "  ";
        }
        auto const behind = [&](std::string const& text) {
            if (text.empty()) {
                return;
            }
            if (x + width(between + text, Weight::medium, small_em_) <= setting_.right()) {
                x = put_behind(x, between + text);
                return;
            }
            for (auto const& part :
                 wrap(text, Weight::medium, (setting_.right() - axis) / small_em_, measure_)) {
                small_line();
                x = put(axis, part, Weight::medium, small_em_);
            }
        };
        behind(title);
        between = title.empty() ? between : " · ";
        for (auto const& hold : holds) {
            behind(hold);
            between = ", ";
        }
        return body_.lines.front();
    }

    /// On one line, whatever has to be left out.
    BodyLine heading_again(std::string const& name, std::string const& clock) {
        auto line = heading(name, clock, "continued", {});
        if (body_.lines.size() > 1) {
            body_.lines.clear();
            line = heading(name, {}, "continued", {});
        }
        return line;
    }

  private:
    Columns const& columns() const { return body_.columns; }
    BodyLine& line() { return body_.lines.back(); }

    void begin(double advance, double em) {
        BodyLine line;
        line.advance = advance;
        line.rise = rise_of_em * em;
        line.fall = fall_of_em * em;
        line.cut = std::exchange(cut_, Cut::torn);
        line.bars = bars_;
        line.section = section_;
        line.clock = std::exchange(clock_, nullptr);
        line.swum_before = swum_;
        body_.lines.push_back(std::move(line));
    }
    void set_line() {
        begin(setting_.level.pitch * setting_.scale.capital, em_);
        line().of_set = true;
    }
    void small_line() { begin(small_pitch * setting_.scale.small(), small_em_); }

    double width(std::string const& words, Weight weight, double em) {
        return measure_.width(words, weight) * em;
    }

    /// Gives the text's right end.
    double put(double x, std::string const& words, Weight weight, double em, Anchor anchor = Anchor::left) {
        if (words.empty()) {
            return x;
        }
        auto const wide = width(words, weight, em);
        line().texts.push_back({{x, 0}, words, em, weight, anchor, wide});
        return anchor == Anchor::left ? x + wide : x;
    }

    /// Blanks before the words are room, not text.
    double put_behind(double x, std::string const& words) {
        auto const begin = std::min(words.find_first_not_of(' '), words.size());
        auto const blank = width(" ", Weight::medium, small_em_) * static_cast<double>(begin);
        return put(x + blank, words.substr(begin), Weight::medium, small_em_);
    }

    void notes(std::vector<std::string> const& notes, double x) {
        for (auto const& note : notes) {
            for (auto const& text :
                 wrap_evenly(note, Weight::medium, (columns().right - x) / small_em_, measure_)) {
                small_line();
                line().note = true;
                put(x, text, Weight::medium, small_em_);
            }
        }
    }

    void section(report::CardSection const& section) {
        cut_ = Cut::section;
        bool const first = body_.lines.empty();
        auto const clock = setting_.clock_column || section.rows.empty() ? std::string{} : clock_of(section);
        auto const at = body_.lines.size();
        heading(section.name, clock, section.title, section.holds);
        auto& head = body_.lines[at];
        if (!first) {
            head.advance = 0.98 * setting_.level.pitch * setting_.scale.capital;
            head.rule = setting_.scale.small() + 0.29 * setting_.scale.capital;
        }
        bool first_row = true;
        bool optional = false;
        for (auto const& row : section.rows) {
            cut_ = std::exchange(first_row, false) ? Cut::torn : Cut::item;
            clock_ = row.clock.empty() ? nullptr : &row.clock;
            optional = row.optional ? if_time(row, optional) : false;
            if (!row.optional) {
                this->row(row, 0);
            }
            swum_ = row.so_far.empty() ? swum_ : &row;
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
            small_line();
            put(columns().bars, "if time", Weight::semibold, small_em_);
            body_.bars.push_back({columns().bars, optional_bar});
        }
        bars_ = {static_cast<std::uint32_t>(body_.bars.size() - 1)};
        this->row(row, 1);
        bars_.clear();
        return true;
    }

    void row(CardRow const& row, std::size_t depth) {
        switch (row.kind) {
        case CardRow::Kind::set:
            return set(row, depth);
        case CardRow::Kind::group:
            return group(row, depth);
        case CardRow::Kind::pause:
            small_line();
            put(columns().text, row.recovery, Weight::semibold, small_em_);
            return notes(row.notes, columns().text);
        case CardRow::Kind::note:
            return notes(row.notes, columns().text);
        }
    }

    void leave_time() {
        if (setting_.clock_column && line().clock != nullptr) {
            put(safe_edge, *line().clock, Weight::medium, small_em_);
        }
    }

    void set(CardRow const& row, std::size_t depth) {
        set_line();
        line().strip = row.longest;
        leave_time();
        if (!row.count.empty()) {
            put(columns().count_right, row.count, Weight::semibold, em_, Anchor::right);
            put(columns().times, "×", Weight::semibold, em_);
        }
        auto x = std::max(columns().words, amounts(row));
        if (!line().texts.empty() && line().texts.back().right() > columns().recovery_right) {
            set_line(); // figures where lengths should stand
            x = columns().words;
        }
        auto const first = body_.lines.size() - 1;
        auto const below = words(row, x);
        if (setting_.level.lengths) {
            lengths(body_.lines[first], row.lengths, depth == 0);
        }
        pieces(below, columns().text);
        notes(row.notes, columns().text);
    }

    /// Gives where words may begin behind them.
    double amounts(CardRow const& row) {
        double x = columns().amount;
        auto const comma = measure_.width(", ", Weight::semibold) * em_;
        std::string text;
        double end = x;
        for (std::size_t i = 0; i < row.amount.size(); ++i) {
            auto const wide = width(row.amount[i], Weight::semibold, em_);
            if (!text.empty() && end + comma + wide > columns().recovery_right) {
                put(x, text + ",", Weight::semibold, em_);
                set_line();
                text.clear();
                end = x;
            }
            end += wide + (text.empty() ? 0 : comma);
            text += (text.empty() ? "" : ", ") + row.amount[i];
        }
        if (text.empty()) {
            return x;
        }
        end = put(x, text, Weight::semibold, em_);
        bool const in_column = row.amount.size() == 1 && end - x <= columns().widest_amount + 0.001;
        return in_column ? x : end + figures_air * em_;
    }

    /// As many classes as there is room for, whole, on the line; gives what is left for below.
    std::vector<Piece> words(CardRow const& row, double x) {
        auto classes = row.what;
        std::vector<Piece> below;
        auto const room = columns().recovery_right - x;
        auto const too_wide = [&] {
            return !classes.empty() && width(classes.front(), Weight::medium, em_) > room;
        };
        if (too_wide() && !row.parts.empty() && width(row.plain_what, Weight::medium, em_) <= room) {
            below.push_back({row.parts, Weight::medium});
            classes.front() = row.plain_what;
        }
        std::size_t taken = 0;
        double end = x;
        if (too_wide()) {
            end = wrapped(classes[taken++], x);
        } else {
            std::string text;
            for (; taken < classes.size(); ++taken) {
                auto const longer = text + (text.empty() ? "" : " ") + classes[taken];
                if (width(longer, Weight::medium, em_) > room) {
                    break;
                }
                text = longer;
            }
            end = put(x, text, Weight::medium, em_);
        }
        for (; taken < classes.size(); ++taken) {
            below.push_back({classes[taken], Weight::medium});
        }
        right(row, end, below);
        return below;
    }

    /// A first class too wide for its place, on lines of its own; gives the last one's end.
    double wrapped(std::string const& text, double x) {
        bool beside = columns().recovery_right - x > least_room * em_;
        auto const at = beside ? x : columns().text;
        auto end = at;
        for (auto const& part : wrap(text, Weight::medium, (columns().recovery_right - at) / em_, measure_)) {
            if (!std::exchange(beside, false)) {
                set_line();
            }
            end = put(at, part, Weight::medium, em_);
        }
        return end;
    }

    /// Recovery and halves beside the words, where there is room.
    void right(CardRow const& row, double end, std::vector<Piece>& below) {
        auto edge = columns().recovery_right;
        auto const air = words_air * em_;
        std::vector<Piece> more;
        if (!row.split.empty()) {
            more.push_back({row.split, Weight::medium});
        }
        bool recovered = row.recovery.empty();
        auto const wide = width(row.recovery, Weight::semibold, small_em_);
        bool const halves_fit =
            end + air + width(row.halves, Weight::medium, small_em_) + (recovered ? 0 : wide + air) <= edge;
        if (!row.halves.empty() && body_.halves && halves_fit && below.empty()) {
            auto const at = edge - (recovered ? 0 : wide + air);
            put(at, row.halves, Weight::medium, small_em_, Anchor::right);
        } else if (!row.halves.empty()) {
            clashed_ = true;
        }
        if (!recovered && end + air + wide <= edge) {
            put(edge, row.recovery, Weight::semibold, small_em_, Anchor::right);
            recovered = true;
        }
        if (!recovered) {
            more.push_back({row.recovery, Weight::semibold});
        }
        for (auto const& how : row.how) {
            more.push_back({how, Weight::medium});
        }
        if (setting_.level.hand && !row.hand.empty()) {
            more.push_back({row.hand, Weight::medium});
        }
        below.insert(below.end(), more.begin(), more.end());
        std::erase_if(below, [](Piece const& piece) { return piece.words.empty(); });
    }

    void lengths(BodyLine& at, std::string const& lengths, bool counts) {
        if (lengths.empty()) {
            return;
        }
        auto const weight = counts ? Weight::semibold : Weight::medium;
        at.texts.push_back({{columns().right, 0},
                            lengths,
                            small_em_,
                            weight,
                            Anchor::right,
                            width(lengths, weight, small_em_)});
    }

    void pieces(std::vector<Piece> const& pieces, double x) {
        for (auto const& placed : flow_pieces(pieces, (columns().right - x) / small_em_, measure_)) {
            small_line();
            place(placed, x);
        }
    }
    void place(PlacedLine const& placed, double x) {
        for (auto const& part : placed) {
            line().texts.push_back({{x + part.at * small_em_, 0},
                                    part.piece.words,
                                    small_em_,
                                    part.piece.weight,
                                    Anchor::left,
                                    part.width * small_em_});
        }
    }

    void group(CardRow const& row, std::size_t depth) {
        group_head(row, depth);
        auto const lane = columns().lane;
        body_.bars.push_back({columns().bar(depth), lane / bar_lane * bar_width});
        bars_.push_back(static_cast<std::uint32_t>(body_.bars.size() - 1));
        for (auto const& inner : row.rows) {
            this->row(inner, depth + 1);
        }
        bool const counted =
            !row.lengths.empty() && setting_.level.lengths && (row.rows.size() > 1 || !row.count.empty());
        auto const x = columns().bar(depth + 1);
        auto const room = (columns().recovery_right - x) / small_em_;
        auto const recovery = wrap(row.recovery, Weight::semibold, room, measure_);
        for (auto const& part : recovery) {
            small_line();
            put(x, part, Weight::semibold, small_em_);
        }
        if (counted) {
            if (recovery.empty()) {
                small_line();
            }
            lengths(line(), row.lengths, depth == 0);
        }
        bars_.pop_back();
    }

    void group_head(CardRow const& row, std::size_t depth) {
        std::vector<Piece> pieces;
        for (auto const& how : row.how) {
            pieces.push_back({how, Weight::medium});
        }
        if (setting_.level.hand && !row.hand.empty()) {
            pieces.push_back({row.hand, Weight::medium});
        }
        auto const x = columns().text;
        auto const room = (columns().right - x) / small_em_;
        auto placed = flow_pieces(pieces, room, measure_);
        std::size_t noted = 0;
        for (auto const& note : row.notes) {
            for (auto const& text : wrap_evenly(note, Weight::medium, room, measure_)) {
                placed.push_back(placed_alone({text, Weight::medium}, measure_));
                ++noted;
            }
        }
        auto const how = placed.size() - noted;
        std::size_t next = 0;
        if (!row.count.empty()) {
            set_line();
            leave_time();
            auto const end = put(columns().bar(depth), row.count + " ×", Weight::semibold, em_);
            if (!placed.empty() && end + 0.3 * em_ <= x) {
                place(placed[next++], x);
            }
        }
        for (; next < placed.size(); ++next) {
            small_line();
            line().note = next >= how;
            place(placed[next], x);
        }
    }

    report::Card const& card_;
    Setting const& setting_;
    Measure& measure_;
    double em_;
    double small_em_;
    Body body_;
    std::size_t section_ = 0;
    Cut cut_ = Cut::torn;
    std::string const* clock_ = nullptr;
    CardRow const* swum_ = nullptr;
    std::vector<std::uint32_t> bars_;
    bool clashed_ = false;
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
