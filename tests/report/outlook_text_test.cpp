#include "check/register.hpp"
#include "report/outlook_text.hpp"
#include "support/read_plan.hpp"
#include "support/weeks_of_reps.hpp"

#include <catch2/catch.hpp>

#include <string>
#include <vector>

using namespace lengthwise;
using support::weeks_of_reps;

namespace {

std::string const head = "race sprint on 2027-05-16\nbefore longest 500m\n";

std::string sentence(std::string const& text) {
    auto const read = support::read_plan(text);
    REQUIRE(read.error() == "");
    auto const outlook = check::outlook(read.plan());
    return outlook ? report::outlook_sentence(read.plan(), *outlook, false) : "no race";
}

std::string shortfall(std::string const& text) {
    auto const read = support::read_plan(text);
    REQUIRE(read.error() == "");
    return report::shortfall(read.plan(), check::outlook(read.plan()).value(), false);
}

std::string waived(std::string const& text) {
    auto const read = support::read_plan(text);
    REQUIRE(read.error() == "");
    return report::waivers_text(read.plan(), check::waivers(read.plan()), {&read.bundle->root().source},
                                {.width = 60});
}

} // namespace

TEST_CASE("when the race rep is swum") {
    CHECK(sentence(weeks_of_reps(head, {"600", "750"})) ==
          "750 m is swum on Tue 11 May, 5 days before the race");
    CHECK(sentence(weeks_of_reps("race sprint on 2027-05-12\n", {"600", "750"})) ==
          "750 m is swum on Tue 11 May, 1 day before the race");
    CHECK(sentence("race sprint on 2027-05-16\npool 25m\nweek 1\nsession \"Long\"\nmain\n750\n") ==
          "750 m is swum in week 1, Long");
    CHECK(sentence(weeks_of_reps("", {"750"})) == "no race");
    // The last lane decides.
    CHECK(sentence(weeks_of_reps(head, {"lane 1: 750\nlane 2: 600", "lane 1: 100\nlane 2: 750"})) ==
          "750 m is swum on Tue 11 May, 5 days before the race");
}

TEST_CASE("what is missing, for the lane that lacks most") {
    CHECK(shortfall(weeks_of_reps(head, {"600"})) == "150 m short of the race");
    CHECK(shortfall(weeks_of_reps(head, {"lane 1: 750\nlane 2: 400"})) == "350 m short of the race");
    CHECK(shortfall(weeks_of_reps(head, {"750"})).empty());
}

TEST_CASE("the verdict waits for swimmers whose share is another") {
    auto const swimmers =
        head + "swimmer \"Ann\" distance 80%\nswimmer \"Bo\"\nswimmer \"Cy\" distance 99%\n";
    CHECK(sentence(weeks_of_reps(swimmers, {"600", "750"})) ==
          "at 100 m a week Ann would be there in week 4, 2 weeks after the race");
    CHECK(shortfall(weeks_of_reps(swimmers, {"600", "750"})) == "150 m short of the race");
    CHECK(sentence(weeks_of_reps(swimmers, {"750", "950"})) ==
          "750 m is swum on Tue 11 May, 5 days before the race");
}

TEST_CASE("where the trend would get there") {
    CHECK(sentence(weeks_of_reps(head, {"600", "700"})) ==
          "at 100 m a week it would be there in week 3, 1 week after the race");
    CHECK(sentence(weeks_of_reps("race sprint on 2027-05-23\n", {"600", "700"})) ==
          "at 100 m a week it would be there in week 3, the week of the race");
    CHECK(sentence(weeks_of_reps("race sprint on 2027-06-06\n", {"600", "700"})) ==
          "at 100 m a week it would be there in week 3, 2 weeks before the race");
    CHECK(sentence("race sprint on 2027-06-06\npool 25m\nweek 4\nsession\nmain\n600\n"
                   "week 5\nsession\nmain\n650\n") == "at 50 m a week it would be there in week 7");
    // 500 to 550 in three weeks
    CHECK(
        sentence(weeks_of_reps("race sprint on 2027-06-27\nbefore longest 500m\n", {"500", "500", "550"})) ==
        "at about 17 m a week it would be there in week 15, 7 weeks after the race");
    CHECK(sentence(weeks_of_reps(head, {"lane 1: 600\nlane 2: 550", "lane 1: 700\nlane 2: 550"})) ==
          "at 25 m a week lane 2 would be there in week 10, 8 weeks after the race");
}

TEST_CASE("no trend where nothing grew") {
    CHECK(sentence(weeks_of_reps(head, {"500", "400"})) ==
          "the longest rep has not grown so far, so no week can be named");
    CHECK(sentence(weeks_of_reps("race sprint on 2027-05-16\n", {"500"})).empty());
}

TEST_CASE("where a share of the race is asked for") {
    auto const share = head + "limit race-rep 75%\n";
    CHECK(sentence(weeks_of_reps(share, {"575"})) ==
          "562.5 m, 75 % of the race, is swum on Tue 4 May, 12 days before the race");
    CHECK(shortfall(weeks_of_reps(share, {"550"})) == "12.5 m short of 75 % of the race");
}

TEST_CASE("what is waived, with its reason") {
    CHECK(waived(weeks_of_reps(head, {"600"})).empty());
    CHECK(waived(weeks_of_reps(head + "allow race-rep \"relay, 250 m each\"\nallow taper\n", {"600"})) ==
          "waived: race-rep \"relay, 250 m each\"\nwaived: taper\n");
    CHECK(waived("pool 25m\nsession Tue\nallow shape \"a test\"\nmain\n100\n") ==
          "waived at line 3: shape \"a test\"\n");
    CHECK(waived("pool 25m\nsession Tue\nallow shape \"a test\"\nmain\n100\n"
                 "session Thu\nallow shape \"a test\"\nmain\n100\n") ==
          "waived in 2 places: shape \"a test\"\n");
    std::string many = "pool 25m\n";
    for (int i = 0; i < 12; ++i) {
        many += "session\nallow shape \"" + std::to_string(i) + "\"\nmain\n100\n";
    }
    CHECK(waived(many).ends_with("waived at line 39: shape \"9\"\nand 2 waivers more\n"));
}
