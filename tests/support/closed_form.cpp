#include "support/closed_form.hpp"

#include "calc/totals.hpp"

namespace lengthwise::support {

Three three(Band<Duration> const& band) {
    return {band.low.ms(), band.expected.ms(), band.high.ms()};
}

std::optional<Three> three(std::optional<Band<Duration>> const& band) {
    return band ? std::optional{three(*band)} : std::nullopt;
}

std::vector<int> lanes_to_try(plan::Plan const& plan) {
    auto lanes = calc::lanes_of(plan);
    for (auto const& swimmer : plan.swimmers) {
        lanes.set(swimmer.lane.value_or(99));
    }
    lanes.set(99);
    auto numbers = calc::numbers(lanes);
    numbers.push_back(0);
    return numbers;
}

} // namespace lengthwise::support
