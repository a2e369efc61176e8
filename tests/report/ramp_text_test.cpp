#include "report/ramp_text.hpp"
#include "support/read_plan.hpp"
#include "support/weeks_of_reps.hpp"

#include <catch2/catch.hpp>

#include <string>

using namespace lengthwise;
using support::weeks_of_reps;

namespace {

std::string const head = "race sprint on 2027-05-16\nbefore longest 500m\n";

std::string ramp(std::string const& text, std::size_t width = 80, bool ascii = false) {
    auto const read = support::read_plan(text);
    REQUIRE(read.error() == "");
    return report::ramp_text(read.plan(), report::Paint{}, width, ascii);
}

} // namespace

TEST_CASE("the longest rep on its way to the race") {
    CHECK(ramp(weeks_of_reps(head, {"600", "750"})) == "longest rep, m  before  week 1  week 2  race\n"
                                                       "everyone           500     600     750   750\n");
}

TEST_CASE("lanes that swim alike share a row, a week without such a rep has a hyphen") {
    CHECK(ramp(weeks_of_reps(head, {"lane 1: 600\nlane 2: 400\nlane 3: 600", "100 kick"})) ==
          "longest rep, m  before  week 1  week 2  race\n"
          "lanes 1, 3         500     600       -   750\n"
          "lane 2             500     400       -   750\n");
}

TEST_CASE("a long way stands upright") {
    CHECK(ramp(weeks_of_reps(head, {"600", "750"}), 40) == "longest rep, m  everyone\n"
                                                           "before               500\n"
                                                           "week 1               600\n"
                                                           "week 2               750\n"
                                                           "race                 750\n");
}

TEST_CASE("sessions on race day and after it do not count") {
    CHECK(ramp("race sprint on 2027-05-04\npool 25m\nweek 1 from 2027-05-03\nsession Mon\nmain\n600\n"
               "session Tue\nmain\n750\n") == "longest rep, m  week 1  race\n"
                                              "everyone           600   750\n");
}

TEST_CASE("a pool of yards keeps a race in metres") {
    CHECK(ramp("race 400m on 2027-05-16\npool 25yd\nweek 1 from 2027-05-03\nsession Tue\nmain\n450\n") ==
          "longest rep, yd  week 1   race\n"
          "everyone            450  400 m\n");
}

TEST_CASE("thirds hang, in ASCII too") {
    auto const text =
        "pool 33 1/3 m\nweek 1\nsession Tue\nmain\n8 lengths\nweek 2\nsession Tue\nmain\n9 lengths\n";
    CHECK(ramp(text) == "longest rep, m  week 1   week 2\n"
                        "everyone           266⅔     300\n");
    CHECK(ramp(text, 80, true) == "longest rep, m  week 1      week 2\n"
                                  "everyone           266 2/3     300\n");
}

TEST_CASE("without weeks there is no way to show") {
    CHECK(ramp("pool 25m\nsession Tue\nmain\n100\n").empty());
    CHECK(ramp("").empty());
}

TEST_CASE("a swimmer whose share is another has a row") {
    auto const swimmers =
        head + "swimmer \"Ann\" distance 80%\nswimmer \"Bo\"\nswimmer \"Cy\" distance 99%\n";
    CHECK(ramp(weeks_of_reps(swimmers, {"600", "750"})) == "longest rep, m  before  week 1  week 2  race\n"
                                                           "everyone else      500     600     750   750\n"
                                                           "Ann                400     500     600   750\n");
}

TEST_CASE("more than there is room for stand one below the other") {
    std::string swimmers = head;
    for (auto const* share : {"10", "20", "30", "40", "50", "60", "70", "80"}) {
        swimmers += std::string{"swimmer \"Number "} + share + "\" distance " + share + "%\n";
    }
    auto const text = ramp(weeks_of_reps(swimmers, {"600", "750"}), 43);
    CHECK(text.starts_with("longest rep, m  everyone else  Number 10\n"
                           "before                    500         50\n"));
    CHECK(text.find("\n\nlongest rep, m  Number 20  Number 30\n") != std::string::npos);
    for (std::size_t begin = 0; begin < text.size();) {
        auto const end = text.find('\n', begin);
        CHECK(end - begin <= 43);
        begin = end + 1;
    }
}
