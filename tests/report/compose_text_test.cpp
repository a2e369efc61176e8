#include "report/compose_text.hpp"

#include "compose/wishes.hpp"

#include <catch2/catch.hpp>

#include <string>

using namespace lengthwise;
using compose::Request;
using support::wish;

namespace {

Request three_weeks(std::int64_t longest, std::int64_t session) {
    auto request = wish(750, 3, longest, session);
    request.slot = Duration::minutes(60);
    request.threshold = Duration::seconds(115);
    return request;
}

std::string table(Request const& request) {
    return report::ramp_table(request, *compose::ramp_of(request), report::Paint{});
}

std::string reasons(Request const& request) {
    return report::ramp_reasons(*compose::ramp_of(request), report::Paint{});
}

std::string no_way(Request const& request) {
    REQUIRE_FALSE(compose::ramp_of(request));
    return report::ways_out_text(request, compose::ways_out(request), report::Paint{});
}

std::vector<std::string> messages(std::vector<report::Saying> const& sayings) {
    std::vector<std::string> found;
    for (auto const& saying : sayings) {
        found.push_back(saying.message);
    }
    return found;
}

std::vector<std::string> notes(Request const& request) {
    return messages(report::ramp_sayings(request, *compose::ramp_of(request)));
}

std::vector<std::string> refused(Request const& request) {
    return messages(report::refusal_sayings(request, compose::refusals(request)));
}

using Said = std::vector<std::string>;

} // namespace

TEST_CASE("compose: the ramp as a table") {
    CHECK(table(three_weeks(500, 1300)) == R"(        rep m   more  week m   more
today     500           2600
week 1    600   +100    2700   +100
week 2    750   +150    2800   +100
week 3    350  eases    1400  eases
race      750
)");
}

TEST_CASE("compose: closed days, and a race in metres in a pool of yards") {
    auto request = wish(400, 7, 225, 700);
    request.pool = Pool::of(Distance::yards(25), Unit::yard);
    request.longest = Distance::yards(225);
    request.session = Distance::yards(700);
    request.closed = {support::monday + std::chrono::days{8}, support::monday + std::chrono::days{15},
                      support::monday + std::chrono::days{18}};
    CHECK(table(request) == R"(        rep yd    more  week yd    more
today      225             1400
week 1     250     +25     1500    +100
week 2     200  closed      500  closed
week 3       -  closed        -  closed
week 4     300     +50     1550     +50
week 5     350     +50     1650    +100
week 6     450    +100     1750    +100
week 7     200   eases      850   eases
race     400 m
)");
}

TEST_CASE("compose: why this and not its neighbour") {
    CHECK(reasons(three_weeks(500, 1300)) == R"(gentlest steps that reach 750 m: the week grows by at most
5 %, or a lap a session; the rep by 25 %, or a lap

week 1, rep 600  550 comes short of 750 m, 650 would be 30 %
                 more
week 1, 2700 m   a lap of 50 more a session
week 2, rep 750  the race rep, 25 % more
week 2, 2800 m   a lap of 50 more a session
week 3, 1400 m   50 % of 2800: easy before the race
)");
}

TEST_CASE("compose: a wish that cannot be met, and what would be enough") {
    CHECK(no_way(three_weeks(200, 800)) == R"(lengthwise: 200 m to 750 m in 3 weeks does not work

week 2: the rep can be 300 m, it has to be 750 m

any one of these is enough:

race on Fri 18 June 2027 or later  8 weeks instead of 3
start from a rep of 450 m          instead of 200 m
limit rep-step 100%                instead of a third

nothing was written
)");
    auto two = wish(1500, 12, 200, 1000);
    two.threshold = Duration::seconds(160);
    CHECK(no_way(two) == R"(lengthwise: 200 m to 1500 m in 12 weeks does not work

week 10: the rep can be 1450 m, it has to be 1500 m
week 10: the slot is 45 min, the race rep wants 74 min

no single change is enough, together these are:

race on Fri 23 July 2027 or later  13 weeks instead of 12
a slot of 74 min                   instead of 45 min

nothing was written
)");
    auto const short_one = wish(400, 1, 200, 600);
    CHECK(no_way(short_one) == R"(lengthwise: 200 m to 400 m in 1 week does not work

no week left to build

this is enough:

race on Fri 21 May 2027 or later  4 weeks instead of 1

nothing was written
)");
}

TEST_CASE("compose: what to know before") {
    CHECK(notes(three_weeks(500, 1300)).empty());
    CHECK(notes(wish(1500, 12, 350, 1000)).size() == 1);
    auto request = wish(750, 12, 300, 1000);
    request.pool = Pool::of(Distance::units(1'000'000), Unit::metre);
    request.threshold = Duration::seconds(130);
    request.session = Distance::metres(1400);
    request.slot = Duration::minutes(40);
    CHECK(notes(request) == Said{"the race is 750 m, its rep 800 m: whole laps of 66⅔ m",
                                 "1400 m of today may take more than 40 min at 2:10 per 100 m"});
}

TEST_CASE("compose: the pace that the slot asks for") {
    auto request = wish(750, 12, 200, 1000);
    auto const ramp = *compose::ramp_of(request);
    REQUIRE(ramp.slowest_threshold);
    CHECK(notes(request) == Said{"fits 45 min at a threshold of 1:56 per 100 m or faster"});
    request.slot = Duration::minutes(5);
    request.threshold.reset();
    CHECK(notes(request) == Said{"5 min is too short for this plan at any pace"});
}

TEST_CASE("compose: what is asked for amiss") {
    auto request = wish(400, 8, 200, 600);
    CHECK(refused(request).empty());
    request.days = {1};
    request.longest = Distance::metres(24);
    CHECK(refused(request) == Said{"1 training day, the rule \"sessions\" asks for 2",
                                   "compose starts from one length swum, 25 m"});
    request = wish(400, 8, 200, 600);
    request.pool = Pool::open_water();
    CHECK(refused(request) == Said{"compose needs a pool"});
    request.pool = Pool::of(Distance::metres(12), Unit::metre);
    CHECK(refused(request) == Said{"the pool is 12 m, compose takes 15 to 100 m"});
    request = wish(400, 8, 200, 600);
    request.race.on = request.from;
    CHECK(refused(request) == Said{"the race is on 2027-04-26, week 1 starts on 2027-04-26"});
    request.race.on = request.from + std::chrono::days{7 * 104 + 1};
    CHECK(refused(request) ==
          Said{"the race is on 2029-04-24, compose plans up to 104 weeks from 2027-04-26"});
}
