#pragma once

#include "report/deck_lines.hpp"
#include "report/paint.hpp"

#include <cstddef>
#include <string>
#include <vector>

namespace lengthwise::report {

/// The table of a deck: figures flush right on the left, then the set, which alone wraps.
/// Three blanks between what is read apart, an empty line before each block. A column that
/// nothing fills vanishes.
class DeckTable {
  public:
    /// `heads`: over the running totals, one a lane; "" where there is one lane only.
    DeckTable(std::vector<DeckBlock> blocks, std::vector<std::string> heads, std::string unit,
              std::size_t width);

    /// Do sets have `least` cells, or as many as the longest needs?
    [[nodiscard]] bool has_room_for_sets(std::size_t least) const;

    /// Lines with their line feeds.
    [[nodiscard]] std::string text(Paint const& paint) const;

  private:
    void measure();
    [[nodiscard]] std::size_t set_room() const;
    [[nodiscard]] std::size_t counts() const; ///< cells of row number and lengths
    [[nodiscard]] std::string figures(DeckLine const& line) const;
    [[nodiscard]] std::string heads(Paint const& paint) const;
    [[nodiscard]] std::string rows(DeckLine const& line, Paint const& paint) const;

    std::vector<DeckBlock> blocks_;
    std::vector<std::string> heads_;
    std::string unit_;
    std::size_t width_;

    // cells of the columns
    std::size_t number_ = 0; ///< with its mark
    std::size_t rep_ = 0;
    std::size_t lengths_ = 0;
    std::vector<std::size_t> whole_; ///< of each running total …
    std::size_t hang_ = 0;           ///< … and of its fraction
    std::size_t set_ = 0;            ///< of the longest set on one line
};

} // namespace lengthwise::report
