#include "compose/session_time.hpp"

#include "calc/growth.hpp"

#include <catch2/catch.hpp>

#include <algorithm>
#include <vector>

using namespace lengthwise;
using compose::DayKind;
using compose::SessionTimes;

namespace {

Pool const pool_25m = Pool::of(Distance::metres(25), Unit::metre);

std::vector<Pool> const pools{
    Pool::of(Distance::metres(15), Unit::metre),  pool_25m,
    Pool::of(Distance::yards(25), Unit::yard),    Pool::of(Distance::units(1'000'000), Unit::metre),
    Pool::of(Distance::metres(40), Unit::metre),  Pool::of(Distance::metres(50), Unit::metre),
    Pool::of(Distance::metres(100), Unit::metre),
};

/// At 1:40, 2:00, 2:20 and 2:40 per 100 m, to the nearest minute.
std::vector<std::int64_t> minutes(DayKind kind, int laps, int rep) {
    std::vector<std::int64_t> found;
    for (auto const seconds : {100, 120, 140, 160}) {
        auto const time = SessionTimes{pool_25m, Duration::seconds(seconds)}.of(kind, laps, rep);
        found.push_back((time.ms() + 30'000) / 60'000);
    }
    return found;
}

} // namespace

TEST_CASE("session time: days of the race rep, and a pace day") {
    CHECK(minutes(DayKind::long_day, 20, 15) == std::vector<std::int64_t>{24, 28, 32, 37});
    CHECK(minutes(DayKind::long_day, 40, 30) == std::vector<std::int64_t>{48, 57, 65, 74});
    CHECK(minutes(DayKind::pace, 20, 1) == std::vector<std::int64_t>{32, 37, 42, 47});
}

TEST_CASE("session time: on paper") {
    // Four laps of 50 m at 2:00 per 100 m, the rep one lap: two of warm-up, main, cool-down. A lap is
    // 60 s, easy 72, choice 88.56. There is no lap that a line could leave over.
    auto const at_2_00 = SessionTimes{pool_25m, Duration::minutes(2)};
    CHECK(at_2_00.of(DayKind::long_day, 4, 1).ms() == 2 * 88'560 + 40'000 + 72'000 + 60'000 + 108'560);

    // Five on another day, two of them main. One left over is swum as cool-down, 108.56 s for 102.
    // Warm-up 108.56, drill of half a lap 1.1 x (60 x 1.5 + 60) / 2 + 30 = 112.5.
    CHECK(at_2_00.of(DayKind::pace, 5, 1).ms() == 108'560 + 112'500 + 102'000 + 2 * 108'560);

    // Five on the long day: two of warm-up, one beside the rep, cool-down. Left over for the cool-down, that
    // one would rest 20 s for 30; so it counts where it takes longer, in main.
    CHECK(at_2_00.of(DayKind::long_day, 5, 1).ms() == 2 * 108'560 + 118'560 + 72'000 + 60'000 + 108'560);
}

TEST_CASE("session time: rounded up to the millisecond") {
    // A lap of 33⅓ m twice at 1:40: 66.666… s. Drill is 1.1 x 1.25 of it, easy 1.2, choice 1.476.
    auto const pool = Pool::of(Distance::units(1'000'000), Unit::metre);
    auto const time = SessionTimes{pool, Duration::seconds(100)}.of(DayKind::pace, 4, 1);
    CHECK(time.ms() == 118'400 + 121'667 + 110'000 + 118'400);
}

TEST_CASE("session time: grows with the laps, and with the rep where they are the fewest for it") {
    for (auto const& pool : pools) {
        for (auto const seconds : {60, 100, 133, 240}) {
            SessionTimes const times{pool, Duration::seconds(seconds)};
            Duration before;
            for (auto laps = 4; laps <= 90; ++laps) {
                auto const time = times.of(DayKind::pace, laps, 1);
                CHECK(time > before);
                before = time;
            }
            before = {};
            for (auto rep = 1; rep <= 41; ++rep) {
                auto const need = static_cast<int>(calc::session_need(rep));
                auto last = times.of(DayKind::long_day, need, rep);
                CHECK(last > before);
                before = last;
                for (auto laps = need + 1; laps <= 90; ++laps) {
                    auto const time = times.of(DayKind::long_day, laps, rep);
                    CHECK(time > last);
                    last = time;
                }
            }
        }
    }
}

TEST_CASE("session time: the longest races of the shortest pools") {
    auto const pool_15m = pools.front();
    SessionTimes const times{pool_15m, Duration::seconds(110)};
    Duration before;
    for (auto rep = 1; rep <= 340; ++rep) {
        auto const need = static_cast<int>(calc::session_need(rep));
        auto const time = times.of(DayKind::long_day, need, rep);
        CHECK(time > before);
        CHECK(times.of(DayKind::long_day, need + 1, rep) > time);
        before = time;
    }
}

TEST_CASE("session time: the largest session that fits") {
    SessionTimes const times{pool_25m, Duration::seconds(120)};
    auto const at_most = [&](Duration slot) { return times.largest(DayKind::long_day, 15, slot, 500); };
    auto const time = times.of(DayKind::long_day, 22, 15);
    CHECK(at_most(time) == 22);
    CHECK(at_most(time - Duration::ms(1)) == 21);
    CHECK(at_most(Duration::seconds(1)) < 18); // 15 laps and three for the other sections
    CHECK(times.largest(DayKind::pace, 1, Duration::hours(9), 50) == 50);
}
