#include "report/deck_table.hpp"

#include "report/fold_set.hpp"
#include "report/width.hpp"

#include <algorithm>
#include <utility>

namespace lengthwise::report {
namespace {

constexpr std::string_view gap = "   ";
constexpr std::string_view small_gap = "  "; ///< between figures of one kind
constexpr std::size_t narrow = 24;           ///< a set narrower than this takes the room of `rep`

std::string trimmed(std::string line) {
    line.erase(line.find_last_not_of(' ') + 1);
    return line;
}

std::string numbered(DeckLine const& line) {
    return line.number + (line.changed ? "*" : " ");
}

} // namespace

DeckTable::DeckTable(std::vector<DeckBlock> blocks, std::vector<std::string> heads, std::string unit,
                     std::size_t width)
    : blocks_(std::move(blocks)), heads_(std::move(heads)), unit_(std::move(unit)), width_(width),
      whole_(heads_.size()) {
    measure();
    if (set_room() < narrow) {
        rep_ = 0;
    }
}

void DeckTable::measure() {
    auto const widen = [](std::size_t& column, std::string const& text) {
        column = std::max(column, cells(text));
    };
    for (auto const& block : blocks_) {
        for (auto const& line : block.lines) {
            widen(number_, numbered(line));
            widen(rep_, line.rep);
            widen(lengths_, line.lengths);
            widen(set_, line.set);
            for (std::size_t i = 0; i < line.so_far.size(); ++i) {
                widen(whole_[i], line.so_far[i].whole);
                widen(hang_, line.so_far[i].hang);
            }
        }
    }
    widen(rep_, rep_ > 0 ? "rep" : "");
    widen(lengths_, lengths_ > 0 ? rep_ > 0 ? "line" : "lengths" : "");
    for (std::size_t i = 0; i < heads_.size(); ++i) {
        widen(whole_[i], unit_);
        widen(whole_[i], heads_[i]);
    }
}

std::size_t DeckTable::counts() const {
    return number_ + (rep_ > 0 ? small_gap.size() + rep_ : 0) +
           (lengths_ > 0 ? small_gap.size() + lengths_ : 0);
}

std::size_t DeckTable::set_room() const {
    auto left = counts() + gap.size();
    for (auto const whole : whole_) {
        left += gap.size() + whole + hang_;
    }
    return width_ > left ? width_ - left : 0;
}

bool DeckTable::has_room_for_sets(std::size_t least) const {
    return set_room() >= std::min(least, set_);
}

std::string DeckTable::figures(DeckLine const& line) const {
    auto text = pad_left(numbered(line), number_);
    if (rep_ > 0) {
        text.append(small_gap).append(pad_left(line.rep, rep_));
    }
    if (lengths_ > 0) {
        text.append(small_gap).append(pad_left(line.lengths, lengths_));
    }
    for (std::size_t i = 0; i < line.so_far.size(); ++i) {
        auto const& figure = line.so_far[i];
        text.append(gap).append(pad_left(figure.whole, whole_[i])).append(pad_right(figure.hang, hang_));
    }
    return text;
}

/// "lengths" stands over both of its columns, a lane over its own.
std::string DeckTable::heads(Paint const& paint) const {
    auto over = pad_left(rep_ > 0 ? "lengths" : "", counts());
    DeckLine under;
    under.rep = "rep";
    under.lengths = rep_ > 0 ? "line" : "lengths";
    for (std::size_t i = 0; i < heads_.size(); ++i) {
        over.append(gap).append(pad_left(heads_[i], whole_[i])).append(hang_, ' ');
        under.so_far.push_back({unit_, {}});
    }
    auto const first = trimmed(over);
    return (first.empty() ? "" : paint(Ink::dim, first) + "\n") + paint(Ink::dim, trimmed(figures(under))) +
           "\n";
}

std::string DeckTable::rows(DeckLine const& line, Paint const& paint) const {
    auto const left = figures(line).append(gap);
    std::string text;
    for (auto const& set : fold_set(line.set, set_room())) {
        text += (text.empty() ? left : std::string(cells(left), ' ')) +
                paint(line.swum ? Ink::bold : Ink::plain, set) + "\n";
    }
    return text;
}

std::string DeckTable::text(Paint const& paint) const {
    auto text = heads(paint);
    for (auto const& block : blocks_) {
        text += "\n";
        text += block.heading.empty() ? "" : fold(block.heading, width_) + "\n";
        for (auto const& line : block.lines) {
            text += rows(line, paint);
        }
    }
    return text;
}

} // namespace lengthwise::report
