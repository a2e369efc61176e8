#include "report/deck_table.hpp"

#include "report/fold_set.hpp"
#include "report/width.hpp"

#include <algorithm>
#include <utility>

namespace lengthwise::report {
namespace {

constexpr std::string_view gap = "   ";
constexpr std::string_view small_gap = "  ";        ///< between figures of one kind
constexpr std::size_t narrow = 24;                  ///< a set narrower than this takes the room of `rep` …
constexpr std::size_t too_narrow = 16;              ///< … and of all lengths
constexpr std::string_view all_lengths = "lengths"; ///< over the only column of them
constexpr std::size_t hang = 2;                     ///< of what stands below a set

std::string trimmed(std::string line) {
    line.erase(line.find_last_not_of(' ') + 1);
    return line;
}

std::string numbered(DeckLine const& line) {
    return line.number + (line.changed ? "*" : " ");
}

} // namespace

DeckTable::DeckTable(std::vector<DeckBlock> blocks, DeckHeads heads, std::size_t width)
    : blocks_(std::move(blocks)), heads_(std::move(heads)), width_(width), clock_(heads_.lanes.size()),
      whole_(heads_.lanes.size()) {
    measure();
    if (set_room() < narrow && rep_ > 0) {
        rep_ = 0;
        lengths_ = std::max(lengths_, cells(all_lengths));
    }
    if (set_room() < too_narrow) {
        lengths_ = 0;
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
            for (std::size_t i = 0; i < line.clock.size(); ++i) {
                widen(clock_[i], line.clock[i]);
            }
            for (std::size_t i = 0; i < line.so_far.size(); ++i) {
                widen(whole_[i], line.so_far[i].whole);
                widen(hang_, line.so_far[i].hang);
            }
        }
    }
    widen(rep_, rep_ > 0 ? "rep" : "");
    widen(lengths_, lengths_ > 0 ? rep_ > 0 ? "line" : std::string{all_lengths} : "");
    for (std::size_t i = 0; i < whole_.size(); ++i) {
        widen(clock_[i], has_clock() ? heads_.lanes[i] : "");
        widen(clock_[i], has_clock() ? heads_.clock : "");
        widen(whole_[i], over_so_far(i));
        widen(whole_[i], under_so_far(i));
    }
}

bool DeckTable::has_clock() const {
    return std::any_of(clock_.begin(), clock_.end(), [](std::size_t column) { return column > 0; });
}

/// Beside clocks, which are headed "lane 1", running totals have the number only.
std::string DeckTable::over_so_far(std::size_t lane) const {
    return has_clock() ? "" : heads_.lanes[lane];
}

std::string DeckTable::under_so_far(std::size_t lane) const {
    auto const& head = heads_.lanes[lane];
    return has_clock() && !head.empty() ? head.substr(head.find(' ') + 1) + " " + heads_.unit : heads_.unit;
}

std::size_t DeckTable::lanes_take() const {
    std::size_t room = 0;
    for (auto const column : clock_) {
        room += column > 0 ? small_gap.size() + column : 0;
    }
    for (auto const whole : whole_) {
        room += gap.size() + whole + hang_;
    }
    return room;
}

std::size_t DeckTable::counts() const {
    return (rep_ > 0 ? small_gap.size() + rep_ : 0) + (lengths_ > 0 ? small_gap.size() + lengths_ : 0);
}

std::size_t DeckTable::set_room() const {
    auto const left = number_ + lanes_take() + counts() + gap.size();
    return width_ > left ? width_ - left : 0;
}

/// Clocks are bold, as they are what a coach looks for first.
std::string DeckTable::figures(DeckLine const& line, Paint const& paint) const {
    auto text = pad_left(numbered(line), number_);
    for (std::size_t i = 0; has_clock() && i < clock_.size(); ++i) {
        auto const clock = i < line.clock.size() ? line.clock[i] : std::string{};
        text.append(small_gap).append(clock_[i] - cells(clock), ' ');
        text.append(clock.empty() ? "" : paint(Ink::bold, clock));
    }
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
    DeckLine under;
    under.rep = "rep";
    under.lengths = rep_ > 0 ? "line" : std::string{all_lengths};
    auto over = std::string(number_, ' ');
    for (std::size_t i = 0; has_clock() && i < clock_.size(); ++i) {
        over.append(small_gap).append(pad_left(heads_.lanes[i], clock_[i]));
        under.clock.push_back(heads_.clock);
    }
    over.append(pad_left(rep_ > 0 ? "lengths" : "", counts()));
    for (std::size_t i = 0; i < whole_.size(); ++i) {
        over.append(gap).append(pad_left(over_so_far(i), whole_[i])).append(hang_, ' ');
        under.so_far.push_back({under_so_far(i), {}});
    }
    auto const first = trimmed(over);
    return (first.empty() ? "" : paint(Ink::dim, first) + "\n") +
           paint(Ink::dim, trimmed(figures(under, Paint{}))) + "\n";
}

std::string DeckTable::rows(DeckLine const& line, Paint const& paint) const {
    auto const left = figures(line, paint).append(gap);
    auto const indent = cells(figures(line, Paint{})) + gap.size();
    std::string text;
    for (auto const& set : fold_set(line.set, set_room())) {
        text += (text.empty() ? left : std::string(indent, ' ')) +
                paint(line.swum ? Ink::bold : Ink::plain, set) + "\n";
    }
    for (auto const& below : line.below) {
        for (auto const& part : fold_set(below, set_room() > hang ? set_room() - hang : 0)) {
            text += std::string(indent + hang, ' ') + part + "\n";
        }
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
