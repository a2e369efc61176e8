#include "composing.hpp"

#include "show.hpp"

#include "compose/author.hpp"
#include "compose/random_wish.hpp"
#include "compose/text.hpp"
#include "measure.hpp"

#include <algorithm>
#include <optional>
#include <random>
#include <vector>

namespace lengthwise::bench {

namespace {

/// The plan of a wish; nothing where it cannot be met.
std::optional<std::string> compose_one(compose::Request const& request) {
    auto const ramp = compose::ramp_of(request);
    return ramp ? std::optional{compose::plan_text(request, *ramp, compose::sessions_of(request, *ramp))}
                : std::nullopt;
}

} // namespace

std::string composed_plan(std::size_t bytes) {
    std::mt19937 random{750};
    for (;;) {
        if (auto plan = compose_one(support::random_wish(random)); plan && plan->size() >= bytes) {
            return *plan;
        }
    }
}

void measure_compose(Goals& goals) {
    constexpr std::size_t plans = 2000;
    std::mt19937 random{750};
    std::vector<double> times;
    while (times.size() < plans) {
        auto const request = support::random_wish(random);
        Watch const watch;
        auto const plan = compose_one(request);
        auto const took = watch.took();
        if (plan) {
            times.push_back(took.core);
        }
    }
    goals.add({"compose a plan, ms: median of 2 000", median(times) * 1e3});
    goals.add({"compose a plan, ms: the worst", *std::ranges::max_element(times) * 1e3, Bound::at_most, 10});
}

} // namespace lengthwise::bench
