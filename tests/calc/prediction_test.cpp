#include "calc/prediction.hpp"

#include "calc/threshold.hpp"
#include "support/swims.hpp"

#include <catch2/catch.hpp>

#include <cmath>
#include <string>

/// Times all out for other distances.
namespace lengthwise::calc {
namespace {

/// "13:48 14:05 14:21", to the second half up.
std::string clocks(Prediction const& prediction) {
    std::string text;
    for (auto const seconds :
         {prediction.seconds.low, prediction.seconds.expected, prediction.seconds.high}) {
        auto const whole = static_cast<int>(std::floor(seconds + 0.5));
        text += (text.empty() ? "" : " ") + std::to_string(whole / 60) + ':' + (whole % 60 < 10 ? "0" : "") +
                std::to_string(whole % 60);
    }
    return text;
}

Verdict asked(std::vector<support::Timed> const& swims, std::vector<Distance> const& distances) {
    auto trials = support::trials(swims);
    trials.asked = distances;
    return judge(trials);
}

std::string predicted(std::vector<support::Timed> const& swims, std::int64_t metres) {
    auto const verdict = asked(swims, {Distance::metres(metres)});
    return verdict.predictions.empty() ? "" : clocks(verdict.predictions.front());
}

bool says(Verdict const& verdict, Remark::Kind kind) {
    for (auto const& remark : verdict.remarks) {
        if (remark.kind == kind) {
            return true;
        }
    }
    return false;
}

// Worked with paper and a pocket calculator: CS 20/23, D' 15.652 m, and from the 400 m
// 442 (D / 400)^b.
TEST_CASE("the worked example") {
    std::vector<support::Timed> const swims{{200, 212}, {400, 442}};
    CHECK(predicted(swims, 750) == "13:48 14:05 14:21");  // the line, 2 % below and above
    CHECK(predicted(swims, 1500) == "27:53 28:27 29:54"); // above: 442 * 3.75^1.06
    CHECK(predicted(swims, 1900) == "36:30 37:15 38:25"); // beyond 30 min: 442 * 4.75^1.04
}

TEST_CASE("far beyond the swims the band is the power law's") {
    auto const verdict = asked({{200, 212}, {400, 442}}, {Distance::metres(4000)});
    auto const& [low, expected, high] = verdict.predictions.front().seconds;
    CHECK(low == Approx(442 * std::pow(10, 1.03)));
    CHECK(expected == Approx(442 * std::pow(10, 1.04)));
    CHECK(high == Approx(442 * std::pow(10, 1.06)));
}

TEST_CASE("the line is used up to 30 min, to the millisecond") {
    // CS 1 m/s, D' 20 m: 1820 m in 30:00.
    std::vector<support::Timed> const swims{{200, 180}, {500, 480}};
    CHECK(predicted(swims, 1820).find(" 30:00 ") != std::string::npos);
    auto const beyond = asked(swims, {Distance::metres(1820) + Distance::units(30)});
    CHECK(beyond.predictions.front().seconds.expected == Approx(480 * std::pow(3.64, 1.04)).epsilon(1e-5));
}

TEST_CASE("the power law starts from 3:30") {
    // CS 12/11 m/s, D' 21 m: 1500 m in 22:36 on the line, 23:23 by 210 * 6^1.06.
    auto const line_alone = asked({{130, 100}, {250, 209.999}}, {Distance::metres(1500)});
    auto const both = asked({{130, 100}, {250, 210}}, {Distance::metres(1500)});
    auto const& narrow = line_alone.predictions.front().seconds;
    auto const& wide = both.predictions.front().seconds;
    CHECK(narrow.low == Approx(narrow.expected * 0.98));
    CHECK(narrow.high == Approx(narrow.expected * 1.02));
    CHECK(wide.high == Approx(210 * std::pow(6, 1.06)));
    CHECK(wide.expected == Approx(narrow.expected).epsilon(1e-4));
}

TEST_CASE("beyond 30 min nothing is predicted from short swims") {
    auto const none = asked({{130, 90}, {250, 209.999}}, {Distance::metres(2000)});
    CHECK(none.predictions.empty());
    CHECK(says(none, Remark::Kind::too_far));
    auto const some = asked({{130, 90}, {250, 210}}, {Distance::metres(2000)});
    REQUIRE(some.predictions.size() == 1);
    CHECK_FALSE(says(some, Remark::Kind::too_far));
    CHECK(some.predictions.front().seconds.expected == Approx(210 * std::pow(8, 1.04)));
}

TEST_CASE("nothing below the shortest swim is predicted") {
    std::vector<support::Timed> const swims{{200, 212}, {400, 442}};
    CHECK(predicted(swims, 200) != "");
    auto const below = asked(swims, {Distance::metres(199)});
    CHECK(below.predictions.empty());
    CHECK(says(below, Remark::Kind::too_near));
}

TEST_CASE("between the swims the law's ends change places") {
    auto const verdict = asked({{200, 150}, {1500, 1260}}, {Distance::metres(300)});
    auto const& [low, expected, high] = verdict.predictions.front().seconds;
    CHECK(low == Approx(1260 * std::pow(0.2, 1.06)));
    CHECK(expected > low);
    CHECK(high >= expected * 1.02);
}

TEST_CASE("what nobody asked for is left out without a word") {
    auto trials = support::trials({{200, 212}, {400, 442}});
    trials.usual = {Distance::metres(100), Distance::metres(750)};
    auto const verdict = judge(trials);
    REQUIRE(verdict.predictions.size() == 1);
    CHECK(clocks(verdict.predictions.front()) == "13:48 14:05 14:21");
    CHECK_FALSE(says(verdict, Remark::Kind::too_near));
}

TEST_CASE("a usual race as long as the shortest swim is foretold") {
    auto trials = support::trials({{200, 212}, {400, 442}});
    trials.usual = {Distance::metres(200), Distance::metres(200) - Distance::units(1)};
    auto const verdict = judge(trials);
    REQUIRE(verdict.predictions.size() == 1);
    // The swim itself; 2 % below it, and 442 * 0.5^1.03 s.
    CHECK(clocks(verdict.predictions.front()) == "3:28 3:32 3:36");
}

// A line that lies beyond the shortest swim at time 0 says nothing of it.
TEST_CASE("a line that runs out before the start is not used") {
    auto trials = support::trials({{10, 10}, {10.5, 11}, {11, 100}});
    trials.asked = {Distance::metres(10)};
    auto const verdict = judge(trials);
    REQUIRE(verdict.threshold);
    CHECK(Exact{10} < verdict.threshold->reserve);
    CHECK(verdict.predictions.empty());
}

} // namespace
} // namespace lengthwise::calc
