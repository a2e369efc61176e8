#include "cards/sheet.hpp"

#include <algorithm>

namespace lengthwise::cards {
namespace {

constexpr double mark_gap = 1;
constexpr double mark_length = 5;
constexpr double mark_line = 0.2;
constexpr double cross = 1; ///< its arms
constexpr double inch = 25.4;
constexpr double hair = 1e-6;

Size turned(Size const& size) {
    return {size.height, size.width};
}

std::size_t fits(double card, double paper, double margin) {
    auto const room = paper - 2 * margin + hair;
    return room < card ? 0 : static_cast<std::size_t>(room / card);
}

Grid grid_on(Size const& card, Size const& paper, double margin) {
    Grid grid{
        paper, card, fits(card.width, paper.width, margin), fits(card.height, paper.height, margin), {}};
    grid.origin = {(paper.width - card.width * static_cast<double>(grid.columns)) / 2,
                   (paper.height - card.height * static_cast<double>(grid.rows)) / 2};
    return grid;
}

} // namespace

std::vector<CardSize> const& card_sizes() {
    static std::vector<CardSize> const sizes{{"whole", 1, {}},
                                             {"half", 2, {}},
                                             {"quarter", 4, {}},
                                             {"eighth", 8, {}},
                                             {"a5", 0, {148, 210}},
                                             {"a6", 0, {105, 148}},
                                             {"a7", 0, {74, 105}},
                                             {"3x5in", 0, {3 * inch, 5 * inch}},
                                             {"4x6in", 0, {4 * inch, 6 * inch}}};
    return sizes;
}

CardSize const* find_card_size(std::string_view name) {
    auto const& sizes = card_sizes();
    auto const found =
        std::find_if(sizes.begin(), sizes.end(), [&](CardSize const& s) { return s.name == name; });
    return found == sizes.end() ? nullptr : &*found;
}

Size size_on(CardSize const& card, Size const& paper, double margin) {
    auto const width = paper.width - 2 * margin;
    auto const height = paper.height - 2 * margin;
    switch (card.share) {
    case 1:
        return {width, height};
    case 2:
        return {height / 2, width};
    case 4:
        return {width / 2, height / 2};
    case 8:
        return {height / 4, width / 2};
    default:
        return card.size;
    }
}

std::optional<Grid> impose(Size const& card, Size const& paper, double margin) {
    auto const upright = grid_on(card, paper, margin);
    auto const across = grid_on(card, turned(paper), margin);
    auto const& best = across.cards() > upright.cards() ? across : upright;
    return best.cards() > 0 ? std::optional{best} : std::nullopt;
}

Point place(Grid const& grid, std::size_t number) {
    auto const column = static_cast<double>(number % grid.columns);
    auto const whole_rows = number / grid.columns;
    auto const row = static_cast<double>(whole_rows);
    return {grid.origin.x + column * grid.card.width, grid.origin.y + row * grid.card.height};
}

BackPlace back_place(Grid const& grid, std::size_t number) {
    auto const front = place(grid, number);
    if (grid.landscape()) {
        return {{front.x, grid.paper.height - front.y - grid.card.height}, true};
    }
    return {{grid.paper.width - front.x - grid.card.width, front.y}, false};
}

std::vector<Line> cut_marks(Grid const& grid) {
    std::vector<Line> marks;
    auto const right = grid.paper.width - grid.origin.x;
    auto const bottom = grid.paper.height - grid.origin.y;
    auto const first = [](double edge) { return std::max(edge - mark_gap - mark_length, 0.0); };
    for (std::size_t c = 0; c <= grid.columns; ++c) {
        auto const x = grid.origin.x + grid.card.width * static_cast<double>(c);
        marks.push_back({{x, first(grid.origin.y)}, {x, grid.origin.y - mark_gap}, mark_line});
        marks.push_back({{x, bottom + mark_gap},
                         {x, std::min(bottom + mark_gap + mark_length, grid.paper.height)},
                         mark_line});
    }
    for (std::size_t r = 0; r <= grid.rows; ++r) {
        auto const y = grid.origin.y + grid.card.height * static_cast<double>(r);
        marks.push_back({{first(grid.origin.x), y}, {grid.origin.x - mark_gap, y}, mark_line});
        marks.push_back({{right + mark_gap, y},
                         {std::min(right + mark_gap + mark_length, grid.paper.width), y},
                         mark_line});
    }
    for (std::size_t c = 1; c < grid.columns; ++c) {
        for (std::size_t r = 1; r < grid.rows; ++r) {
            auto const x = grid.origin.x + grid.card.width * static_cast<double>(c);
            auto const y = grid.origin.y + grid.card.height * static_cast<double>(r);
            marks.push_back({{x - cross, y}, {x + cross, y}, mark_line});
            marks.push_back({{x, y - cross}, {x, y + cross}, mark_line});
        }
    }
    return marks;
}

} // namespace lengthwise::cards
