#include "calc/band.hpp"
#include "calc/timeline.hpp"
#include "calc/work_by.hpp"
#include "support/generate.hpp"
#include "support/plan_text.hpp"
#include "support/read_plan.hpp"

#include <catch2/catch.hpp>

#include <map>
#include <string>

/// Swimming time by word.
namespace lengthwise::calc {
namespace {

using support::read_plan;
using support::session_with;

/// Expected seconds by word; -1 where unknown.
std::map<std::string, double> words(std::string const& text, By by, int lane = 0) {
    auto const read = read_plan(text);
    CHECK(read.error() == "");
    WordTimes sum;
    WorkReader reader{read.plan(), by, lane};
    for (auto const& session : read.plan().sessions) {
        reader.add_session(session, sum);
    }
    std::map<std::string, double> seconds;
    for (auto const& word : sum.words) {
        seconds[word_of(by, word.key)] =
            word.known ? static_cast<double>(word.swimming.expected.ms()) / 1000 : -1;
    }
    return seconds;
}

using Words = std::map<std::string, double>;
std::string const head = "pool 25m\nthreshold 1:40\n";

} // namespace

TEST_CASE("swimming time by effort, rests and waits left out") {
    auto const text =
        session_with("4 x 100 easy rest 20s, last hard\npause 1min\n2 x (50 sprint on 2:00 + 100)\n"
                     "if time: 400 easy\n10min easy",
                     head);
    CHECK(words(text, By::effort) ==
          Words{{"easy", 3 * 115 + 600}, {"hard", 95}, {"sprint", 2 * 42.5}, {"unsaid", 2 * 107}});
}

TEST_CASE("splits go by their parts") {
    auto const text = session_with("2 x 200 broken at 100 for 30s as 50 kick hard / 50 easy", head);
    CHECK(words(text, By::mode) == Words{{"swim", 4 * 57.5}, {"kick", 4 * 50 * 1.61 * 0.95}});
    CHECK(words(text, By::effort) == Words{{"easy", 4 * 57.5}, {"hard", 4 * 50 * 1.61 * 0.95}});
    CHECK(words(session_with("3min as 1min kick / 2min easy", head), By::mode) ==
          Words{{"kick", 60}, {"swim", 120}});
}

TEST_CASE("parts of a time held add up to it") {
    auto const held = words(session_with("300 hold 5:00.001 as 25 kick / 50 pull / 75", head), By::mode);
    CHECK(held.at("kick") + held.at("pull") + held.at("swim") == Approx(300.001));
    CHECK(held.at("kick") == Approx(50).margin(0.001));
}

TEST_CASE("words without a pace are unknown, the others are not") {
    CHECK(words(session_with("100 easy\n100 at 2:00 per 100", "pool 25m\n"), By::effort) ==
          Words{{"easy", -1}, {"at a pace", 120}});
}

TEST_CASE("each lane swims its own lines at its own pace") {
    auto const text = session_with("100 easy\nlane 1: 100 hard\nlane 2: 50 kick easy",
                                   head + "swimmer \"Sol\" threshold 3:20 lane 2\n");
    CHECK(words(text, By::effort, 1) == Words{{"easy", 115}, {"hard", 95}});
    CHECK(words(text, By::mode, 2) == Words{{"swim", 230}, {"kick", 185.15}});
}

TEST_CASE("words of generated plans add up to the swimming time") {
    int known = 0;
    for (std::uint64_t seed = 1; seed <= 300; ++seed) {
        CAPTURE(seed);
        test::Wanted wanted;
        wanted.seed = seed;
        auto const read = read_plan(test::generate(wanted).text);
        auto const& plan = read.plan();
        Clock clock{plan};
        for (auto const by : {By::stroke, By::mode, By::effort, By::gear}) {
            for (int const lane : {0, 1, 2}) {
                WordTimes sum;
                WorkReader reader{plan, by, lane};
                for (auto const& session : plan.sessions) {
                    reader.add_session(session, sum);
                }
                Band<Duration> all;
                bool all_known = true;
                for (auto const& word : sum.words) {
                    all = figurewise([](Duration a, Duration b) { return a + b; }, all, word.swimming);
                    all_known = all_known && word.known;
                }
                auto const times = clock.whole_plan(lane);
                REQUIRE(all_known == times.known());
                if (all_known) {
                    REQUIRE(all == times.swimming);
                    ++known;
                }
            }
        }
    }
    CHECK(known > 500);
}

} // namespace lengthwise::calc
