#include "fuzz/compose_wish.hpp"

#include "plan/rules.hpp"

#include <algorithm>
#include <array>

namespace lengthwise::fuzz {
namespace {

/// Takes numbers from bytes; the lowest once there are no more.
class Bytes {
  public:
    explicit Bytes(std::string_view bytes) : left_(bytes) {}

    [[nodiscard]] std::int64_t between(std::int64_t low, std::int64_t high) {
        std::uint64_t number = 0;
        auto const choices = static_cast<std::uint64_t>(high - low) + 1;
        for (std::uint64_t most = 1; most < choices && !left_.empty(); most *= 256) {
            number = number * 256 + static_cast<unsigned char>(left_.front());
            left_.remove_prefix(1);
        }
        return low + static_cast<std::int64_t>(number % choices);
    }
    [[nodiscard]] bool one_in(std::int64_t n) { return between(0, n - 1) == n - 1; }
    /// Most often usual figures, sometimes any at all.
    [[nodiscard]] std::int64_t mostly(std::int64_t low, std::int64_t high, std::int64_t beyond) {
        return one_in(8) ? between(0, beyond) : between(low, high);
    }
    template <typename T, std::size_t N>
    [[nodiscard]] T pick(std::array<T, N> const& choices) {
        return choices[static_cast<std::size_t>(between(0, static_cast<std::int64_t>(N) - 1))];
    }

  private:
    std::string_view left_;
};

/// A rule whose figure may be set, and from where to where the everyday tests do.
struct Tuned {
    std::string_view rule;
    std::int64_t low;
    std::int64_t high;
    std::int64_t unit;
};
constexpr std::array<Tuned, 7> tuned{{{"rep-step", 10, 100, 1},
                                      {"week-growth", 2, 30, 1},
                                      {"race-rep", 50, 110, 1},
                                      {"taper", 30, 80, 1},
                                      {"sessions", 1, 2, 1},
                                      {"slot", 0, 300, 1000},
                                      {"session-floor", 1, 1500, Distance::per_metre}}};

Pool pool(Bytes& bytes) {
    std::array const known{Pool::of(Distance::metres(25), Unit::metre),
                           Pool::of(Distance::yards(25), Unit::yard),
                           Pool::of(Distance::metres(50), Unit::metre),
                           Pool::of(Distance::units(1'000'000), Unit::metre),
                           Pool::of(Distance::units(37 * 15'000), Unit::metre),
                           Pool::open_water()};
    if (!bytes.one_in(8)) {
        return bytes.pick(known);
    }
    auto const hundredths = bytes.between(0, 12'000);
    return bytes.one_in(2) ? Pool::of(Distance::units(hundredths * Distance::per_metre / 100), Unit::metre)
                           : Pool::of(Distance::yards(hundredths / 100), Unit::yard);
}

void add_race(Bytes& bytes, compose::Request& request) {
    std::array const names{"", "Gull Island", "a \"quoted\" one", "back\\slash", "\xC3\x89tang # 3"};
    std::array const races{400, 750, 1500, 1900, 3800};
    auto& race = request.race;
    race.name = bytes.pick(names);
    race.distance = Distance::metres(bytes.one_in(4) ? bytes.between(0, 12'000) : bytes.pick(races));
    if (bytes.one_in(8)) {
        race.unit = Unit::yard;
        race.distance = Distance::yards(bytes.between(1, 5000));
    }
    if (bytes.one_in(8)) {
        race.kind = RaceKind::sprint;
        race.distance = Distance::metres(750);
    }
    race.on = request.from + std::chrono::days{bytes.mostly(7, 280, 800) - (bytes.one_in(32) ? 50 : 0)};
}

void add_days(Bytes& bytes, compose::Request& request) {
    auto const chosen =
        bytes.one_in(4) ? bytes.between(0, 127) : bytes.pick(std::array<std::int64_t, 4>{18, 42, 1, 45});
    for (std::uint8_t day = 0; day < 7; ++day) {
        if ((chosen >> day & 1) != 0) {
            request.days.push_back(day);
        }
    }
    if (bytes.one_in(2)) {
        request.at = TimeOfDay{static_cast<std::uint16_t>(bytes.between(0, 24 * 60 - 1))};
    }
    for (auto left = bytes.one_in(3) ? bytes.between(1, 20) : 0; left > 0; --left) {
        request.closed.push_back(request.from + std::chrono::days{bytes.between(0, 255)});
    }
}

void add_limits(Bytes& bytes, compose::Request& request) {
    for (auto const& one : tuned) {
        if (bytes.one_in(6)) {
            auto const value = bytes.mostly(one.low, one.high, 20 * one.high) * one.unit;
            request.limits.push_back(
                {.rule = *plan::find_rule(one.rule), .low = value, .high = value, .span = {}});
        }
    }
}

bool is_usual(plan::Limit const& limit) {
    auto const one = std::ranges::find(tuned, plan::rules[limit.rule].name, &Tuned::rule);
    return limit.low >= one->low * one->unit && limit.low <= one->high * one->unit;
}

} // namespace

compose::Request wish_of(std::string_view text) {
    Bytes bytes{text};
    compose::Request request;
    request.pool = pool(bytes);
    request.from = *parse_date("2027-04-26") + std::chrono::days{bytes.mostly(0, 6, 3000)};
    add_race(bytes, request);
    add_days(bytes, request);
    request.longest = Distance::metres(bytes.mostly(15, 1000, 11'000));
    request.session = Distance::metres(bytes.mostly(200, 4000, 11'000));
    if (bytes.one_in(4)) {
        request.longest = bytes.between(1, 60) * request.pool.length;
    }
    request.slot = Duration::minutes(bytes.mostly(30, 120, 300));
    if (!bytes.one_in(4)) {
        request.threshold = Duration::ms(bytes.mostly(70, 170, 700) * 1000);
    }
    add_limits(bytes, request);
    request.kit = {.board = !bytes.one_in(3), .buoy = !bytes.one_in(3)};
    request.race_in_pool = bytes.one_in(4);
    return request;
}

bool is_usual(compose::Request const& request) {
    auto const pace = request.threshold.value_or(Duration::seconds(100));
    return pace >= Duration::seconds(70) && pace <= Duration::seconds(170) &&
           std::ranges::all_of(request.limits, [](auto const& limit) { return is_usual(limit); });
}

} // namespace lengthwise::fuzz
