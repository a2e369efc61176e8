#pragma once

#include "report/deck_lines.hpp"
#include "report/paint.hpp"

#include <algorithm>
#include <cstddef>
#include <string>
#include <vector>

namespace lengthwise::report {

/// What stands over a deck's columns.
struct DeckHeads {
    std::vector<std::string> lanes{}; ///< over what each lane has of its own; "" where there is one lane only
    std::string clock{};              ///< "clock"
    std::string unit{};               ///< "m"
};

/// The table of a deck: figures flush right on the left, then the set, which alone wraps.
/// Three blanks between what is read apart, an empty line before each block. A column that
/// nothing fills vanishes.
class DeckTable {
  public:
    DeckTable(std::vector<DeckBlock> blocks, DeckHeads heads, std::size_t width);

    /// Do sets have `least` cells, or as many as the longest needs?
    [[nodiscard]] bool has_room_for_sets(std::size_t least) const { return set_room() >= sets_need(least); }

    /// What has_room_for_sets asks for, and what the lanes take beside the sets. Together with others a lane
    /// takes no less than alone, and the sets of several need no less than those of one.
    [[nodiscard]] std::size_t sets_need(std::size_t least) const { return std::min(least, set_); }
    [[nodiscard]] std::size_t lanes_take() const;

    /// Lines with their line feeds.
    [[nodiscard]] std::string text(Paint const& paint) const;

  private:
    void measure();
    [[nodiscard]] bool has_clock() const;
    [[nodiscard]] std::string over_so_far(std::size_t lane) const;
    [[nodiscard]] std::string under_so_far(std::size_t lane) const;
    [[nodiscard]] std::size_t set_room() const;
    [[nodiscard]] std::size_t counts() const; ///< cells of both columns of lengths
    [[nodiscard]] std::string figures(DeckLine const& line, Paint const& paint) const;
    [[nodiscard]] std::string heads(Paint const& paint) const;
    [[nodiscard]] std::string rows(DeckLine const& line, Paint const& paint) const;

    std::vector<DeckBlock> blocks_;
    DeckHeads heads_;
    std::size_t width_;

    // cells of the columns
    std::size_t number_ = 0;         ///< with its mark
    std::vector<std::size_t> clock_; ///< of each lane; all 0 where the clock does not run
    std::size_t rep_ = 0;
    std::size_t lengths_ = 0;
    std::vector<std::size_t> whole_; ///< of each running total …
    std::size_t hang_ = 0;           ///< … and of its fraction
    std::size_t set_ = 0;            ///< of the longest set on one line
};

} // namespace lengthwise::report
