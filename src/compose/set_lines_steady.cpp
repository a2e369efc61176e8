#include "compose/set_lines.hpp"

#include "compose/fit.hpp"

#include <algorithm>
#include <array>
#include <numeric>
#include <string>
#include <string_view>

namespace lengthwise::compose::sets {

namespace {

Lines fitted(Wish const& wish, Laps longest, Laps near, Manner manner, std::string note = {}) {
    auto const found = fit(wish.laps, longest, near, {.spare = 0});
    return found ? one(reps(found->count, found->size, manner, wish.rest(), std::move(note))) : std::nullopt;
}

constexpr std::array<std::string_view, 12> ladders{"121",   "1221",  "1232",  "12321", "1234",   "123321",
                                                   "23432", "12345", "24642", "24842", "246642", "1234321"};

/// In how many pieces `rep` laps would be with `piece` laps each; 0: the last one is a single lap.
int pieces_of(Laps rep, Laps piece) {
    return rep % piece == 1 ? 0 : (rep + piece - 1) / piece;
}

/// Two to four pieces, equal ones if there are such, and then as near as can be to the wished count.
Laps best_piece(Laps rep, int count) {
    Laps best = 0;
    auto const better = [&](Laps piece, Laps than) {
        auto const rank = [&](Laps p) {
            return std::array{rep % p == 0 ? 0 : 1, std::abs(pieces_of(rep, p) - count)};
        };
        return than == 0 || rank(piece) < rank(than);
    };
    for (Laps piece = 2; piece < rep; ++piece) {
        auto const n = pieces_of(rep, piece);
        best = n >= 2 && n <= 4 && better(piece, best) ? piece : best;
    }
    return best;
}

/// 1.04 of threshold and 20, 15, then 10 s to breathe, up to the next 5 s.
int send_off(Place const& place, Laps size, int visit) {
    auto const swum = (lap(place.pool) * size).units() * place.threshold->ms() /
                      (lengthwise::one(place.pool.unit) * 100).units();
    auto const ms = swum * 104 / 100 + std::int64_t{1000} * std::max(10, 25 - 5 * visit);
    return static_cast<int>((ms + 4999) / 5000 * 5);
}

} // namespace

Lines ladder(Wish const& wish) {
    for (auto const rungs : ladders) {
        auto const sum = std::accumulate(rungs.begin(), rungs.end(), 0,
                                         [](int laps, char rung) { return laps + rung - '0'; });
        if (sum != wish.laps || *std::ranges::max_element(rungs) - '0' > wish.longest()) {
            continue;
        }
        Line line;
        line.form = Line::Form::ladder;
        line.rest = wish.rest();
        for (auto const rung : rungs) {
            line.reps.push_back({.laps = rung - '0', .manner = crawl(steady(wish.place))});
        }
        if (wish.visit % 2 == 0) {
            std::ranges::reverse(line.reps); // no other for those that end where they began
        }
        return one(std::move(line));
    }
    return std::nullopt;
}

Lines pieces(Wish const& wish) {
    auto const& place = wish.place;
    auto const count = wish.again() ? 2 : 3;
    auto const left = wish.laps - place.rep;
    if (place.kind == WeekKind::build && place.rep >= 4 && left >= 0 && left <= 10) {
        if (left != 0 && (left < 3 || !is_nice(left))) {
            return std::nullopt;
        }
        auto broken = reps(1, place.rep, crawl(steady(place)), left > 0 ? wish.rest() : 0);
        broken.piece = best_piece(place.rep, count);
        std::vector<Line> lines{std::move(broken)};
        if (left > 0) {
            lines.push_back(reps(left, 1, crawl_build(), wish.rest()));
        }
        return lines;
    }
    constexpr std::array counts{2, 3, 4};
    auto const best = nearest(
        counts, count,
        [&](int n) {
            auto const size = wish.laps / n;
            return wish.laps % n == 0 && size >= 2 && size <= wish.longest() && is_round(size);
        },
        [](int n) { return n; });
    return best == counts.end() ? std::nullopt
                                : one(reps(*best, wish.laps / *best, crawl(steady(place)), wish.rest()));
}

Lines pulled(Wish const& wish) {
    struct Pair {
        Laps pulled;
        Laps swum;
    };
    constexpr std::array<Pair, 5> pairs{{{1, 1}, {2, 1}, {2, 2}, {4, 2}, {4, 4}}};
    auto const count = [&](Pair pair) { return wish.laps / (pair.pulled + pair.swum); };
    auto const best = nearest(
        pairs, 3,
        [&](Pair pair) {
            return wish.laps % (pair.pulled + pair.swum) == 0 && count(pair) >= 2 && count(pair) <= 5 &&
                   pair.pulled <= wish.longest();
        },
        count);
    if (best == pairs.end() || !wish.place.kit.buoy) {
        return std::nullopt;
    }
    return one(rounds_of(
        count(*best),
        {{.laps = best->pulled, .manner = pull()}, {.laps = best->swum, .manner = crawl(steady(wish.place))}},
        wish.rest()));
}

Lines threshold(Wish const& wish) {
    auto const size = hundred(wish.place);
    auto const count = wish.laps / size;
    if (wish.laps % size != 0 || count < 3 || !is_nice(count) || size > wish.longest()) {
        return std::nullopt;
    }
    if (!wish.place.threshold) {
        return one(
            reps(count, size, crawl(steady(wish.place)), wish.rest(), "look at the clock: same time each"));
    }
    auto line = reps(count, size, crawl(Effort::threshold));
    line.send_off = send_off(wish.place, size, wish.visit);
    return one(std::move(line));
}

Lines negative(Wish const& wish) {
    constexpr std::array counts{2, 3, 4, 5, 6};
    auto const size = [&](int count) { return wish.laps / count; };
    auto const best = nearest(
        counts, 4,
        [&](int count) {
            return wish.laps % count == 0 && size(count) % 2 == 0 && is_round(size(count)) &&
                   size(count) <= wish.longest();
        },
        size);
    return best == counts.end()
               ? std::nullopt
               : one(reps(*best, size(*best), crawl(steady(wish.place), Shape::negative_split), wish.rest()));
}

Lines sight(Wish const& wish) {
    return fitted(wish, wish.longest(), hundred(wish.place), crawl(steady(wish.place)),
                  "look up twice a length");
}

Lines count(Wish const& wish) {
    return fitted(wish, wish.longest(), wish.laps > 8 ? 2 : 1, crawl(steady(wish.place)),
                  "count strokes, keep the number");
}

Lines race(Wish const& wish) {
    auto const& place = wish.place;
    auto const found =
        fit(wish.laps, std::min(place.rep, place.race_rep / 3), place.race_rep / 5, {.spare = 0, .least = 3});
    return found ? one(reps(found->count, found->size, crawl(steady(place)), rest_of_race,
                            "the pace you can hold all the way"))
                 : std::nullopt;
}

} // namespace lengthwise::compose::sets
