#include "calc/prediction.hpp"
#include "calc/threshold.hpp"
#include "support/swims.hpp"

#include <catch2/catch.hpp>

#include <cmath>

/// What publications on critical speed say in figures, said by us.
namespace lengthwise {
namespace {

calc::Threshold threshold(std::vector<support::Timed> const& swims) {
    auto const verdict = calc::judge(support::trials(swims));
    REQUIRE(verdict.threshold);
    return *verdict.threshold;
}

} // namespace

// Wakayoshi et al. 1993, Eur J Appl Physiol 66:90-95: CS = (400 - 200) / (T400 - T200).
TEST_CASE("the two-distance method", "[published]") {
    for (int t200 = 110; t200 < 300; t200 += 7) {
        for (int t400 = 2 * t200; t400 < 2 * t200 + 90; t400 += 11) {
            auto const found =
                threshold({{200, static_cast<double>(t200)}, {400, static_cast<double>(t400)}});
            CHECK(found.speed == calc::Exact{400 - 200, t400 - t200});
        }
    }
}

// Ginn E. 1993, Critical speed and training intensities for swimming, Australian Sports
// Commission: at CS 1.3 m/s the time for 400 m at CS is 307.7 s (example as quoted on public
// pages about the test of 50 and 400 m).
TEST_CASE("training times at critical speed", "[published]") {
    auto const found = threshold({{50, 32.5}, {375, 282.5}});
    CHECK(found.speed == calc::Exact{13, 10});
    CHECK((found.pace * 4).approximate() == Approx(307.7).margin(0.05));
}

// Dekerle et al. 2002, Int J Sports Med 23:93-98: CS from 200 and 400 m is 3.2 % above the speed
// of a 30-minute test. Rev Bras Med Esporte 2007, Technical indexes corresponding to the critical
// speed: 1.30 m/s against 1.23 m/s in one group.
TEST_CASE("30 minutes are slower than critical speed", "[published]") {
    auto const found = threshold({{200, 150}, {460, 350}}); // 1.3 m/s
    REQUIRE(found.speed == calc::Exact{13, 10});
    auto const [faster, slower] = found.over_half_an_hour();
    CHECK(100 / faster.approximate() * 1.032 == Approx(1.3));
    auto const group = 100 / 1.23;
    CHECK(faster.approximate() < group);
    CHECK(group < slower.approximate());
}

// Riegel P. S. 1981, Athletic Records and Human Endurance, American Scientist 69:285-290:
// T2 = T1 (D2 / D1)^1.06; twice as far takes 2.085 times as long. His range begins at 3.5 min.
TEST_CASE("the power law", "[published]") {
    CHECK(calc::power_law({5000, 1200}, 10'000, 1.06) / 1200 == Approx(2.085).margin(0.0005));
    CHECK(calc::power_law({5000, 1200}, 10'000, 1.06) == Approx(2501.9).margin(0.05)); // 41:42
    // 400 m in 6:40.
    CHECK(calc::power_law({400, 400}, 750, 1.03) == Approx(12 * 60 + 44.28).margin(0.005));
    CHECK(calc::power_law({400, 400}, 1500, 1.06) == Approx(27 * 60 + 3.80).margin(0.005));
}

// Wolfrum et al. 2013, SpringerPlus 2:643: 25 m courses are 2.0 +- 0.6 % faster than 50 m courses.
TEST_CASE("a pace of a 50 m course is some 2 % faster in 25 m", "[published]") {
    auto const swims = [](Pool const& here) {
        return support::trials({{200, 212, support::metres_50}, {400, 442, support::metres_50}}, here);
    };
    auto const long_course = calc::judge(swims(support::metres_50)).threshold->pace;
    auto const short_course = calc::judge(swims(support::metres_25)).threshold->pace;
    auto const percent = (long_course / short_course - 1).approximate() * 100;
    CHECK(percent > 1.4);
    CHECK(percent < 2.6);
}

} // namespace lengthwise
