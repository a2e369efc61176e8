#include "published/records.hpp"

#include "calc/threshold.hpp"
#include "support/swims.hpp"
#include "support/temp_folder.hpp"
#include "units/spell.hpp"

#include <catch2/catch.hpp>
#include <fmt/core.h>

#include <cmath>
#include <stdexcept>
#include <string>

/// World records as a trial of the predictions: two of them against the others.
namespace lengthwise {
namespace {

using published::Record;
using published::Records;

struct Tried {
    Record const* swum;
    Band<double> seconds;

    [[nodiscard]] double percent_off() const { return (seconds.expected / swum->seconds - 1) * 100; }
};

/// What two records make of those from the shorter one up.
std::vector<Tried> tried(Records const& records, Record const& shorter, Record const& longer) {
    auto trials = support::trials({{static_cast<double>(shorter.metres), shorter.seconds},
                                   {static_cast<double>(longer.metres), longer.seconds}});
    std::vector<Tried> tried;
    for (auto const& swum : records.swims) {
        trials.asked = {Distance::metres(swum.metres)};
        auto const verdict = calc::judge(trials);
        if (swum.metres > shorter.metres && swum.metres != longer.metres) {
            REQUIRE(verdict.predictions.size() == 1);
            tried.push_back({&swum, verdict.predictions.front().seconds});
        }
    }
    return tried;
}

Record const& of(Records const& records, int metres) {
    for (auto const& swum : records.swims) {
        if (swum.metres == metres) {
            return swum;
        }
    }
    throw std::out_of_range{"no such record"};
}

std::string clock(double seconds) {
    return spell::clock(Duration::seconds(static_cast<std::int64_t>(std::floor(seconds + 0.5))));
}

struct Pair {
    int shorter;
    int longer;
};
constexpr Pair pairs[] = {{200, 400}, {200, 800}, {400, 800}, {400, 1500}, {200, 1500}};

} // namespace

TEST_CASE("two records predict the others within 2 %, and inside the band", "[published]") {
    for (auto const& records : published::records) {
        for (auto const& [shorter, longer] : pairs) {
            for (auto const& each : tried(records, of(records, shorter), of(records, longer))) {
                CAPTURE(records.who, shorter, longer, each.swum->metres);
                CHECK(std::abs(each.percent_off()) < 2);
                CHECK(each.seconds.low <= each.swum->seconds);
                CHECK(each.seconds.high >= each.swum->seconds);
            }
        }
    }
}

TEST_CASE("the page prints these errors", "[published]") {
    auto const page = support::bytes_of(LENGTHWISE_ROOT "/docs/threshold.md");
    std::string rows;
    for (auto const& records : published::records) {
        for (auto const& [shorter, longer] : pairs) {
            for (auto const& each : tried(records, of(records, shorter), of(records, longer))) {
                rows += fmt::format("| {} | {} and {} m | {} m in {}, {}–{} | {} | {:+.1f} % |\n",
                                    records.who, shorter, longer, each.swum->metres,
                                    clock(each.seconds.expected), clock(each.seconds.low),
                                    clock(each.seconds.high), clock(each.swum->seconds), each.percent_off());
            }
        }
    }
    INFO(rows);
    CHECK(page.find(rows) != std::string::npos);
}

// Records of 400, 800 and 1500 m by themselves: the exponent of the power law between the two
// that the bands have, and near the expected one.
TEST_CASE("the records' own exponent lies between the band's", "[published]") {
    for (auto const& records : published::records) {
        CAPTURE(records.who);
        auto const& from = of(records, 400);
        auto const& to = of(records, 1500);
        auto const exponent =
            std::log(to.seconds / from.seconds) / std::log(static_cast<double>(to.metres) / from.metres);
        CHECK(exponent > 1.03);
        CHECK(exponent < 1.06);
        CHECK(exponent == Approx(1.04).margin(0.005));
    }
}

// Found in 19 swimmers, Revista Brasileira de Cineantropometria e Desempenho Humano, April 2009, The
// influence of different distances on determination of critical velocity in swimmers: 50, 100 and
// 200 m give a higher speed and a smaller intercept (1.47 m/s, 11.9 m) than 200, 400 and 800 m
// (1.34 m/s, 27.4 m).
TEST_CASE("short swims give a higher speed and a smaller reserve", "[published]") {
    for (auto const& records : published::records) {
        CAPTURE(records.who);
        auto const judged = [&records](std::vector<int> const& distances) {
            std::vector<support::Timed> swims;
            for (auto const metres : distances) {
                swims.push_back({static_cast<double>(metres), of(records, metres).seconds});
            }
            return *calc::judge(support::trials(swims)).threshold;
        };
        auto const shorter = judged({50, 100, 200});
        auto const longer = judged({200, 400, 800});
        CHECK(longer.speed < shorter.speed);
        CHECK(shorter.reserve < longer.reserve);
    }
}

} // namespace lengthwise
