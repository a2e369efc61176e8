#include "calc/lane.hpp"

#include <algorithm>

namespace lengthwise::calc {
namespace {

/// The smallest whole number at or above.
std::int64_t ceiling(Exact const& value) {
    auto const below = value.floor();
    return value == Exact{below} ? below : below + 1;
}

/// How many times m, counted from 1, stay below.
std::int64_t times_below(Exact const& limit) {
    return ceiling(limit) - 1;
}

} // namespace

std::optional<Exact> caught_after(LaneSwim const& ahead, LaneSwim const& behind, Duration gap) {
    if (!(behind.pace < ahead.pace)) {
        return std::nullopt;
    }
    auto const at = Exact{gap.ms()} / (ahead.pace - behind.pace);
    auto const end = Exact{std::min(ahead.distance, behind.distance).units()};
    return at < end ? std::optional{at} : std::nullopt;
}

/// In m both x and x + 2 L m grow evenly, so the first and the last time can be reckoned without the others.
std::optional<Laps> laps(LaneSwim const& ahead, LaneSwim const& behind, Duration gap, Distance pool) {
    if (!(ahead.pace < behind.pace)) {
        return std::nullopt;
    }
    auto const slower_by = behind.pace - ahead.pace;
    auto const g = Exact{gap.ms()};
    auto const lap = Exact{(pool * 2).units()};
    auto const first = std::max<std::int64_t>(1, ceiling(g / (lap * ahead.pace)));
    auto const within = [&](Distance rep, Exact const& pace) {
        return times_below((Exact{rep.units()} * slower_by + g) / (lap * pace));
    };
    auto const last = std::min(within(ahead.distance, behind.pace), within(behind.distance, ahead.pace));
    if (last < first) {
        return std::nullopt;
    }
    auto const step = (lap * behind.pace / slower_by).reduced();
    return Laps{(step * Exact{first} - g / slower_by).reduced(), step, last - first + 1};
}

Duration lap_time(Exact const& pace, Distance pool) {
    return Duration::ms((pace * Exact{(pool * 2).units()}).rounded());
}

} // namespace lengthwise::calc
