#include "calc/breakdown.hpp"
#include "report/tally_parts.hpp"
#include "report/tally_time.hpp"
#include "report/time_words.hpp"
#include <fmt/core.h>

#include <algorithm>
#include <numeric>

/// The words of a plan, biggest first, with their share of its distance.
namespace lengthwise::report {
namespace {

/// Whole percents that add to 100: rounded down, and the missing ones given to the
/// largest remainders, the earlier of equals first.
std::vector<int> percents(std::vector<WordFigures> const& words, Distance all) {
    std::vector<int> shares;
    std::vector<std::int64_t> rests;
    for (auto const& word : words) {
        auto const share = Distance::whole(word.figures.totals.distance * 100, all);
        shares.push_back(static_cast<int>(share));
        rests.push_back((word.figures.totals.distance * 100 - all * share).units());
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

void biggest_first(std::vector<WordFigures>& words) {
    std::stable_sort(words.begin(), words.end(), [](auto const& a, auto const& b) {
        return std::pair{a.figures.totals.distance, a.figures.totals.timed} >
               std::pair{b.figures.totals.distance, b.figures.totals.timed};
    });
}

/// "swum 24 min, rest 14 min: 1.7 to 1".
std::string work_and_rest(calc::Times const& times) {
    auto const swum = times.swum();
    auto const rest = times.resting();
    if (!swum || swum->expected.zero()) {
        return {};
    }
    auto const whole = adding_up({swum->expected, rest->expected});
    if (rest->expected.zero()) {
        return fmt::format("swum {} min without rest", whole[0]);
    }
    auto const tenths = (swum->expected.ms() * 20 + rest->expected.ms()) / (2 * rest->expected.ms());
    return fmt::format("swum {} min, rest {} min: {}.{} to 1", whole[0], whole[1], tenths / 10, tenths % 10);
}

/// A section takes all its time, any other word what is swum in it.
std::optional<Band<Duration>> time_of(calc::By by, Figures const& whole) {
    return by == calc::By::section ? whole.time() : whole.times.swum();
}

} // namespace

std::string by_screen(Screen const& screen, std::string_view name, bool one_session) {
    auto const by = screen.options.by.value_or(calc::By::mode);
    auto const whole = screen.summary.whole();
    auto words = screen.summary.by(by, whole.lane());
    biggest_first(words);
    auto const figures = whole.swum(whole.lane());
    auto const& totals = figures.totals;
    Shown const shown{.unit = screen.summary.unit(),
                      .timed = totals.timed_reps > 0,
                      .estimated = !figures.times.estimated.zero()};
    auto const shares = totals.distance.zero() ? std::vector<int>{} : percents(words, totals.distance);
    std::vector<std::optional<Band<Duration>>> times;
    for (auto const& word : words) {
        times.push_back(word.figures.time());
    }
    auto const minutes = minutes_of(times, time_of(by, figures));

    auto all = columns(shown);
    all.insert(all.begin(), {"", false});
    all.insert(all.begin() + 2, {"%"});
    all.push_back({"min"});
    Table table{std::move(all)};
    auto const row = [&](std::string label, Figures const& sum, std::string share, Cell time, Ink ink) {
        std::vector<Cell> cells{{std::move(label), {}}};
        append_cells(cells, sum, shown, screen.ascii());
        cells.insert(cells.begin() + 2, {std::move(share), {}});
        cells.push_back(std::move(time));
        table.row(cells, ink);
    };
    for (std::size_t i = 0; i < words.size(); ++i) {
        row(calc::word_of(by, words[i].key), words[i].figures,
            shares.empty() ? std::string{} : std::to_string(shares[i]),
            minutes.rows.empty() ? Cell{} : minutes.rows[i], Ink::plain);
    }
    table.gap();
    row("total", figures, shares.empty() ? "" : "100", minutes.total, Ink::bold);
    auto const head = std::string{name} + ", by " + std::string{calc::spelling(by)};
    std::vector<std::string> sentences;
    if (one_session) {
        sentences.push_back(work_and_rest(figures.times));
    } else if (by != calc::By::section && !minutes.rows.empty()) {
        sentences.emplace_back("min of swimming, rests left out");
    }
    return title(screen, {head, lane_part(whole)}) + table.text(screen.paint) + remarks(screen, sentences);
}

} // namespace lengthwise::report
