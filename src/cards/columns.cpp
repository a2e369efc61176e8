#include "cards/columns.hpp"

#include <algorithm>

namespace lengthwise::cards {
namespace {

using report::CardRow;

/// A distance column is never wider than this share of the card.
constexpr double widest_share = 0.3;
/// Notes stand under the figures when less than this is left behind them.
constexpr double text_share = 0.4;
/// All bars together are not either.
constexpr double bars_share = 0.15;

struct Widest {
    double count = 0;
    double amount = 0;
    double lengths = 0;
    std::size_t depth = 0;
};

class Reader {
  public:
    Reader(double em, double room, Measure& measure) : em_(em), room_(room), measure_(measure) {}

    void add(CardRow const& row, std::size_t depth) {
        depth += row.optional ? 1 : 0;
        widest_.lengths = std::max(widest_.lengths, measure_.width(row.lengths, Weight::semibold));
        if (row.kind == CardRow::Kind::group) {
            for (auto const& inner : row.rows) {
                add(inner, depth + 1);
            }
            return;
        }
        widest_.depth = std::max(widest_.depth, depth);
        widest_.count = std::max(widest_.count, measure_.width(row.count, Weight::semibold));
        if (row.amount.size() == 1) {
            auto const wide = measure_.width(row.amount.front(), Weight::semibold);
            widest_.amount = std::max(widest_.amount, wide * em_ > room_ * widest_share ? 0 : wide);
        }
    }
    [[nodiscard]] Widest const& widest() const { return widest_; }

  private:
    double em_;
    double room_;
    Measure& measure_;
    Widest widest_;
};

} // namespace

Columns columns_of(report::Card const& card, Setting const& setting, Measure& measure) {
    auto const em = setting.scale.em();
    auto const small_em = setting.scale.small_em();
    Columns columns;
    columns.right = setting.right();
    Reader reader{em, columns.right - safe_edge, measure};
    double name = 0;
    for (auto const& section : card.sections) {
        name = std::max(name, measure.width(section.name, Weight::semibold) * small_em);
        for (auto const& row : section.rows) {
            reader.add(row, 0);
        }
    }
    auto const& widest = reader.widest();
    columns.bars = safe_edge;
    if (setting.clock_column) {
        columns.bars += measure.width("00:00", Weight::medium) * small_em + figures_air * em;
    }
    auto const depth = static_cast<double>(widest.depth);
    if (widest.depth > 0) {
        auto const most = (columns.right - safe_edge) * bars_share / depth;
        columns.lane = std::min(bar_lane * setting.scale.capital, most);
    }
    auto const figures = columns.bars + columns.lane * depth;
    columns.count_right = figures + widest.count * em;
    columns.times = columns.count_right + (widest.count > 0 ? times_air * em : 0);
    columns.amount = columns.times;
    if (widest.count > 0) {
        columns.amount += (measure.width("×", Weight::semibold) + times_air) * em;
    }
    columns.widest_amount = widest.amount * em;
    columns.words = std::max(columns.amount + columns.widest_amount, safe_edge + name) + figures_air * em;
    bool const narrow = columns.right - columns.words < (columns.right - safe_edge) * text_share;
    columns.text = narrow ? figures : columns.words;
    bool const lengths = setting.level.lengths && widest.lengths > 0;
    columns.recovery_right = columns.right - (lengths ? widest.lengths * small_em + lengths_air * em : 0);
    return columns;
}

} // namespace lengthwise::cards
