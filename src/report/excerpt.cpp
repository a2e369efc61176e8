#include "report/excerpt.hpp"

#include "report/width.hpp"

#include <algorithm>

namespace lengthwise::report {

namespace {

constexpr std::size_t tab_stop = 8;

/// Where the shown part begins, in bytes: a third of the width before the mark, earlier where
/// the text ends before the width does, at a word.
std::size_t first_byte(std::string_view text, std::size_t mark, std::size_t width) {
    auto const before = cells(text.substr(0, mark));
    if (before <= width / 3) {
        return 0;
    }
    auto const from = bytes_within(text, std::min(before - width / 3, cells(text) - width));
    auto const blank = text.substr(0, mark).find(' ', from);
    auto const word = blank == std::string_view::npos ? from : text.find_first_not_of(' ', blank);
    return std::min(word, mark);
}

/// Where it ends: as far as the width allows, at a blank behind the mark if there is one.
std::size_t last_byte(std::string_view text, std::size_t begin, std::size_t mark_end, std::size_t width) {
    auto const end = begin + bytes_within(text.substr(begin), width);
    if (end == text.size() || text[end] == ' ') {
        return end;
    }
    auto const blank = text.substr(0, end).rfind(' ');
    return blank == std::string_view::npos || blank < std::max(mark_end, begin + 1) ? end : blank;
}

} // namespace

std::string shown(std::string_view text, std::size_t from) {
    std::string line;
    auto column = from;
    while (!text.empty()) {
        auto const tab = text.find('\t');
        auto const piece = visible(text.substr(0, tab));
        line += piece;
        if (tab == std::string_view::npos) {
            return line;
        }
        column += cells(piece);
        auto const blanks = tab_stop - column % tab_stop;
        line.append(blanks, ' ');
        column += blanks;
        text.remove_prefix(tab + 1);
    }
    return line;
}

Excerpt excerpt_of(std::string_view line, std::size_t begin, std::size_t size, std::size_t width,
                   bool ascii) {
    auto const before = shown(line.substr(0, begin));
    auto const mark = begin < line.size() ? shown(line.substr(begin, size), cells(before)) : std::string{};
    auto const behind_from = std::min(begin + size, line.size());
    auto const whole = before + mark + shown(line.substr(behind_from), cells(before) + cells(mark));
    if (cells(whole) <= width) {
        return {whole, cells(before), std::max<std::size_t>(cells(mark), 1)};
    }
    std::string_view const dots = ascii ? "..." : "…";
    auto const room = width > 2 * cells(dots) + 1 ? width - 2 * cells(dots) : 1;
    auto const first = first_byte(whole, before.size(), room);
    auto const last = last_byte(whole, first, before.size() + mark.size(), room);
    auto const head = first == 0 ? std::string_view{} : dots;
    auto const cut = std::string_view{whole}.substr(first, last - first);
    auto const mark_from = cells(whole.substr(first, before.size() - first));
    auto const marked = std::min(cells(mark), cells(cut) > mark_from ? cells(cut) - mark_from : 1);
    return {std::string{head}.append(cut).append(last == whole.size() ? "" : dots), cells(head) + mark_from,
            std::max<std::size_t>(marked, 1)};
}

std::string hung(std::string_view folded) {
    std::string text;
    for (auto const c : folded) {
        text += c;
        if (c == '\n') {
            text.append(gutter, ' ');
        }
    }
    return text;
}

} // namespace lengthwise::report
