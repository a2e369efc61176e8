#include "report/table.hpp"

#include "report/width.hpp"

#include <algorithm>

namespace lengthwise::report {
namespace {

constexpr std::size_t between = 2;

void trim(std::string& line) {
    line.erase(line.find_last_not_of(' ') + 1);
}

} // namespace

void Table::row(std::vector<Cell> cells, Ink ink) {
    rows_.push_back({std::move(cells), ink});
}

void Table::gap() {
    rows_.emplace_back();
}

std::vector<Table::Extent> Table::extents() const {
    std::vector<Extent> extents(columns_.size());
    for (auto const& row : rows_) {
        for (std::size_t i = 0; i < row.cells.size(); ++i) {
            extents[i].whole = std::max(extents[i].whole, cells(row.cells[i].text));
            extents[i].hang = std::max(extents[i].hang, cells(row.cells[i].hang));
        }
    }
    for (std::size_t i = 0; i < extents.size(); ++i) {
        if (extents[i].shown()) {
            extents[i].whole = std::max(extents[i].whole, cells(columns_[i].head));
        }
    }
    make_room_for_groups(extents);
    return extents;
}

void Table::make_room_for_groups(std::vector<Extent>& extents) const {
    for (std::size_t i = 0; i < extents.size(); ++i) {
        auto const first = i + 1 - columns_[i].span;
        auto const block = cells_of(extents, first, i + 1);
        auto const wanted = cells(columns_[i].group);
        extents[first].whole += wanted > block ? wanted - block : 0;
    }
}

std::size_t Table::cells_of(std::vector<Extent> const& extents, std::size_t first, std::size_t end) {
    std::size_t total = 0;
    for (auto i = first; i < end; ++i) {
        if (extents[i].shown()) {
            total += extents[i].cells() + (total == 0 ? 0 : between);
        }
    }
    return total;
}

std::string Table::line(std::vector<Cell> const& cells, std::vector<Extent> const& extents) const {
    std::string line;
    for (std::size_t i = 0; i < extents.size(); ++i) {
        if (!extents[i].shown()) {
            continue;
        }
        auto const& cell = i < cells.size() ? cells[i] : Cell{};
        line.append(line.empty() ? 0 : between, ' ');
        line += columns_[i].figures
                    ? pad_left(cell.text, extents[i].whole) + pad_right(cell.hang, extents[i].hang)
                    : pad_right(cell.text, extents[i].cells());
    }
    trim(line);
    return line;
}

std::string Table::groups(std::vector<Extent> const& extents) const {
    std::string line;
    for (std::size_t i = 0; i < extents.size(); ++i) {
        if (!columns_[i].group.empty()) {
            line += pad_left(columns_[i].group, cells_of(extents, 0, i + 1) - cells(line));
        }
    }
    return line;
}

std::size_t Table::width() const {
    return cells_of(extents(), 0, columns_.size());
}

void Table::fit(std::size_t column, std::size_t width, bool ascii, std::size_t least) {
    auto const own = extents()[column].whole;
    auto const total = this->width();
    if (total <= width) {
        return;
    }
    auto const room = std::max(least, own - std::min(own, total - width));
    for (auto& row : rows_) {
        if (column < row.cells.size()) {
            row.cells[column].text = cut(row.cells[column].text, room, ascii);
        }
    }
}

std::string Table::text(Paint const& paint) const {
    auto const extents = this->extents();
    std::vector<Cell> heads;
    for (auto const& column : columns_) {
        heads.push_back({column.head, {}});
    }
    std::string text;
    for (auto const& head : {groups(extents), line(heads, extents)}) {
        text += head.empty() ? "" : paint(Ink::dim, head) + "\n";
    }
    for (auto const& row : rows_) {
        text += paint(row.ink, line(row.cells, extents)) + "\n";
    }
    return text;
}

} // namespace lengthwise::report
