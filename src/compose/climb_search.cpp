#include "compose/climb_search.hpp"

#include <algorithm>
#include <cstdint>
#include <limits>
#include <utility>

namespace lengthwise::compose {

namespace {

/// Squared distance of the reps from a straight climb, then of the weeks.
using Cost = std::pair<std::int64_t, std::int64_t>;

constexpr std::int64_t never = std::numeric_limits<std::int64_t>::max();
constexpr Cost no_way{never, never};

constexpr std::int64_t square(std::int64_t n) {
    return n * n;
}

Cost operator+(Cost const& a, Cost const& b) {
    return a == no_way || b == no_way ? no_way : Cost{a.first + b.first, a.second + b.second};
}

/// What a build week's rep and laps cost.
class Aim {
  public:
    explicit Aim(Problem const& problem)
        : problem_(problem), weeks_(problem.build_weeks),
          arrival_(std::max<std::int64_t>(1, weeks_ - std::min<std::int64_t>(2, weeks_ / 4))),
          rise_(std::int64_t{problem.lengths_a_lap} * problem.race_rep - problem.today_longest),
          growth_(goal_week(problem) - problem.today_week) {}

    [[nodiscard]] std::int64_t rep(int build, int rep) const {
        auto const risen = std::int64_t{problem_.lengths_a_lap} * rep - problem_.today_longest;
        return square(arrival_ * risen - std::min<std::int64_t>(build, arrival_) * rise_);
    }
    [[nodiscard]] std::int64_t week(int build, int laps) const {
        auto const grown = std::int64_t{problem_.lengths_a_lap} * laps - problem_.today_week;
        return square(weeks_ * grown - build * growth_);
    }

  private:
    Problem const& problem_;
    std::int64_t weeks_;
    std::int64_t arrival_; ///< the week in which the race rep is due; it holds from there
    std::int64_t rise_;
    std::int64_t growth_;
};

struct Span {
    int low = 0;
    int high = -1;

    [[nodiscard]] std::size_t size() const { return static_cast<std::size_t>(std::int64_t{high} - low + 1); }
    [[nodiscard]] bool has(int n) const { return low <= n && n <= high; }
};

// --- the reps alone ------------------------------------------------------------------

/// For each build week and rep the least cost of a way through it that looks at reps alone, past weeks
/// that can be reached. No climb through it costs less.
class Outlook {
  public:
    Outlook(Tables const& tables, Aim const& aim) : tables_(tables), frontiers_(frontiers(tables)) {
        auto const weeks = frontiers_.size();
        auto const reps = static_cast<std::size_t>(tables.problem().race_rep) + 1;
        costs_.assign(weeks, std::vector<std::int64_t>(reps, never));
        for (std::size_t w = 0; w < weeks; ++w) {
            for (std::size_t rep = 1; rep < reps; ++rep) {
                if (frontiers_[w][rep] > 0 && (w + 1 < weeks || rep + 1 == reps)) {
                    costs_[w][rep] = aim.rep(static_cast<int>(w) + 1, static_cast<int>(rep));
                }
            }
        }
        auto const there = ways(true);
        auto const back = ways(false);
        for (std::size_t w = 0; w < weeks; ++w) {
            for (std::size_t rep = 0; rep < reps; ++rep) {
                auto& cost = costs_[w][rep];
                auto const reached = there[w][rep] < never && back[w][rep] < never;
                cost = reached ? there[w][rep] + back[w][rep] - cost : never;
            }
        }
    }

    [[nodiscard]] std::vector<Frontier> const& reached() const { return frontiers_; }

    /// The least cost that is above `cost`; `never` where there is none.
    [[nodiscard]] std::int64_t above(std::int64_t cost) const {
        auto best = never;
        for (auto const& week : costs_) {
            for (auto const here : week) {
                best = here > cost ? std::min(best, here) : best;
            }
        }
        return best;
    }

    /// The reps of each week that some way of no more than `cost` may pass.
    [[nodiscard]] std::vector<Span> within(std::int64_t cost) const {
        std::vector<Span> spans;
        for (auto const& week : costs_) {
            auto const fits = [&](std::int64_t here) { return here < never && here <= cost; };
            auto const first = std::ranges::find_if(week, fits);
            auto const last = std::find_if(week.rbegin(), week.rend(), fits);
            spans.push_back(
                {static_cast<int>(first - week.begin()), static_cast<int>(week.rend() - last) - 1});
        }
        return spans;
    }

  private:
    using Costs = std::vector<std::vector<std::int64_t>>;

    /// The least cost from today to each rep of each week, or from there to the race rep, its own included.
    [[nodiscard]] Costs ways(bool forward) const {
        auto ways = costs_;
        auto const weeks = ways.size();
        for (std::size_t i = 1; i < weeks; ++i) {
            auto const w = forward ? i : weeks - 1 - i;
            for (std::size_t rep = 1; rep < ways[w].size(); ++rep) {
                auto& cost = ways[w][rep];
                auto const best = forward ? least_before(ways[w - 1], rep) : least_behind(ways[w + 1], rep);
                cost = cost < never && best < never ? cost + best : never;
            }
        }
        return ways;
    }
    [[nodiscard]] std::int64_t least_before(std::vector<std::int64_t> const& week, std::size_t rep) const {
        auto best = never;
        for (auto at = rep; at > 0 && tables_.next_rep(static_cast<int>(at)) >= static_cast<int>(rep); --at) {
            best = std::min(best, week[at]);
        }
        return best;
    }
    [[nodiscard]] std::int64_t least_behind(std::vector<std::int64_t> const& week, std::size_t rep) const {
        auto best = never;
        auto const last =
            std::min(week.size() - 1, static_cast<std::size_t>(tables_.next_rep(static_cast<int>(rep))));
        for (auto at = rep; at <= last; ++at) {
            best = std::min(best, week[at]);
        }
        return best;
    }

    Tables const& tables_;
    std::vector<Frontier> frontiers_;
    Costs costs_;
};

// --- reps and weeks together -----------------------------------------------------------

/// What it costs from one build week to the last, by its rep and laps.
class Layer {
  public:
    Layer() = default;
    Layer(Span reps, Span laps) : reps_(reps), laps_(laps), costs_(reps.size() * laps.size(), no_way) {}

    [[nodiscard]] Span reps() const { return reps_; }
    [[nodiscard]] Span laps() const { return laps_; }
    [[nodiscard]] Cost& at(int rep, int laps) { return costs_[place(rep, laps)]; }
    [[nodiscard]] Cost const& at(int rep, int laps) const { return costs_[place(rep, laps)]; }

  private:
    [[nodiscard]] std::size_t place(int rep, int laps) const {
        return static_cast<std::size_t>(rep - reps_.low) * laps_.size() +
               static_cast<std::size_t>(laps - laps_.low);
    }

    Span reps_;
    Span laps_;
    std::vector<Cost> costs_;
};

/// For each n of `over` the least of `in` from n to `end(n)`, as far as `in` is defined on `from`; `end`
/// never falls. Linear: what a later, better one hides is forgotten.
template <typename In, typename End, typename Out>
void sliding_least(Span over, Span from, In in, End end, Out out) {
    std::vector<int> waiting;
    waiting.reserve(from.size());
    std::size_t front = 0;
    auto next = from.low;
    for (auto n = over.low; n <= over.high; ++n) {
        for (auto const last = std::min(end(n), from.high); next <= last; ++next) {
            while (waiting.size() > front && !(in(waiting.back()) < in(next))) {
                waiting.pop_back();
            }
            waiting.push_back(next);
        }
        while (front < waiting.size() && waiting[front] < n) {
            ++front;
        }
        out(n, front < waiting.size() ? in(waiting[front]) : no_way);
    }
}

class Search {
  public:
    explicit Search(Tables const& tables)
        : tables_(tables), problem_(tables.problem()), aim_(problem_), outlook_(tables, aim_) {}

    /// Few reps are worth a look beside weeks. A climb through others costs more than `bound`; so the best
    /// is found once it costs no more.
    std::vector<Step> best() {
        auto bound = outlook_.above(-1);
        while (true) {
            lay(outlook_.within(bound));
            auto const cost = least_cost();
            if (cost.first <= bound) {
                return steps();
            }
            bound = cost == no_way ? std::max(outlook_.above(bound), 2 * bound) : cost.first;
        }
    }

  private:
    /// The weeks that can be had with these reps.
    [[nodiscard]] Span laps_with(std::size_t w, Span reps) const {
        auto const& reached = outlook_.reached()[w];
        auto high = 0;
        for (auto rep = reps.low; rep <= reps.high; ++rep) {
            high = std::max(high, reached[static_cast<std::size_t>(rep)]);
        }
        return {least_week(problem_, reps.low, static_cast<int>(w) + 1), high};
    }

    void lay(std::vector<Span> const& reps) {
        layers_.clear();
        for (std::size_t w = 0; w < reps.size(); ++w) {
            layers_.emplace_back(reps[w], laps_with(w, reps[w]));
        }
        for (auto w = layers_.size(); w-- > 0;) {
            if (w + 1 < layers_.size()) {
                carry_back(layers_[w + 1], layers_[w]);
            }
            add_own(layers_[w], w, w + 1 == layers_.size());
        }
    }

    /// The least that follows: first over the weeks behind, then over the reps.
    void carry_back(Layer const& behind, Layer& layer) const {
        Layer best{behind.reps(), layer.laps()};
        for (auto rep = behind.reps().low; rep <= behind.reps().high; ++rep) {
            sliding_least(
                layer.laps(), behind.laps(), [&](int laps) { return behind.at(rep, laps); },
                [&](int laps) { return tables_.next_week(laps); },
                [&](int laps, Cost const& cost) { best.at(rep, laps) = cost; });
        }
        for (auto laps = layer.laps().low; laps <= layer.laps().high; ++laps) {
            sliding_least(
                layer.reps(), behind.reps(), [&](int rep) { return best.at(rep, laps); },
                [&](int rep) { return tables_.next_rep(rep); },
                [&](int rep, Cost const& cost) { layer.at(rep, laps) = cost; });
        }
    }

    /// What the week itself costs; no way where it cannot hold the rep.
    void add_own(Layer& layer, std::size_t w, bool last) const {
        auto const build = static_cast<int>(w) + 1;
        for (auto rep = layer.reps().low; rep <= layer.reps().high; ++rep) {
            Span const held{least_week(problem_, rep, build), most_week(problem_, problem_.room, rep, build)};
            for (auto laps = layer.laps().low; laps <= layer.laps().high; ++laps) {
                auto& cost = layer.at(rep, laps);
                Cost const own{aim_.rep(build, rep), aim_.week(build, laps)};
                cost = !held.has(laps) ? no_way : last ? own : cost + own;
            }
        }
    }

    /// The first of the best that may follow: the lowest rep, then the lowest week.
    [[nodiscard]] std::pair<Cost, Step> best_behind(Step const& step, Layer const& layer) const {
        std::pair<Cost, Step> best{no_way, {}};
        auto const top_rep = std::min(layer.reps().high, tables_.next_rep(step.rep));
        auto const top_laps = std::min(layer.laps().high, tables_.next_week(step.laps));
        for (auto rep = std::max(step.rep, layer.reps().low); rep <= top_rep; ++rep) {
            for (auto laps = std::max(step.laps, layer.laps().low); laps <= top_laps; ++laps) {
                if (layer.at(rep, laps) < best.first) {
                    best = {layer.at(rep, laps), {rep, laps}};
                }
            }
        }
        return best;
    }

    [[nodiscard]] Cost least_cost() const { return best_behind({}, layers_.front()).first; }

    [[nodiscard]] std::vector<Step> steps() const {
        std::vector<Step> steps;
        Step step;
        for (auto const& layer : layers_) {
            step = best_behind(step, layer).second;
            steps.push_back(step);
        }
        return steps;
    }

    Tables const& tables_;
    Problem const& problem_;
    Aim aim_;
    Outlook outlook_;
    std::vector<Layer> layers_;
};

} // namespace

Tables::Tables(Problem const& problem, Growth const& growth) : problem_(problem) {
    auto const lap = problem.lengths_a_lap;
    auto const highest = std::max(goal_week(problem), problem.today_week);
    auto const top = static_cast<int>((highest + lap - 1) / lap);
    for (auto rep = 0; rep <= problem.race_rep; ++rep) {
        next_rep_.push_back(compose::next_rep(problem, rep, growth.rep));
    }
    for (auto laps = 0; laps <= top; ++laps) {
        next_week_.push_back(compose::next_week(problem, laps, growth.week));
    }
}

std::vector<Step> search(Tables const& tables) {
    return Search{tables}.best();
}

} // namespace lengthwise::compose
