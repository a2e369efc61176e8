#include "compose/main_sets.hpp"

#include "compose/fit.hpp"

#include <algorithm>
#include <array>
#include <cstdlib>
#include <numeric>
#include <span>
#include <utility>

namespace lengthwise::compose {

namespace {

using Lines = std::optional<std::vector<Line>>;

struct About {
    std::string_view title;
    int first_stage;
};

constexpr std::array<About, 14> about{{
    {"Build each rep", 0},
    {"Long and short", 0},
    {"Change of gears", 0},
    {"Ladder", 0},
    {"Long swim in pieces", 0},
    {"Arms, then all", 0},
    {"Each one quicker", 1},
    {"Start and settle", 1},
    {"Three speeds", 1},
    {"Even pace", 1},
    {"Second half stronger", 1},
    {"Look and swim", 1},
    {"Count strokes", 0},
    {"Race in pieces", 1},
}};

constexpr int rest_of_rounds = 40; ///< s behind a round, and behind a rep that starts hard
constexpr int rest_of_race = 20;   ///< s

struct Wish {
    Laps laps;
    Place const& place;
    int visit;

    [[nodiscard]] int rest() const { return rest_at(visit); }
    [[nodiscard]] bool again() const { return visit > 1; }
    [[nodiscard]] Laps longest() const { return place.rep; }
};

Lines one(Line line) {
    return std::vector{std::move(line)};
}

/// The candidate whose value is nearest to `wish`, the earlier one of two; only those that fit.
template <typename Candidates, typename Fits, typename Value>
auto nearest(Candidates const& candidates, int wish, Fits fits, Value value) {
    auto best = candidates.end();
    for (auto at = candidates.begin(); at != candidates.end(); ++at) {
        if (fits(*at) &&
            (best == candidates.end() || std::abs(value(*at) - wish) < std::abs(value(*best) - wish))) {
            best = at;
        }
    }
    return best;
}

Line rounds_of(int count, std::vector<Rep> round, int rest) {
    Line line;
    line.form = Line::Form::rounds;
    line.count = count;
    line.reps = std::move(round);
    line.rest = rest;
    return line;
}

Lines fitted(Wish const& wish, Laps longest, Laps near, Manner manner, std::string note = {}) {
    auto const found = fit(wish.laps, longest, near, {.spare = 0});
    return found ? one(reps(found->count, found->size, manner, wish.rest(), std::move(note))) : std::nullopt;
}

Lines build(Wish const& wish) {
    return wish.laps > 1 && is_nice(wish.laps) ? one(reps(wish.laps, 1, crawl_build(), wish.rest()))
                                               : std::nullopt;
}

/// A longer rep and a shorter, quicker one.
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

constexpr std::array<std::string_view, 12> ladders{"121",   "1221",  "1232",  "12321", "1234",   "123321",
                                                   "23432", "12345", "24642", "24842", "246642", "1234321"};

/// An open ladder goes down the next time.
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

/// In how many pieces `rep` laps would be with `piece` laps each; 0: the last one is a single lap.
int pieces_of(Laps rep, Laps piece) {
    return rep % piece == 1 ? 0 : (rep + piece - 1) / piece;
}

/// Two to four pieces, equal ones if there are such, and then as near as can be to the wished count.
Laps best_piece(Laps rep, int count) {
    Laps best = 0;
    auto const better = [&](Laps piece, Laps than) {
        auto const rank = [&](Laps p) {
            return std::array{rep % p == 0 ? 0 : 1, std::abs(pieces_of(rep, p) - count), is_round(p) ? 0 : 1};
        };
        return than == 0 || rank(piece) < rank(than);
    };
    for (Laps piece = 2; piece < rep; ++piece) {
        auto const n = pieces_of(rep, piece);
        best = n >= 2 && n <= 4 && better(piece, best) ? piece : best;
    }
    return best;
}

/// The coming longest swim, broken; else a few equal ones.
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

/// Off as at a start, then into one's own rhythm.
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

/// Three speeds in one rep; the next time the quick one first.
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

/// 1.04 of threshold and 20, 15, then 10 s to breathe, up to the next 5 s.
int send_off(Place const& place, Laps size, int visit) {
    auto const swum = (lap(place.pool) * size).units() * place.threshold->ms() /
                      (lengthwise::one(place.pool.unit) * 100).units();
    auto const ms = swum * 104 / 100 + 1000 * std::max(10, 25 - 5 * visit);
    return static_cast<int>((ms + 4999) / 5000 * 5);
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

constexpr std::array<Lines (*)(Wish const&), 14> makers{build,    rounds,  alternate, ladder, pieces,
                                                        pulled,   descend, start,     change, threshold,
                                                        negative, sight,   count,     race};

} // namespace

std::string_view title_of(Set set) {
    return about[static_cast<std::size_t>(set)].title;
}

int first_stage(Set set) {
    return about[static_cast<std::size_t>(set)].first_stage;
}

std::optional<std::vector<Line>> lines_of(Set set, Laps laps, Place const& place, int visit) {
    if (laps < 1 || place.stage < first_stage(set)) {
        return std::nullopt;
    }
    auto lines = makers[static_cast<std::size_t>(set)]({laps, place, visit});
    auto const quick =
        lines ? std::accumulate(lines->begin(), lines->end(), 0,
                                [](int sum, Line const& line) { return sum + hard_halves(line); })
              : 0;
    return quick <= most_hard_halves(place) ? lines : std::nullopt;
}

} // namespace lengthwise::compose
