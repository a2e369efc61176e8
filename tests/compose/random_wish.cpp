#include "compose/random_wish.hpp"

#include "compose/wishes.hpp"
#include "units/spell.hpp"

#include <fmt/core.h>

#include <algorithm>
#include <array>

namespace lengthwise::support {

namespace {

class Pen {
  public:
    explicit Pen(std::mt19937& random) : random_(random) {}

    [[nodiscard]] std::int64_t between(std::int64_t low, std::int64_t high) {
        return low + static_cast<std::int64_t>(random_() % static_cast<std::uint64_t>(high - low + 1));
    }
    [[nodiscard]] bool one_in(std::int64_t n) { return between(1, n) == 1; }

    [[nodiscard]] Pool pool() {
        std::array const pools{
            Pool::of(Distance::metres(25), Unit::metre),         Pool::of(Distance::metres(25), Unit::metre),
            Pool::of(Distance::metres(50), Unit::metre),         Pool::of(Distance::yards(25), Unit::yard),
            Pool::of(Distance::units(1'000'000), Unit::metre),   Pool::of(Distance::metres(20), Unit::metre),
            Pool::of(Distance::metres(15), Unit::metre),         Pool::of(Distance::metres(100), Unit::metre),
            Pool::of(Distance::units(37 * 15'000), Unit::metre),
        };
        return pools[static_cast<std::size_t>(between(0, static_cast<std::int64_t>(pools.size()) - 1))];
    }

    [[nodiscard]] Distance race() {
        std::array const races{100, 200, 400, 750, 1000, 1500, 1900, 3000, 3800};
        return Distance::metres(
            races[static_cast<std::size_t>(between(0, static_cast<std::int64_t>(races.size()) - 1))]);
    }

  private:
    std::mt19937& random_;
};

} // namespace

compose::Request random_wish(std::mt19937& random) {
    Pen pen{random};
    compose::Request request;
    request.pool = pen.pool();
    request.race.distance = pen.race();
    request.from = monday + std::chrono::days{pen.between(0, 6)};
    request.race.on = request.from + std::chrono::days{pen.between(7, 280)};
    request.days = days(static_cast<std::size_t>(pen.between(1, 4)));
    if (request.days.size() == 1) {
        set_limit(request, "sessions", 1);
    }
    auto const race = request.race.distance.units();
    request.longest = std::max(request.pool.length, Distance::units(race * pen.between(5, 90) / 100));
    request.session =
        std::max(request.longest * pen.between(1, 4), Distance::units(race * pen.between(50, 150) / 100));
    request.session = std::min(request.session, Distance::metres(6000));
    request.slot = Duration::minutes(pen.between(30, 120));
    if (!pen.one_in(5)) {
        request.threshold = Duration::seconds(pen.between(70, 170));
    }
    for (auto i = pen.one_in(3) ? pen.between(1, 12) : 0; i > 0; --i) {
        request.closed.push_back(request.from + std::chrono::days{pen.between(0, 200)});
    }
    // In whole percent, seconds and metres, as they can be written.
    auto const sometimes = [&](std::string_view rule, std::int64_t low, std::int64_t high,
                               std::int64_t unit = 1) {
        if (pen.one_in(10)) {
            set_limit(request, rule, unit * pen.between(low, high));
        }
    };
    sometimes("rep-step", 10, 100);
    sometimes("week-growth", 2, 30);
    sometimes("race-rep", 50, 110);
    sometimes("slot", 0, 300, Duration::seconds(1).ms());
    sometimes("session-floor", 1, race * 3 / 2 / Distance::per_metre, Distance::per_metre);
    sometimes("taper", 30, 80);
    return request;
}

std::string said(compose::Request const& request) {
    auto const in_metres = [](Distance distance) { return spell::json_metres(distance); };
    auto text =
        fmt::format("race {} on {} from {}, pool {}, {} days, today {} in {}, slot {}",
                    in_metres(request.race.distance), spell::iso(request.race.on), spell::iso(request.from),
                    in_metres(request.pool.length), request.days.size(), in_metres(request.longest),
                    in_metres(request.session), spell::clock(request.slot));
    if (request.threshold) {
        text += ", threshold " + spell::clock(*request.threshold);
    }
    for (auto const& limit : request.limits) {
        text += fmt::format(", {} {}", plan::rules[limit.rule].name, limit.low);
    }
    for (auto const day : request.closed) {
        text += ", not " + spell::iso(day);
    }
    return text;
}

} // namespace lengthwise::support
