#include "calc/lane_times.hpp"

#include "support/plan_text.hpp"
#include "support/read_plan.hpp"

#include <catch2/catch.hpp>

namespace lengthwise::calc {
namespace {

TEST_CASE("sums of lanes are those of the clock, whichever sessions name or pace them") {
    auto const read = support::read_plan("pool 25m\nthreshold 1:40\nswimmer \"Ash\" threshold 1:50 lane 3\n"
                                         "session \"A\"\nmain\n400\nlane 1: 100\nlane 2: 200 easy\n"
                                         "session \"B\"\nmain\n200 sprint\nif time: 100\n"
                                         "session \"C\"\nmain\nlane 2: 300\nlane 4: 10min\n");
    REQUIRE(read.error() == "");
    auto const& plan = read.plan();
    LaneClock lanes{plan};
    Clock clock{plan};
    LaneTimes sum;
    for (plan::Index i = 0; i < plan.sessions.size(); ++i) {
        for (auto const& section : lanes.sections(i, lanes_of(plan, plan.sessions[i]))) {
            sum.add(section);
        }
    }
    for (int const lane : {0, 1, 2, 3, 4, 9}) {
        INFO(lane);
        CHECK(sum.of(lane).swum == clock.whole_plan(lane));
        CHECK(sum.of(lane).if_time.time.expected == Duration::ms(lane == 3 ? 117'700 : 107'000));
    }
    CHECK(sum.of(1).swum != sum.of(2).swum);
}

TEST_CASE("one lane alone stands for all") {
    auto const read =
        support::read_plan(support::session_with("lane 1: 100\nlane 2: 200", "pool 25m\nthreshold 1:40\n"));
    LaneClock one{read.plan(), 2};
    auto const& sections = one.sections(0, lanes_of(read.plan(), read.plan().sessions[0]));
    REQUIRE(sections.size() == 1);
    CHECK(sections[0].of(2).swum.time.expected == Duration::seconds(214));
    CHECK(sections[0].of(1).swum == sections[0].of(2).swum);
}

TEST_CASE("a rep says whether an assumed reserve decides one of its times") {
    auto const assumed = [](std::string const& line, std::string const& threshold) {
        auto const read =
            support::read_plan(support::session_with(line, "pool 25m\nthreshold " + threshold + "\n"));
        REQUIRE(read.error() == "");
        return Clock{read.plan()}.session(0, 0).assumed != plan::no_index;
    };
    CHECK_FALSE(assumed("800 steady", "1:40"));
    CHECK_FALSE(assumed("100 sprint", "1:40")); // 78, 85 and 92 % are less than 35, 20, 10 m allow
    CHECK(assumed("200 sprint", "1:40"));       // 78 % is more: 82.5 %
    CHECK_FALSE(assumed("200 sprint", "1:40 reserve 20m"));
    CHECK_FALSE(assumed("200 hard", "1:40"));
    CHECK(assumed("400 hard", "1:40"));
    CHECK_FALSE(assumed("400 hold 5:00", "1:40"));
    CHECK(assumed("400 at 130%", "1:40"));
    CHECK(assumed("4min sprint", "1:40"));
    CHECK_FALSE(assumed("30s sprint", "1:40"));
    CHECK_FALSE(assumed("10min tread", "1:40"));
}

} // namespace
} // namespace lengthwise::calc
