#include "cards/test_sheet.hpp"

namespace lengthwise::cards {
namespace {

constexpr double bar = 50;
constexpr double tick = 3;
constexpr double em = 5;

} // namespace

Picture test_sheet(Size const& paper, double margin, Measure& measure) {
    Picture picture{paper, {}};
    auto const text = [&](double x, double y, std::string const& words, Weight weight) {
        picture.marks.emplace_back(
            Text{{x, y}, words, em, weight, Anchor::left, measure.width(words, weight) * em});
    };
    auto const line = [&](Point from, Point to, double width) {
        picture.marks.emplace_back(Line{from, to, width});
    };
    auto const x = 30.0;
    auto const y = 50.0;
    text(x, y - 8, "50 mm", Weight::semibold);
    line({x, y}, {x + bar, y}, 0.3);
    line({x, y - tick}, {x, y + tick}, 0.2);
    line({x + bar, y - tick}, {x + bar, y + tick}, 0.2);
    line({x, y + 20}, {x, y + 20 + bar}, 0.3);
    line({x - tick, y + 20}, {x + tick, y + 20}, 0.2);
    line({x - tick, y + 20 + bar}, {x + tick, y + 20 + bar}, 0.2);
    text(x + 8, y + 20 + bar / 2, "50 mm", Weight::semibold);
    auto down = y + 90;
    for (auto const* words : {"Both bars are 50 mm long. If not, print at 100 %,", "without “fit to page”.",
                              "The frame stands at the margin: if a side of it is missing,",
                              "the printer leaves more white; try --margin 8mm."}) {
        text(x, down, words, Weight::medium);
        down += 1.5 * em;
    }
    picture.marks.emplace_back(
        Frame{{margin, margin}, {paper.width - 2 * margin, paper.height - 2 * margin}, 0.01, 0.2});
    return picture;
}

} // namespace lengthwise::cards
