#include "compose/fit.hpp"

#include <algorithm>
#include <cstdlib>
#include <tuple>
#include <utility>

namespace lengthwise::compose {

bool is_round(Laps size) {
    return std::ranges::find(round_sizes, size) != round_sizes.end();
}

bool is_nice(int count) {
    return std::ranges::find(nice_counts, count) != nice_counts.end();
}

int nice_at_most(int most) {
    return *std::prev(std::ranges::upper_bound(nice_counts, most));
}

std::optional<Fit> fit(Laps laps, Laps longest, Laps wish, FitTerms terms) {
    std::optional<Fit> best;
    auto const rank = [wish](Fit const& fit) {
        auto const cost = 2 * fit.spare + std::abs(fit.size - wish) + (fit.count > 6 ? 1 : 0);
        return std::tuple{cost, fit.size, fit.spare};
    };
    for (auto const size : round_sizes) {
        for (Laps spare = 0; size <= longest && spare <= std::min(terms.spare, laps); ++spare) {
            auto const count = (laps - spare) / size;
            if ((laps - spare) % size != 0 || count < terms.least || count > terms.most || !is_nice(count)) {
                continue;
            }
            Fit const here{count, size, spare};
            best = !best || rank(here) < rank(*best) ? here : *best;
        }
    }
    return best;
}

std::vector<Fit> rows(Laps laps, Laps longest) {
    if (laps < 2) {
        return std::vector<Fit>(static_cast<std::size_t>(laps), Fit{});
    }
    constexpr FitTerms loose{.most = 12, .spare = 2};
    if (auto const one = fit(laps, longest, 3, loose)) {
        return {*one};
    }
    auto const size = *std::prev(std::ranges::upper_bound(round_sizes, std::min(laps / 2, longest)));
    auto const count = nice_at_most(std::min(laps / size, 12));
    std::vector<Fit> all{{count, size, 0}};
    if (auto const left = laps - count * size; left > 2) {
        std::ranges::copy(rows(left, std::max(1, size - 1)), std::back_inserter(all));
    }
    return all;
}

Fit equal_reps(Laps laps, Laps longest) {
    for (auto count = (laps + longest - 1) / longest; count < laps; ++count) {
        if (laps % count == 0 && is_round(laps / count)) {
            return {count, laps / count, 0};
        }
    }
    return {laps, 1, 0};
}

} // namespace lengthwise::compose
