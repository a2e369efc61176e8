#include "cards/row_writer.hpp"

#include <algorithm>
#include <utility>

namespace lengthwise::cards {
namespace {

using report::CardRow;

/// Beside figures words are broken only where they have as many em.
constexpr double least_room = 4;

} // namespace

void RowWriter::write(CardRow const& row, bool counts) {
    lines_.set_line();
    lines_.line().strip = row.longest;
    lines_.leave_time();
    if (!row.count.empty()) {
        lines_.put(lines_.columns().count_right, row.count, Weight::semibold, em_, Anchor::right);
        lines_.put(lines_.columns().times, "×", Weight::semibold, em_);
    }
    auto x = std::max(lines_.columns().words, amounts(row));
    if (!lines_.line().texts.empty() &&
        lines_.line().texts.back().right() > lines_.columns().recovery_right) {
        lines_.set_line(); // figures where lengths should stand
        x = lines_.columns().words;
    }
    auto const first = lines_.body.lines.size() - 1;
    auto const below = words(row, x);
    if (lines_.setting().level.lengths) {
        lines_.lengths(lines_.body.lines[first], row.lengths, counts);
    }
    lines_.pieces(below, lines_.columns().text);
    lines_.notes(row.notes, lines_.columns().text);
}

/// Gives where words may begin behind them.
double RowWriter::amounts(CardRow const& row) {
    double x = lines_.columns().amount;
    auto const comma = lines_.measure().width(", ", Weight::semibold) * em_;
    std::string text;
    double end = x;
    for (std::size_t i = 0; i < row.amount.size(); ++i) {
        auto const wide = lines_.width(row.amount[i], Weight::semibold, em_);
        if (!text.empty() && end + comma + wide + comma > lines_.columns().recovery_right) {
            lines_.put(x, text + ",", Weight::semibold, em_);
            lines_.set_line();
            text.clear();
            end = x;
        }
        end += wide + (text.empty() ? 0 : comma);
        text += (text.empty() ? "" : ", ") + row.amount[i];
    }
    if (text.empty()) {
        return x;
    }
    end = lines_.put(x, text, Weight::semibold, em_);
    bool const in_column = row.amount.size() == 1 && end - x <= lines_.columns().widest_amount + 0.001;
    return in_column ? x : end + figures_air * em_;
}

/// As many classes as there is room for, whole, on the line; gives what is left for below.
std::vector<Piece> RowWriter::words(CardRow const& row, double x) {
    auto classes = row.what;
    std::vector<Piece> below;
    auto const room = lines_.columns().recovery_right - x;
    auto const too_wide = [&] {
        return !classes.empty() && lines_.width(classes.front(), Weight::medium, em_) > room;
    };
    if (too_wide() && !row.parts.empty() && lines_.width(row.plain_what, Weight::medium, em_) <= room) {
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
            if (lines_.width(longer, Weight::medium, em_) > room) {
                break;
            }
            text = longer;
        }
        end = lines_.put(x, text, Weight::medium, em_);
    }
    for (; taken < classes.size(); ++taken) {
        below.push_back({classes[taken], Weight::medium});
    }
    right(row, end, below);
    return below;
}

/// A first class too wide for its place, on lines of its own; gives the last one's end.
double RowWriter::wrapped(std::string const& text, double x) {
    bool beside = lines_.columns().recovery_right - x > least_room * em_;
    auto const at = beside ? x : lines_.columns().text;
    auto end = at;
    for (auto const& part :
         wrap(text, Weight::medium, (lines_.columns().recovery_right - at) / em_, lines_.measure())) {
        if (!std::exchange(beside, false)) {
            lines_.set_line();
        }
        end = lines_.put(at, part, Weight::medium, em_);
    }
    return end;
}

/// Halves and recovery beside the words, where there is room; the rest goes below.
void RowWriter::right(CardRow const& row, double end, std::vector<Piece>& below) {
    auto const edge = lines_.columns().recovery_right;
    auto const wide = lines_.width(row.recovery, Weight::semibold, small_em_);
    if (!row.halves.empty() && !(below.empty() && put_halves(row, end))) {
        clashed_ = true;
    }
    bool const recovered = end + words_air * em_ + wide <= edge;
    if (recovered) {
        lines_.put(edge, row.recovery, Weight::semibold, small_em_, Anchor::right);
    }
    add_rest(row, recovered, below);
}

/// Left of the recovery, if the line still has room for that then.
bool RowWriter::put_halves(CardRow const& row, double end) {
    auto const air = words_air * em_;
    auto const recovery = lines_.width(row.recovery, Weight::semibold, small_em_);
    auto const edge = lines_.columns().recovery_right - (row.recovery.empty() ? 0 : recovery + air);
    bool const fits = end + air + lines_.width(row.halves, Weight::medium, small_em_) <= edge;
    if (!fits || !lines_.body.halves) {
        return false;
    }
    lines_.put(edge, row.halves, Weight::medium, small_em_, Anchor::right);
    return true;
}

void RowWriter::add_rest(CardRow const& row, bool recovered, std::vector<Piece>& below) const {
    auto const add = [&](std::string const& words, Weight weight) {
        if (!words.empty()) {
            below.push_back({words, weight});
        }
    };
    add(row.split, Weight::medium);
    add(recovered ? std::string{} : row.recovery, Weight::semibold);
    for (auto const& how : row.how) {
        add(how, Weight::medium);
    }
    add(lines_.setting().level.hand ? row.hand : std::string{}, Weight::medium);
}

} // namespace lengthwise::cards
