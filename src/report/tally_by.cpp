#include "calc/breakdown.hpp"
#include "report/tally_parts.hpp"

#include <algorithm>
#include <numeric>

/// The words of a plan, biggest first, with their share of its distance.
namespace lengthwise::report {
namespace {

/// Whole percents that add to 100: rounded down, and the missing ones given to the
/// largest remainders, the earlier of equals first.
std::vector<int> percents(std::vector<calc::WordTotals> const& words, Distance all) {
    std::vector<int> shares;
    std::vector<std::int64_t> rests;
    for (auto const& word : words) {
        auto const share = Distance::whole(word.totals.distance * 100, all);
        shares.push_back(static_cast<int>(share));
        rests.push_back((word.totals.distance * 100 - all * share).units());
    }
    std::vector<std::size_t> order(words.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    std::stable_sort(order.begin(), order.end(), [&](auto a, auto b) { return rests[a] > rests[b]; });
    auto const missing = 100 - std::accumulate(shares.begin(), shares.end(), 0);
    for (std::size_t i = 0; i < static_cast<std::size_t>(missing); ++i) {
        ++shares[order[i]];
    }
    return shares;
}

void biggest_first(std::vector<calc::WordTotals>& words) {
    std::stable_sort(words.begin(), words.end(), [](auto const& a, auto const& b) {
        return std::pair{a.totals.distance, a.totals.timed} > std::pair{b.totals.distance, b.totals.timed};
    });
}

} // namespace

std::string by_screen(Screen const& screen, std::string_view name) {
    auto const by = screen.options.by.value_or(calc::By::mode);
    auto const whole = screen.summary.whole();
    auto words = screen.summary.by(by, whole.lane()).words;
    biggest_first(words);
    auto const totals = whole.swum(whole.lane()).totals;
    Shown const shown{screen.summary.unit(), false, false, totals.timed_reps > 0};
    auto const shares = totals.distance.zero() ? std::vector<int>{} : percents(words, totals.distance);

    auto all = columns(shown);
    all.insert(all.begin(), {"", false});
    all.insert(all.begin() + 2, {"%"});
    Table table{std::move(all)};
    auto const row = [&](std::string label, calc::Totals const& sum, std::string share, Ink ink) {
        std::vector<Cell> cells{{std::move(label), {}}};
        append_cells(cells, sum, shown, screen.ascii());
        cells.insert(cells.begin() + 2, {std::move(share), {}});
        table.row(cells, ink);
    };
    for (std::size_t i = 0; i < words.size(); ++i) {
        row(calc::word_of(by, words[i].key), words[i].totals,
            shares.empty() ? std::string{} : std::to_string(shares[i]), Ink::plain);
    }
    table.gap();
    row("total", totals, shares.empty() ? "" : "100", Ink::bold);
    auto const head = std::string{name} + ", by " + std::string{calc::spelling(by)};
    return title(screen, {head, lane_part(whole)}) + table.text(screen.paint);
}

} // namespace lengthwise::report
