#include "report/table.hpp"

#include "report/width.hpp"

#include <algorithm>
#include <limits>

namespace lengthwise::report {
namespace {

constexpr std::size_t between = 2;
constexpr auto unlimited = std::numeric_limits<std::size_t>::max();

void trim(std::string& line) {
    line.erase(line.find_last_not_of(' ') + 1);
}

} // namespace

Table::Table(std::vector<Column> columns)
    : columns_(std::move(columns)), widest_(columns_.size()), narrowed_(columns_.size(), unlimited) {}

void Table::row(std::vector<Cell> const& row, Ink ink) {
    rows_.push_back({placed_.size(), static_cast<std::uint32_t>(row.size()), ink});
    for (std::size_t i = 0; i < row.size(); ++i) {
        auto const& [text, hang] = row[i];
        widest_[i].whole = std::max(widest_[i].whole, cells(text));
        widest_[i].hang = std::max(widest_[i].hang, cells(hang));
        placed_.push_back({static_cast<std::uint32_t>(text.size()), static_cast<std::uint32_t>(hang.size())});
        bytes_.append(text).append(hang);
    }
}

void Table::gap() {
    row({});
}

std::vector<Table::Extent> Table::extents() const {
    auto extents = widest_;
    for (std::size_t i = 0; i < extents.size(); ++i) {
        if (extents[i].shown()) {
            extents[i].whole = std::max(std::min(extents[i].whole, narrowed_[i]), cells(columns_[i].head));
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

void Table::add_cell(Line& line, std::string_view text, std::string_view hang) const {
    auto const i = line.column++;
    auto const& extent = line.extents[i];
    if (!extent.shown()) {
        return;
    }
    line.text.append(line.text.empty() ? 0 : between, ' ');
    line.text += columns_[i].figures ? pad_left(text, extent.whole) + pad_right(hang, extent.hang)
                                     : pad_right(cut(text, narrowed_[i], ascii_), extent.cells());
}

std::string Table::heads(std::vector<Extent> const& extents) const {
    Line line{extents};
    for (auto const& column : columns_) {
        add_cell(line, column.head, {});
    }
    trim(line.text);
    return line.text;
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
    auto const total = this->width();
    if (total > width) {
        auto const own = extents()[column].whole;
        narrowed_[column] = std::max(least, own - std::min(own, total - width));
        ascii_ = ascii;
    }
}

std::string Table::text(Paint const& paint) const {
    auto const extents = this->extents();
    std::string text;
    for (auto const& head : {groups(extents), heads(extents)}) {
        text += head.empty() ? "" : paint(Ink::dim, head) + "\n";
    }
    std::string_view bytes = bytes_;
    for (auto const& row : rows_) {
        Line line{extents};
        for (auto i = row.first; i < row.first + row.count; ++i) {
            auto const [size, hang] = placed_[i];
            add_cell(line, bytes.substr(0, size), bytes.substr(size, hang));
            bytes.remove_prefix(size + hang);
        }
        trim(line.text);
        text.append(paint(row.ink, line.text)).append("\n");
    }
    return text;
}

} // namespace lengthwise::report
