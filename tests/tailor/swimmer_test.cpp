#include "tailor/swimmer.hpp"

#include "calc/longest.hpp"
#include "calc/timeline.hpp"
#include "calc/totals.hpp"
#include "support/read_plan.hpp"

#include <catch2/catch.hpp>

#include <string>

using namespace lengthwise;

namespace {

support::ReadPlan read(std::string const& text) {
    auto made = support::read_plan(text);
    REQUIRE(made.error() == "");
    return made;
}

/// Of the whole plan, in metres.
std::int64_t metres(plan::Plan const& plan, int lane = 0) {
    auto const distance = calc::Reckoner{plan}.of_plan().swum(lane).distance;
    REQUIRE(Distance::divides(Distance::metres(1), distance));
    return Distance::whole(distance, Distance::metres(1));
}

std::string const group = R"(
race "Mill pond" sprint on 2027-06-13
swimmer "Ann" lane 2 distance 80% threshold 2:20
swimmer "Bea" lane 1
swimmer "Cem" lane 1 threshold 1:55
swimmer "Dora" distance 60%
swimmer "Eve" threshold 2:40
swimmer "Finn" lane 7
before longest 400m week 2000m
pool 25m
threshold 2:05 per 100m
week 1
  session Tue
    main
      200 crawl
      lane 1: 6 x 100 crawl
      lane 2: 5 x 75 as 50 crawl / 25 back
      750 crawl
  session Thu
    threshold 2:00
    main
      2 x (100 + 25) rest 10s
)";

} // namespace

TEST_CASE("a swimmer swims his share of every line, whole laps", "[tailor][swimmer]") {
    auto const made = read(group);
    auto const ann = tailor::swum_by(made.plan(), 0);
    // 200: 150; 5 x 75: the nearest length, 50; 750: 600; 2 x (100: 100, 25: 25)
    CHECK(metres(ann, 2) == 150 + 5 * 50 + 600 + 2 * 125);
    CHECK(metres(ann, 1) == 150 + 6 * 100 + 600 + 2 * 125);
    CHECK(calc::longest_of_plan(ann, 2).distance == Distance::metres(600));
    CHECK(ann.before->longest == Distance::metres(300)); // 6.4 laps
    CHECK(*ann.before->week == Distance::metres(1600));
}

TEST_CASE("the race rep of a share is rounded up", "[tailor][swimmer]") {
    auto const made = read("race sprint on 2027-06-13\nswimmer \"Ann\" distance 81%\nbefore longest 750m\n"
                           "pool 25m\nsession\nmain\n750\n700\n");
    auto const ann = tailor::swum_by(made.plan(), 0);
    CHECK(metres(ann) == 650 + 550); // 607.5 and 567 m
    CHECK(ann.before->longest == Distance::metres(650));
}

TEST_CASE("he is alone, at his own pace, his lane's or the one in force", "[tailor][swimmer]") {
    auto const made = read(group);
    auto const pace = [&](plan::Index swimmer, plan::Index session, int lane) {
        auto const own = tailor::swum_by(made.plan(), swimmer);
        REQUIRE(own.swimmers.size() == 1);
        CHECK_FALSE(own.swimmers.front().share);
        auto const* const found = plan::pace_of(own, plan::LanePaces{own}, own.sessions[session], lane);
        return found == nullptr ? Duration{} : found->time;
    };
    CHECK(pace(0, 0, 2) == Duration::seconds(140));
    CHECK(pace(0, 1, 2) == Duration::seconds(140)); // his pace goes before a session's threshold
    CHECK(pace(1, 0, 1) == Duration::seconds(115)); // of Cem, the slowest in lane 1
    CHECK(pace(3, 0, 0) == Duration::seconds(125));
    CHECK(pace(3, 1, 0) == Duration::seconds(120));
    CHECK(pace(4, 0, 0) == Duration::seconds(160)); // no lane: it is in force
    CHECK(pace(4, 1, 2) == Duration::seconds(160));
    CHECK(pace(5, 0, 7) == Duration::seconds(125));
}

TEST_CASE("a share adds up to the text with every amount written out", "[tailor][swimmer]") {
    auto const written = read("race sprint on 2027-06-13\nswimmer \"Ann\" distance 70%\npool 25m\n"
                              "set \"steps\" = (100, 200, 300 crawl + 50 easy)\n"
                              "session\nmain\n800\n2 x use \"steps\"\n4 x 150 as 50 kick / 100 crawl\n"
                              "session\npool 50m\nmain\nuse \"steps\"\n600 broken at 200 for 15s\n10min\n"
                              "session\npool 33 1/3 m\nmain\nuse \"steps\", last 1 easy\n"
                              "session\npool 25yd\nmain\nuse \"steps\"\n");
    auto const by_hand =
        read("race sprint on 2027-06-13\npool 25m\n"
             "session\nmain\n600\n2 x (50, 150, 200 crawl + 50 easy)\n4 x 100\n"
             "session\npool 50m\nmain\n(50, 150, 200 crawl + 50 easy)\n400 broken at 150 for "
             "15s\n10min\n"
             "session\npool 33 1/3 m\nmain\n(2, 4, 6 lengths crawl + 2 lengths easy)\n"
             "session\npool 25yd\nmain\n(50, 150, 200 crawl + 50 easy)\n");
    auto const ann = tailor::swum_by(written.plan(), 0);
    calc::Reckoner ours{ann};
    calc::Reckoner theirs{by_hand.plan()};
    for (std::size_t i = 0; i < ann.sessions.size(); ++i) {
        INFO("session " << i + 1);
        CHECK(ours.of_session(ann.sessions[i]).swum(0) ==
              theirs.of_session(by_hand.plan().sessions[i]).swum(0));
    }
}

TEST_CASE("one session of a swimmer is that session of his plan", "[tailor][swimmer]") {
    auto const made = read(group);
    for (plan::Index swimmer = 0; swimmer < 6; ++swimmer) {
        auto const whole = tailor::swum_by(made.plan(), swimmer);
        for (plan::Index session = 0; session < 2; ++session) {
            auto const one = tailor::fit(made.plan(), session, swimmer, std::nullopt);
            for (int const lane : {0, 1, 2, 7}) {
                CHECK(calc::Reckoner{one.plan}.of_session(one.session()).swum(lane) ==
                      calc::Reckoner{whole}.of_session(whole.sessions[session]).swum(lane));
                CHECK(calc::Clock{one.plan}.session(0, lane).total() ==
                      calc::Clock{whole}.session(session, lane).total());
            }
        }
    }
}

TEST_CASE("a share may be taken in another pool", "[tailor][swimmer]") {
    auto const made = read(group);
    auto const one = tailor::fit(made.plan(), 1, 0, Pool::of(Distance::metres(50), Unit::metre));
    CHECK(metres(one.plan) == 2 * (100 + 50)); // 80 of 100 m, 20 of 25 m
    CHECK(one.percent == 80);
}

TEST_CASE("a doubled rep stays one that can be swum", "[tailor][swimmer]") {
    auto const made = read("swimmer \"Ann\" distance 200%\npool 25m\nsession\nmain\n100000m\n60000m\n");
    CHECK(metres(tailor::swum_by(made.plan(), 0)) == 200'000);
}
