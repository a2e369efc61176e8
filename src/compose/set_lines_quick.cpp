#include "compose/set_lines.hpp"

#include "compose/fit.hpp"

#include <array>

namespace lengthwise::compose::sets {

Lines build(Wish const& wish) {
    return wish.laps > 1 && is_nice(wish.laps) ? one(reps(wish.laps, 1, crawl_build(), wish.rest()))
                                               : std::nullopt;
}

Lines rounds(Wish const& wish) {
    auto const quick = hard(wish.place);
    auto const short_manner = quick == Effort::hard ? crawl(quick) : crawl_build();
    for (auto const size : {1, 2}) {
        auto const count = wish.laps / (3 * size);
        if (wish.laps % (3 * size) == 0 && count >= 2 && count <= 5 && 2 * size <= wish.longest()) {
            return one(
                rounds_of(count,
                          {{.laps = 2 * size, .manner = crawl(steady(wish.place)), .rest = wish.rest()},
                           {.laps = size, .manner = short_manner}},
                          rest_of_rounds));
        }
    }
    return std::nullopt;
}

Lines alternate(Wish const& wish) {
    auto const quick = hard(wish.place);
    for (auto const size : {1, 2}) {
        auto const count = wish.laps / size;
        if (wish.laps % size == 0 && count >= 4 && count % 2 == 0 && is_nice(count) &&
            size <= wish.longest()) {
            auto line = reps(count, size, crawl(), wish.rest());
            line.pattern = Pattern::odds_and_evens;
            line.odds = wish.again() && quick == Effort::hard ? Effort::steady : Effort::easy;
            line.evens = quick;
            return one(std::move(line));
        }
    }
    return std::nullopt;
}

Lines descend(Wish const& wish) {
    struct Steps {
        int count;
        int to;
    };
    constexpr std::array<Steps, 4> steps{{{3, 3}, {4, 4}, {6, 3}, {8, 4}}};
    auto const size = [&](Steps s) { return wish.laps / s.count; };
    auto const best = nearest(
        steps, hundred(wish.place),
        [&](Steps s) { return wish.laps % s.count == 0 && is_round(size(s)) && size(s) <= wish.longest(); },
        size);
    if (best == steps.end()) {
        return std::nullopt;
    }
    auto line = reps(best->count, size(*best), crawl(), wish.rest());
    line.descend = best->to;
    return one(std::move(line));
}

Lines start(Wish const& wish) {
    constexpr std::array sizes{2, 3, 4, 6};
    auto const count = [&](Laps size) { return wish.laps / size; };
    auto const best = nearest(
        sizes, 3,
        [&](Laps size) {
            return wish.laps % size == 0 && count(size) >= 2 && count(size) <= 6 && is_nice(count(size)) &&
                   size <= wish.longest();
        },
        [](Laps size) { return size; });
    if (best == sizes.end() || hard(wish.place) != Effort::hard) {
        return std::nullopt;
    }
    auto line = reps(count(*best), *best, crawl(), rest_of_rounds);
    line.reps.front().parts = {{2, crawl(Effort::hard)}, {2 * (*best - 1), crawl(Effort::steady)}};
    return one(std::move(line));
}

Lines change(Wish const& wish) {
    constexpr std::array sizes{1, 2};
    auto const count = [&](Laps part) { return wish.laps / (3 * part); };
    auto const best = nearest(
        sizes, 3,
        [&](Laps part) {
            return wish.laps % (3 * part) == 0 && count(part) >= 2 && count(part) <= 5 &&
                   3 * part <= wish.longest();
        },
        count);
    if (best == sizes.end() || hard(wish.place) != Effort::hard) {
        return std::nullopt;
    }
    auto line = reps(count(*best), 3 * *best, crawl(), wish.rest());
    auto const efforts = wish.again() ? std::array{Effort::hard, Effort::easy, Effort::steady}
                                      : std::array{Effort::easy, Effort::steady, Effort::hard};
    for (auto const effort : efforts) {
        line.reps.front().parts.push_back({2 * *best, crawl(effort)});
    }
    return one(std::move(line));
}

} // namespace lengthwise::compose::sets
