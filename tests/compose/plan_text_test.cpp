#include "calc/timeline.hpp"
#include "calc/totals.hpp"
#include "compose/author.hpp"
#include "compose/session_time.hpp"
#include "compose/text.hpp"
#include "grammar/write.hpp"
#include "support/plain_ramp.hpp"
#include "support/read_plan.hpp"

#include <catch2/catch.hpp>

using namespace lengthwise;
using namespace lengthwise::compose;

namespace {

struct Written {
    Request request;
    Ramp ramp;
    std::string text;
    support::ReadPlan read;
};

Written written(std::mt19937& random) {
    auto request = support::random_request(random);
    auto ramp = support::plain_ramp(request);
    auto text = plan_text(request, ramp, sessions_of(request, ramp));
    auto read = support::read_plan(text);
    return {std::move(request), std::move(ramp), text, std::move(read)};
}

} // namespace

TEST_CASE("a composed plan can be read and is tidy", "[compose]") {
    std::mt19937 random{750};
    for (auto i = 0; i < 300; ++i) {
        auto const plan = written(random);
        CAPTURE(i);
        CHECK(plan.read.error() == "");
        CHECK(grammar::write(plan.read.bundle->root().tree) == plan.text);
    }
}

TEST_CASE("the text has the ramp's metres and reps", "[compose]") {
    std::mt19937 random{1500};
    for (auto i = 0; i < 200; ++i) {
        auto const plan = written(random);
        auto const& resolved = plan.read.plan();
        calc::Reckoner reckoner{resolved};
        CAPTURE(i);
        std::size_t at = 0;
        for (auto const& week : plan.ramp.weeks) {
            for (auto const& day : week.days) {
                auto const& session = resolved.sessions.at(at++);
                auto const totals = reckoner.of_session(session).swum(0);
                CHECK(totals.distance == plan.ramp.lap * day.laps);
                CHECK(session.date == day.date);
                if (day.kind == DayKind::long_day) {
                    CHECK(totals.longest == plan.ramp.lap * week.rep);
                }
            }
        }
        CHECK(at == resolved.sessions.size());
    }
}

TEST_CASE("no session takes longer than the ramp reckons with", "[compose]") {
    std::mt19937 random{45};
    for (auto i = 0; i < 600; ++i) {
        auto const plan = written(random);
        if (!plan.request.threshold) {
            continue;
        }
        SessionTimes const most{plan.request.pool, *plan.request.threshold};
        calc::Clock clock{plan.read.plan()};
        plan::Index at = 0;
        for (auto const& week : plan.ramp.weeks) {
            for (auto const& day : week.days) {
                auto const time = clock.session(at++, 0).total();
                CAPTURE(i, week.number, at, day.laps);
                REQUIRE(time);
                CHECK(time->high <= most.of(day.kind, day.laps, week.rep));
            }
        }
    }
}
