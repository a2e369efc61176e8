#include "report/time_words.hpp"

#include "report/pace_words.hpp"
#include "units/spell.hpp"

#include <fmt/core.h>

#include <algorithm>
#include <numeric>

namespace lengthwise::report {
namespace {

constexpr std::int64_t minute = Duration::minutes(1).ms();

constexpr std::int64_t rounded_up(Duration time) {
    return (time.ms() + minute - 1) / minute;
}

} // namespace

std::int64_t minutes(Duration time) {
    return (time.ms() + minute / 2) / minute;
}

std::string minutes_text(Duration time) {
    if (time.zero()) {
        return "-";
    }
    auto const whole = minutes(time);
    return whole == 0 ? "<1" : fmt::format("{}", whole);
}

std::string band_minutes(Band<Duration> const& band, bool ascii) {
    if (band.high.zero()) {
        return "-";
    }
    auto const low = band.low.ms() / minute;
    auto const high = rounded_up(band.high);
    return low == high ? fmt::format("{}", low) : fmt::format("{}{}{}", low, ascii ? "-" : "–", high);
}

std::string slot_minutes(Duration slot) {
    return slot.ms() % minute == 0 ? fmt::format("{} min", minutes(slot)) : spell::spaced(slot);
}

std::vector<std::int64_t> adding_up(std::vector<Duration> const& parts) {
    std::vector<std::int64_t> whole;
    for (auto const part : parts) {
        whole.push_back(part.ms() / minute);
    }
    std::vector<std::size_t> order(parts.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    std::stable_sort(order.begin(), order.end(),
                     [&](auto a, auto b) { return parts[a].ms() % minute > parts[b].ms() % minute; });
    auto const sum = std::accumulate(parts.begin(), parts.end(), Duration{});
    auto const missing = minutes(sum) - std::accumulate(whole.begin(), whole.end(), std::int64_t{0});
    for (std::size_t i = 0; i < static_cast<std::size_t>(missing); ++i) {
        ++whole[order[i]];
    }
    return whole;
}

std::string pace_text(plan::Threshold const& threshold, bool ascii) {
    return fmt::format("{}{} per {}", threshold.about ? "about " : "", spell::clock(threshold.time),
                       spell::distance(threshold.per, threshold.per_unit, ascii));
}

std::string fits_text(Duration slot, std::optional<Duration> slowest, Unit unit) {
    auto const fits = "fits " + spell::spaced(slot) + " at ";
    return slowest ? fmt::format("{}a threshold of {} or faster", fits, pace_per_100(*slowest, unit))
                   : fits + "no threshold";
}

} // namespace lengthwise::report
