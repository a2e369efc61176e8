#include "report/time_words.hpp"

#include "calc/band.hpp"

#include <catch2/catch.hpp>

#include <numeric>
#include <random>

namespace lengthwise::report {
namespace {

constexpr Duration at(std::int64_t minutes, std::int64_t seconds) {
    return Duration::minutes(minutes) + Duration::seconds(seconds);
}

TEST_CASE("minutes are rounded half up, and a little is not nothing") {
    CHECK(minutes_text(at(37, 29)) == "37");
    CHECK(minutes_text(at(37, 30)) == "38");
    CHECK(minutes_text(at(0, 29)) == "<1");
    CHECK(minutes_text({}) == "-");
}

TEST_CASE("a band in minutes is rounded outward") {
    CHECK(band_minutes({at(36, 59), at(38, 0), at(41, 1)}) == "36–42");
    CHECK(band_minutes({at(36, 0), at(38, 0), at(42, 0)}) == "36–42");
    CHECK(band_minutes({at(36, 59), at(38, 0), at(41, 1)}, true) == "36-42");
    CHECK(band_minutes(calc::exactly(at(7, 0))) == "7");
    CHECK(band_minutes(calc::exactly(at(7, 20))) == "7–8");
    CHECK(band_minutes({}) == "-");
}

TEST_CASE("minutes of parts add up to those of their sum") {
    CHECK(adding_up({at(4, 30), at(6, 40), at(23, 20), at(3, 0)}) == std::vector<std::int64_t>{5, 7, 23, 3});
    CHECK(adding_up({at(0, 20), at(0, 20), at(0, 20)}) == std::vector<std::int64_t>{1, 0, 0});
    CHECK(adding_up({}).empty());

    std::mt19937 random{20261125};
    for (int i = 0; i < 2000; ++i) {
        std::vector<Duration> parts(random() % 9);
        for (auto& part : parts) {
            part = Duration::ms(static_cast<std::int64_t>(random() % 1'000'000));
        }
        auto const whole = adding_up(parts);
        CHECK(std::accumulate(whole.begin(), whole.end(), std::int64_t{0}) ==
              minutes(std::accumulate(parts.begin(), parts.end(), Duration{})));
        for (std::size_t part = 0; part < parts.size(); ++part) {
            auto const off = Duration::minutes(whole[part]) - parts[part];
            CHECK((off < at(1, 0) && off > Duration{} - at(1, 0)));
        }
    }
}

TEST_CASE("a pace is said as in the file, what fits per 100 of the unit") {
    plan::Threshold threshold;
    threshold.time = Duration::seconds(115);
    threshold.per = Distance::metres(100);
    CHECK(pace_text(threshold) == "1:55 per 100 m");
    threshold.about = true;
    CHECK(pace_text(threshold) == "about 1:55 per 100 m");
    threshold.per = Distance::yards(25);
    threshold.per_unit = Unit::yard;
    CHECK(pace_text(threshold) == "about 1:55 per 25 yd");

    CHECK(fits_text(at(45, 0), Duration::seconds(126), Unit::metre) ==
          "fits 45 min at a threshold of 2:06 per 100 m or faster");
    CHECK(fits_text(at(45, 0), {}, Unit::metre) == "fits 45 min at no threshold");
}

} // namespace
} // namespace lengthwise::report
