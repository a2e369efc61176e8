#include "check/outlook.hpp"
#include "support/read_plan.hpp"

#include <catch2/catch.hpp>

#include <string>
#include <vector>

using namespace lengthwise;

namespace {

/// Weeks of one session, its lines as given; a race of 1500 m in week 10.
std::optional<check::Outlook> outlook(std::string const& head, std::vector<std::string> const& weeks) {
    auto text = "race 1500m on 2027-07-11\n" + head + "pool 25m\n";
    for (std::size_t i = 0; i < weeks.size(); ++i) {
        text += "week " + std::to_string(i + 1) + (i == 0 ? " from 2027-05-03\n" : "\n");
        text += "session Tue\nmain\n" + weeks[i] + "\n";
    }
    auto const read = support::read_plan(text);
    REQUIRE(read.error() == "");
    return check::outlook(read.plan());
}

/// The week in which it would be there; 0 without a trend.
std::int64_t week(std::string const& head, std::vector<std::string> const& weeks) {
    auto const found = outlook(head, weeks).value();
    return found.trend ? found.trend->week : 0;
}

} // namespace

TEST_CASE("the trend is the mean growth from what stands first to the last week with the longest") {
    auto const found = outlook("before longest 300m\n", {"400", "300", "600", "300"}).value();
    CHECK(found.longest == Distance::metres(600));
    CHECK(found.missing() == Distance::metres(900));
    CHECK(found.trend->a_week == Distance::metres(100)); // 300 m in three weeks; the last is eased
    CHECK(found.trend->week == 12);
    CHECK(found.trend->after_race == 2);
    // 600 m again in week 4: 75 m a week
    CHECK(week("before longest 300m\n", {"400", "300", "600", "600"}) == 16);
    // Without before the first week is the start.
    CHECK(week("", {"300", "400"}) == 13);
    // What is no whole figure is not rounded: 50 m in three weeks are 18 weeks for 300.
    CHECK(week("before longest 1150m\n", {"1150", "1150", "1200"}) == 21);
}

TEST_CASE("the trend keeps to rep-step") {
    // From 500 on: 666⅔, 888.9, 1185.2, 1580.2
    CHECK(week("before longest 100m\n", {"500"}) == 5);
    CHECK(week("before longest 100m\nlimit rep-step 100%\n", {"500"}) == 4); // 900, 1300, 1700
    CHECK(week("before longest 100m\nlimit rep-step 10%\n", {"500"}) == 13); // by a tenth, 1569 after twelve
}

TEST_CASE("no trend without growth, without weeks that have a number, without a race") {
    CHECK(week("before longest 400m\n", {"400", "300"}) == 0);
    CHECK(week("", {"400"}) == 0);
    auto const read =
        support::read_plan("race 400m on 2027-07-11\nbefore longest 100m\npool 25m\nsession\nmain\n200\n");
    CHECK(!check::outlook(read.plan())->trend);
    CHECK(!check::outlook(support::read_plan("pool 25m\nsession\nmain\n200\n").plan()));
}

TEST_CASE("who lacks most is named where it is not all") {
    auto const who = [](std::string const& head, std::string const& lines) {
        return outlook(head, {lines})->who;
    };
    CHECK(who("", "600").empty());
    CHECK(who("", "lane 1: 600\nlane 2: 500") == "lane 2");
    CHECK(who("", "lane 1: 500\nlane 2: 600\nlane 3: 500") == "lanes 1 and 3");
    CHECK(who("swimmer \"Ida\" distance 50%\n", "600") == "Ida");
    CHECK(who("swimmer \"Ida\" distance 150%\n", "600") == "the group");
    CHECK(who("swimmer \"Ida\" distance 100%\n", "600").empty());
}

TEST_CASE("it is reached when the last of them swims it") {
    auto const found = outlook("", {"lane 1: 1500\nlane 2: 100", "lane 1: 100\nlane 2: 1600"}).value();
    CHECK(found.reached == 1U);
    CHECK(found.missing().zero());
    CHECK(!outlook("", {"lane 1: 1500\nlane 2: 1475"})->reached);
    CHECK(outlook("limit race-rep 50%\n", {"750"})->reached == 0U);
    CHECK(!outlook("limit race-rep 50%\n", {"725"})->reached);
}
