#include "cards/line_writer.hpp"

#include <algorithm>
#include <utility>

namespace lengthwise::cards {

void LineWriter::begin(double advance, double em) {
    BodyLine line;
    line.advance = advance;
    line.rise = rise_of_em * em;
    line.fall = fall_of_em * em;
    line.cut = std::exchange(cut, Cut::torn);
    line.bars = bars;
    line.section = section;
    line.clock = std::exchange(clock, nullptr);
    line.swum_before = swum;
    body.lines.push_back(std::move(line));
}

void LineWriter::set_line() {
    begin(setting_.level.pitch * setting_.scale.capital, em_);
    line().of_set = true;
}

void LineWriter::small_line() {
    begin(small_pitch * setting_.scale.small(), small_em_);
}

/// Gives the text's right end.
double LineWriter::put(double x, std::string const& words, Weight weight, double em, Anchor anchor) {
    if (words.empty()) {
        return x;
    }
    auto const wide = width(words, weight, em);
    line().texts.push_back({{x, 0}, words, em, weight, anchor, wide});
    return anchor == Anchor::left ? x + wide : x;
}

/// Blanks before the words are room, not text.
double LineWriter::put_behind(double x, std::string const& words) {
    auto const begin = std::min(words.find_first_not_of(' '), words.size());
    auto const blank = width(" ", Weight::medium, small_em_) * static_cast<double>(begin);
    return put(x + blank, words.substr(begin), Weight::medium, small_em_);
}

void LineWriter::leave_time() {
    if (setting_.clock_column && line().clock != nullptr) {
        put(safe_edge, *line().clock, Weight::medium, small_em_);
    }
}

void LineWriter::lengths(BodyLine& at, std::string const& lengths, bool counts) {
    if (lengths.empty()) {
        return;
    }
    auto const weight = counts ? Weight::semibold : Weight::medium;
    at.texts.push_back(
        {{columns().right, 0}, lengths, small_em_, weight, Anchor::right, width(lengths, weight, small_em_)});
}

void LineWriter::pieces(std::vector<Piece> const& pieces, double x) {
    for (auto const& placed : flow_pieces(pieces, (columns().right - x) / small_em_, measure_)) {
        small_line();
        place(placed, x);
    }
}

void LineWriter::place(PlacedLine const& placed, double x) {
    for (auto const& part : placed) {
        line().texts.push_back({{x + part.at * small_em_, 0},
                                part.piece.words,
                                small_em_,
                                part.piece.weight,
                                Anchor::left,
                                part.width * small_em_});
    }
}

void LineWriter::notes(std::vector<std::string> const& notes, double x) {
    for (auto const& note : notes) {
        for (auto const& text :
             wrap_evenly(note, Weight::medium, (columns().right - x) / small_em_, measure_)) {
            small_line();
            line().note = true;
            put(x, text, Weight::medium, small_em_);
        }
    }
}

} // namespace lengthwise::cards
