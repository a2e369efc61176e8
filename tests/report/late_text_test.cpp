#include "report/late_text.hpp"

#include "report/width.hpp"
#include "support/generate.hpp"
#include "support/read_plan.hpp"

#include <catch2/catch.hpp>

#include <string>

using namespace lengthwise;

namespace {

struct How {
    plan::Index session = 0;
    int after = 0;
    std::int64_t seconds = 60;
    std::size_t width = 80;
    bool ascii = false;
};

std::string shown(std::string const& text, How const& how) {
    auto const read = support::read_plan(text);
    REQUIRE(read.error() == "");
    tailor::LateWish wish;
    wish.session = how.session;
    wish.after = how.after;
    wish.left = Duration::seconds(how.seconds);
    auto const late = tailor::late(read.plan(), wish);
    if (late.problem != tailor::Late::Problem::none) {
        return report::late_problem(read.plan(), wish, late, how.ascii);
    }
    return report::late_text(read.plan(), wish, late, {.width = how.width, .ascii = how.ascii},
                             report::Paint{});
}

std::string session(std::string const& lines, std::string const& head = "pool 25m\n") {
    return head + "threshold 1:40\nsession\n  main\n" + lines;
}

bool has(std::string const& text, std::string const& part) {
    INFO(text);
    return text.find(part) != std::string::npos;
}

} // namespace

TEST_CASE("what is over is rounded up, what is inside down", "[late]") {
    auto const by = [](std::string const& pace, std::int64_t seconds) {
        return shown(session("    50 at " + pace + " per 100\n"), {.seconds = seconds});
    };
    CHECK(has(by("1:40.2", 50), "\n   0:51           end\n"));
    CHECK(has(by("1:40.2", 50), "0:01 over at the slow end, expected 0:01 over\n"));
    CHECK(has(by("1:40", 50), "nothing is left out\n"));
    auto const band = shown(session("    2 x 50 choice easy rest 0-30s\n"), {.seconds = 160});
    CHECK(has(band, "0:18 over at the slow end, expected 0:16 inside\n"));
}

TEST_CASE("a race rep that becomes shorter is called none", "[late]") {
    auto const cut = [](std::string const& race) {
        return shown(session("    400 at 1:40 per 100\n", race + "pool 25m\n"), {.seconds = 350});
    };
    CHECK(has(cut("race 400m on 2027-06-13\n"), "350 m ends at 5:50, but is no race rep: you choose\n"));
    CHECK(has(cut("race 350m on 2027-06-13\n"), "350 m ends at 5:50: you choose\n"));
    CHECK(has(cut("race 750m on 2027-06-13\n"), "350 m ends at 5:50: you choose\n"));
    CHECK(has(cut(""), "350 m ends at 5:50: you choose\n"));
}

TEST_CASE("a fraction of a pool reads as such", "[late]") {
    auto const text = session("    8 lengths at 1:40 per 100\n", "pool 33 1/3 m\n");
    CHECK(has(shown(text, {.seconds = 210}), "200 m ends at 3:20: you choose"));
    CHECK(has(shown(text, {.seconds = 190}), "133⅓ m ends at 2:14: you choose"));
    CHECK(has(shown(text, {.seconds = 190, .ascii = true}), "133 1/3 m ends at 2:14: you choose"));
}

TEST_CASE("without lengths of a pool their column is not there", "[late]") {
    auto const text = shown(session("    100\n    10min\n", ""), {.seconds = 900});
    CHECK(has(text, "\n1   0:00  100\n"));
    CHECK(!has(text, "lengths"));
}

TEST_CASE("lanes that are alike share their column", "[late]") {
    auto const text = shown(session("    lane 1-3: 100\n    lane 4: 50\n    50\n"), {.seconds = 900});
    CHECK(has(text, "   lanes 1–3  lane 4  lengths\n"));
}

TEST_CASE("left-out rows that would fit say whether they stand in each other's way", "[late]") {
    // The drill has to go, and what stands behind it in the order went before.
    auto const text = [](std::string const& lines) {
        return "pool 25m\nthreshold 1:40\nrest 0s\nsession\n  drill\n    250 at 1:40 per 100\n  main\n"
               "    300 at 1:40 per 100\n" +
               lines;
    };
    auto const lanes = text("    lane 1: 100 at 1:40 per 100\n    lane 2: 100 at 1:40 per 100\n");
    CHECK(has(shown(lanes, {.seconds = 420}), "row 3 and row 4 fit, each in its own lane: you choose\n"));
    auto const shared = text("    200 at 1:40 per 100\n    100 at 1:40 per 100\n");
    CHECK(has(shown(shared, {.seconds = 520}), "row 3 and row 4 fit one at a time: you choose\n"));
    auto const alone = text("    100 at 1:40 per 100\n");
    CHECK(has(shown(alone, {.seconds = 420}), "row 3 alone fits: you choose\n"));
}

TEST_CASE("no line of a generated screen is wider than it may be", "[late]") {
    int screens = 0;
    for (std::uint64_t seed = 0; seed < 300; ++seed) {
        auto const made = test::generate({.seed = seed, .lanes = 60});
        auto const read = support::read_plan(made.text);
        for (plan::Index i = 0; i < read.plan().sessions.size(); ++i) {
            for (std::size_t const width : {40U, 60U, 80U}) {
                auto const text =
                    shown(made.text, {.session = i, .after = 1, .seconds = 300, .width = width});
                bool const screen = text.find("times at the slow end") != std::string::npos;
                screens += screen ? 1 : 0;
                for (std::size_t at = 0; screen && at < text.size();) {
                    auto const end = text.find('\n', at);
                    CAPTURE(seed, i, width);
                    INFO(text);
                    REQUIRE(report::cells(text.substr(at, end - at)) <= width);
                    at = end + 1;
                }
            }
        }
    }
    CHECK(screens > 300);
}
