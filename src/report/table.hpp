#pragma once

#include "report/paint.hpp"

#include <cstddef>
#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

namespace lengthwise::report {

/// A cell's text, already safe to print. A figure's fraction hangs to the right of its
/// column, so that whole figures stand under each other.
struct Cell {
    std::string text{};
    std::string hang{};
};

struct Column {
    std::string head{};
    bool figures = true;  ///< flush right; words stand flush left
    std::string group{};  ///< a second head, flush right over this and the columns before it
    std::size_t span = 1; ///< how many the group stands over
};

/// Words left, figures right, two blanks between columns, no lines or boxes. A column
/// that no row fills vanishes. Rows are kept as bytes side by side, so that a million
/// of them cost little more than what is printed.
class Table {
  public:
    explicit Table(std::vector<Column> columns);

    /// Missing cells at the end are empty.
    void row(std::vector<Cell> const& cells, Ink ink = Ink::plain);
    /// An empty line.
    void gap();

    /// Cells that the widest line takes.
    [[nodiscard]] std::size_t width() const;

    /// Cuts the longest words of one column so that the table fits, to `least` cells at least.
    void fit(std::size_t column, std::size_t width, bool ascii, std::size_t least = 8);

    /// Lines with their line feeds, heads dim.
    [[nodiscard]] std::string text(Paint const& paint) const;

  private:
    struct Row {
        std::size_t first = 0; ///< of `placed_`
        std::uint32_t count = 0;
        Ink ink = Ink::plain;
    };
    struct Placed {
        std::uint32_t text = 0; ///< bytes
        std::uint32_t hang = 0;
    };
    struct Extent {
        std::size_t whole = 0; ///< cells of the widest text
        std::size_t hang = 0;
        [[nodiscard]] std::size_t cells() const { return whole + hang; }
        [[nodiscard]] bool shown() const { return cells() > 0; }
    };
    /// A line under construction.
    struct Line {
        std::vector<Extent> const& extents;
        std::string text{};
        std::size_t column = 0;
    };
    [[nodiscard]] std::vector<Extent> extents() const;
    void make_room_for_groups(std::vector<Extent>& extents) const;
    /// Cells of some columns side by side.
    [[nodiscard]] static std::size_t cells_of(std::vector<Extent> const& extents, std::size_t first,
                                              std::size_t end);
    void add_cell(Line& line, std::string_view text, std::string_view hang) const;
    [[nodiscard]] std::string heads(std::vector<Extent> const& extents) const;
    [[nodiscard]] std::string groups(std::vector<Extent> const& extents) const;

    std::vector<Column> columns_;
    std::vector<Extent> widest_;        ///< of the rows so far
    std::vector<std::size_t> narrowed_; ///< a column's room after `fit`
    bool ascii_ = false;                ///< how it is cut
    std::vector<Row> rows_;
    std::vector<Placed> placed_;
    std::string bytes_; ///< of all cells, one after the other
};

} // namespace lengthwise::report
