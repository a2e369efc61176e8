#include "calc/fits.hpp"
#include "calc/timeline.hpp"
#include "support/generate.hpp"
#include "support/plan_text.hpp"
#include "support/read_plan.hpp"

#include <catch2/catch.hpp>

#include <optional>
#include <string>

/// At which threshold a session fits its slot.
namespace lengthwise {
namespace {

using support::read_plan;

/// Seconds for 100; -1 where none fits.
std::int64_t fitting(std::string const& text, Duration slot) {
    auto const read = read_plan(text);
    CHECK(read.error() == "");
    auto const pace = calc::slowest_fitting(read.plan(), 0, slot);
    return pace ? pace->ms() / 1000 : -1;
}

std::string session(std::string const& lines, std::string const& head = "pool 25m\n") {
    return support::session_with(lines, head);
}

} // namespace

TEST_CASE("a session fits at the slowest whole second whose high time is within the slot") {
    // High is 110 % of threshold: 1000 m in 44 min and 40 s at 4:03.6.
    CHECK(fitting(session("1000"), Duration::seconds(44 * 60 + 40)) == 243);
    CHECK(fitting(session("1000"), Duration::ms(243 * 11000)) == 243);
    CHECK(fitting(session("1000"), Duration::ms(243 * 11000 - 1)) == 242);
}

TEST_CASE("paces from 30 s to 10 min are tried") {
    CHECK(fitting(session("1000"), Duration::ms(30 * 11000)) == 30);
    CHECK(fitting(session("1000"), Duration::ms(30 * 11000 - 1)) == -1);
    CHECK(fitting(session("1000"), Duration::hours(5)) == 600);
    CHECK(fitting(session("1000 at 1:00 per 100"), Duration::minutes(9)) == -1);
    CHECK(fitting(session("1000 at 1:00 per 100"), Duration::minutes(10)) == 600);
}

TEST_CASE("the pace is for a hundred of the session's unit, in its pool") {
    CHECK(fitting(session("1000", "pool 25yd\n"), Duration::ms(100 * 11000)) == 100);
    CHECK(fitting(session("1000", "pool 50m\n"), Duration::ms(100 * 11000)) == 100);
    CHECK(fitting("pool 25m\nsession\npool 25yd\nmain\n1000\n", Duration::ms(100 * 11000)) == 100);
}

TEST_CASE("every lane has to fit; one with a pace keeps it") {
    CHECK(fitting(session("lane 1: 1000\nlane 2: 500\n"), Duration::ms(100 * 11000)) == 100);
    std::string const head = "pool 25m\nswimmer \"Pia\" threshold 2:00 lane 2\n";
    CHECK(fitting(session("lane 1: 1000\nlane 2: 500\n", head), Duration::ms(100 * 11000)) == 100);
    CHECK(fitting(session("lane 1: 500\nlane 2: 1000\n", head), Duration::ms(100 * 11000)) == -1);
}

TEST_CASE("a pace that a threshold minus would use up is none") {
    // The reserve allows 99 % of threshold, whatever is taken away: 60 s for 100 m in 10 min.
    CHECK(fitting(session("1000 threshold minus 50s"), Duration::minutes(10)) == 60);
    CHECK(fitting(session("1000 threshold minus 50s"), Duration::seconds(480)) == -1); // it would be 48 s
    CHECK(fitting(session("1000 threshold minus 50s"), Duration::seconds(5)) == -1);
}

TEST_CASE("no slower pace fits, and none between, in any generated session") {
    int tried = 0;
    for (std::uint64_t seed = 1; seed <= 60; ++seed) {
        CAPTURE(seed);
        test::Wanted wanted;
        wanted.seed = seed;
        wanted.lanes = 0;
        auto const read = read_plan(test::generate(wanted).text);
        auto const& plan = read.plan();
        for (plan::Index i = 0; i < plan.sessions.size(); ++i) {
            if (plan.sessions[i].threshold != plan::no_index) {
                continue;
            }
            auto const slot = Duration::minutes(1 + static_cast<int>(seed) * 2);
            std::optional<Duration> slowest;
            for (int seconds = 30; seconds <= 600; ++seconds) {
                plan::Threshold threshold;
                threshold.time = Duration::seconds(seconds);
                threshold.per = one(plan.pool_of(plan.sessions[i]).unit) * 100;
                threshold.course = plan.pool_of(plan.sessions[i]);
                auto const time = calc::Clock{plan, &threshold}.session(i, 0).total();
                if (time && time->high <= slot) {
                    slowest = threshold.time;
                }
            }
            REQUIRE(calc::slowest_fitting(plan, i, slot) == slowest);
            tried += slowest ? 1 : 0;
        }
    }
    CHECK(tried > 20);
}

} // namespace lengthwise
