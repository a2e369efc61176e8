#include "cards/back.hpp"

#include "cards/wrap.hpp"

#include <algorithm>
#include <utility>

namespace lengthwise::cards {
namespace {

constexpr std::size_t most_passings = 8; ///< more lines than these only where the strip has rows
constexpr double column_air = 0.8;       ///< em between columns
constexpr int steps_of_type = 12;

/// Lines of the back that are shown, and which begin a new row of the strip.
struct Shown {
    report::CardBackLine const* line = nullptr;
    bool rule = false; ///< a hairline above
};

class BackWriter {
  public:
    BackWriter(report::CardBack const& back, std::string const& caution, Setting const& setting,
               Measure& measure)
        : back_(back), caution_(caution), setting_(setting), measure_(measure), em_(setting.scale.em()),
          small_(setting.scale.small_em()), figures_(back.passing ? em_ : small_) {}

    /// Lays out the columns from `first` on, as many as there is room for.
    Picture write(std::vector<Shown> const& lines, std::size_t first) {
        picture_.size = setting_.size;
        choose_columns(lines, first);
        head();
        if (!lines.empty()) {
            table(lines);
        }
        tail();
        return std::move(picture_);
    }

    [[nodiscard]] std::size_t next() const { return next_; } ///< the first column that is not on it
    [[nodiscard]] bool fits() const { return y_ <= setting_.size.height - safe_edge && !too_wide_; }

  private:
    double wide(std::string const& words, Weight weight, double em) {
        return measure_.width(words, weight) * em;
    }

    void put(double x, std::string const& words, Weight weight, double em, Anchor anchor = Anchor::left) {
        if (!words.empty()) {
            picture_.marks.emplace_back(Text{{x, y_}, words, em, weight, anchor, wide(words, weight, em)});
        }
    }
    void rule(double line) {
        picture_.marks.emplace_back(Line{{safe_edge, y_}, {setting_.right(), y_}, line});
    }
    [[nodiscard]] double gap() const { return rule_gap * setting_.scale.capital; }
    void set_line() { y_ += setting_.level.pitch * setting_.scale.capital; }
    void small_line() { y_ += small_pitch * setting_.scale.small(); }

    /// How far from the left a line begins: beside the hole further in.
    [[nodiscard]] double left(double capital) const {
        return setting_.hole && y_ - capital < hole_depth ? hole_room : safe_edge;
    }

    void head() {
        y_ = safe_edge + rise_of_em * em_;
        bool first = true;
        auto const x = left(setting_.scale.capital);
        for (auto const& line : wrap(back_.title, Weight::semibold, (setting_.right() - x) / em_, measure_)) {
            y_ += std::exchange(first, false) ? 0 : title_pitch * setting_.scale.capital;
            put(x, line, Weight::semibold, em_);
        }
        for (auto const& words : back_.head) {
            if (x + wide(words, Weight::medium, small_) <= setting_.right() && !words.empty()) {
                small_line();
                put(x, words, Weight::medium, small_);
                break;
            }
        }
        y_ += fall_of_em * em_ + gap();
        y_ = setting_.hole ? std::max(y_, hole_depth + heavy_rule / 2) : y_;
        rule(heavy_rule);
    }

    /// The first column stays, so that each back can be read alone.
    void choose_columns(std::vector<Shown> const& lines, std::size_t first) {
        columns_ = {0};
        widths_ = {width_of(lines, 0)};
        auto used = widths_.front();
        auto const room = setting_.right() - safe_edge;
        for (next_ = first; next_ < back_.columns.size(); ++next_) {
            auto const width = width_of(lines, next_);
            if (used + column_air * em_ + width > room) {
                break;
            }
            used += column_air * em_ + width;
            columns_.push_back(next_);
            widths_.push_back(width);
        }
        too_wide_ = used > room || (columns_.size() == 1 && back_.columns.size() > 1);
        // What is left over stands between the columns.
        extra_ = columns_.size() > 1 ? (room - used) / static_cast<double>(columns_.size() - 1) : 0;
    }

    double width_of(std::vector<Shown> const& lines, std::size_t column) {
        auto width =
            column < back_.columns.size() ? wide(back_.columns[column], Weight::semibold, small_) : 0;
        for (auto const& shown : lines) {
            if (column < shown.line->cells.size()) {
                width = std::max(width, wide(shown.line->cells[column], Weight::semibold, figures_));
            }
        }
        return width;
    }

    void table(std::vector<Shown> const& lines) {
        y_ += gap() + rise_of_em * small_;
        cells(back_.columns, small_, Weight::semibold);
        for (auto const& shown : lines) {
            if (shown.rule) {
                y_ += fall_of_em * em_ + 0.15 * setting_.scale.capital;
                rule(hair_rule);
            }
            if (!shown.line->label.empty()) {
                label(shown.line->label);
            }
            back_.passing ? set_line() : small_line();
            cells(shown.line->cells, figures_, Weight::semibold);
        }
        if (back_.passing) {
            pencil();
        }
    }

    void label(std::string const& text) {
        y_ += 0.25 * setting_.scale.capital;
        for (auto const& line :
             wrap(text, Weight::medium, (setting_.right() - safe_edge) / small_, measure_)) {
            small_line();
            put(safe_edge, line, Weight::medium, small_);
        }
    }

    /// Figures are flush right in their columns.
    void cells(std::vector<std::string> const& texts, double em, Weight weight) {
        auto x = safe_edge;
        for (std::size_t i = 0; i < columns_.size(); ++i) {
            x += widths_[i] + (i > 0 ? column_air * em_ + extra_ : 0);
            if (columns_[i] < texts.size()) {
                put(x, texts[columns_[i]], i == 0 && back_.passing ? Weight::medium : weight, em,
                    Anchor::right);
            }
        }
    }

    void pencil() {
        y_ += 0.4 * setting_.scale.capital;
        set_line();
        put(safe_edge, "swum", Weight::medium, small_);
        auto x = safe_edge + std::max(widths_.front(), wide("swum ", Weight::medium, small_));
        x = safe_edge + widths_.front();
        for (std::size_t i = 1; i < columns_.size(); ++i) {
            x += column_air * em_ + extra_ + widths_[i];
            auto const begin = std::max(x - widths_[i], safe_edge + wide("swum ", Weight::medium, small_));
            picture_.marks.emplace_back(Line{{begin, y_}, {x, y_}, hair_rule});
        }
        y_ += fall_of_em * em_;
    }

    void tail() {
        auto const line = [&](std::string const& text, Weight weight) {
            for (auto const& part : wrap(text, weight, (setting_.right() - safe_edge) / small_, measure_)) {
                small_line();
                put(safe_edge, part, weight, small_);
            }
        };
        if (back_.passing || !back_.lines.empty()) {
            y_ += gap() + fall_of_em * em_;
            rule(heavy_rule);
        }
        if (!back_.when_short.empty()) {
            line("short of time", Weight::semibold);
            for (auto const& text : back_.when_short) {
                line(text, Weight::medium);
            }
        }
        line(caution_, Weight::semibold);
        y_ += fall_of_em * small_;
    }

    static constexpr double title_pitch = 1.45;

    report::CardBack const& back_;
    std::string const& caution_;
    Setting const& setting_;
    Measure& measure_;
    double em_;
    double small_;
    double figures_; ///< em: passing times are read in the water, the rest is not
    Picture picture_;
    double y_ = 0;
    std::vector<std::size_t> columns_;
    std::vector<double> widths_;
    double extra_ = 0;
    std::size_t next_ = 1;
    bool too_wide_ = false;
};

/// Where the front's strip has rows; without one, so far apart that few lines are left.
Distance row_of(report::CardBack const& back, std::optional<Strip> const& strip) {
    if (!back.passing || back.lines.empty()) {
        return {};
    }
    if (strip) {
        return strip->row;
    }
    std::int64_t each = 1;
    for (std::int64_t const step : {2, 4, 5, 10, 20, 50}) {
        each = back.lines.size() > most_passings * static_cast<std::size_t>(each) ? step : each;
    }
    return back.lines.front().at * each;
}

std::vector<Shown> shown_lines(report::CardBack const& back, std::optional<Strip> const& strip) {
    std::vector<Shown> shown;
    auto const row = row_of(back, strip);
    bool const few = row.zero() || back.lines.size() <= most_passings;
    bool rule = false;
    for (auto const& line : back.lines) {
        bool const ends_row = strip && !row.zero() && Distance::divides(row, line.at);
        if (few || Distance::divides(row, line.at) || &line == &back.lines.back()) {
            shown.push_back({&line, rule && few});
            rule = false;
        }
        rule = rule || ends_row;
    }
    return shown;
}

std::vector<Picture> at_size(report::Card const& card, std::vector<Shown> const& lines,
                             Setting const& setting, Measure& measure) {
    std::vector<Picture> pictures;
    std::size_t next = 1;
    do {
        BackWriter writer{*card.back, card.caution, setting, measure};
        auto picture = writer.write(lines, next);
        if (!writer.fits() || (writer.next() == next && next < card.back->columns.size())) {
            return {};
        }
        next = writer.next();
        pictures.push_back(std::move(picture));
    } while (next < card.back->columns.size());
    return pictures;
}

} // namespace

std::vector<Picture> backs_of(report::Card const& card, std::optional<Strip> const& strip, Size const& size,
                              double distance, bool hole, Measure& measure) {
    auto const least = height_of_arc(distance, small_arc);
    auto const most = height_of_arc(distance, set_arc * 1.15);
    auto lines = shown_lines(*card.back, strip);
    std::vector<Picture> best;
    for (int step = steps_of_type; step >= 0; --step) {
        auto const capital =
            least / small_of_capital + (most - least / small_of_capital) * step / steps_of_type;
        Setting const setting{size, {capital}, levels[0], hole, false, true};
        auto pictures = at_size(card, lines, setting, measure);
        if (!pictures.empty() && (best.empty() || pictures.size() < best.size())) {
            best = std::move(pictures);
        }
    }
    for (auto& picture : best) {
        frame(picture, hole, true);
    }
    return best;
}

} // namespace lengthwise::cards
