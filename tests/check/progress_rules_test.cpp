#include "support/found.hpp"

#include <catch2/catch.hpp>

#include <string>
#include <vector>

using lengthwise::support::first_hint;
using lengthwise::support::found;
using Found = std::vector<std::string>;

/// The rules that hold a whole plan against its race: race-rep, rep-step, week-growth,
/// sessions, session-floor, taper.
namespace {

/// Weeks from 2027-05-03 on; a week is its sessions' main lines, one session each.
std::string weeks(std::vector<std::vector<std::string>> const& all) {
    std::vector<std::string> const days{"Mon", "Tue", "Wed", "Thu", "Fri"};
    std::string text;
    for (std::size_t w = 0; w < all.size(); ++w) {
        text += "week " + std::to_string(w + 1) + (w == 0 ? " from 2027-05-03\n" : "\n");
        for (std::size_t s = 0; s < all[w].size(); ++s) {
            text += "session " + days[s] + "\nmain\n" + all[w][s] + "\n";
        }
    }
    return text;
}

/// A race of 750 m on the Sunday of the week with that number.
std::string race_in_week(int week) {
    std::vector<std::string> const sundays{"2027-05-09", "2027-05-16", "2027-05-23", "2027-05-30",
                                           "2027-06-06", "2027-06-13", "2027-06-20"};
    return "race sprint on " + sundays[static_cast<std::size_t>(week) - 1] + "\n";
}

std::string const pool = "pool 25m\n";

} // namespace

TEST_CASE("race-rep: the race distance in one piece") {
    auto const longest = [](std::string const& line) {
        return found("race-rep", race_in_week(2) + pool + weeks({{line}, {"100"}}));
    };
    CHECK(longest("750 crawl").empty());
    CHECK(longest("775 crawl with wetsuit").empty());
    CHECK(longest("725 crawl") == Found{"1: error: longest rep is 725 m, the race is 750 m"});
    CHECK(longest("750 crawl with fins").front() == "1: error: longest rep is 100 m, the race is 750 m");
    CHECK(longest("750 crawl with stops").size() == 1);
    CHECK(longest("750 kick").size() == 1);
    CHECK(longest("if time: 750").size() == 1);
    CHECK(longest("750 crawl broken at 250 for 15s") ==
          Found{"1: error: longest rep is 250 m, the race is 750 m"});
    CHECK(first_hint("race-rep", race_in_week(2) + pool + weeks({{"750 broken at 250 for 15s"}})) ==
          "swim it unbroken, or: allow race-rep \"why\"");
    CHECK(found("race-rep", race_in_week(2) + pool + weeks({{"10min"}})) ==
          Found{"1: error: no rep is swum in one piece, the race is 750 m"});
}

TEST_CASE("race-rep: before race day, not on it") {
    std::string const head = "race sprint on 2027-05-09\n" + pool;
    CHECK(found("race-rep", head + "session 2027-05-08\nmain\n750\n").empty());
    CHECK(found("race-rep", head + "session 2027-05-09\nmain\n750\n").size() == 1);
    CHECK(found("race-rep", head + "session\nmain\n750\n").empty()); // no date: it may well be before
}

TEST_CASE("race-rep: every lane, and a swimmer's share") {
    std::string const lanes = "week 1 from 2027-05-03\nsession Mon\nmain\nlane 1: 750\nlane 2: 600\n";
    CHECK(found("race-rep", race_in_week(1) + pool + lanes) ==
          Found{"1: error: longest rep is 600 m, the race is 750 m (lane 2)"});

    std::string const plan = race_in_week(1) + pool + weeks({{"950 crawl"}});
    CHECK(found("race-rep", "swimmer \"Bo\" distance 80%\n" + plan).empty()); // 760 m: up to 800
    CHECK(found("race-rep", "swimmer \"Bo\" distance 73%\n" + plan) ==
          Found{"2: error: longest rep of Bo is 700 m, the race is 750 m"});  // 693.5 m: up to 700
    CHECK(found("race-rep", "swimmer \"Bo\" distance 74%\n" + plan).empty()); // 703 m: up to 750
}

TEST_CASE("race-rep: swimmers who swim alike are named together, lanes are not repeated") {
    std::string const plan = race_in_week(1) + pool + weeks({{"600 crawl"}});
    CHECK(found("race-rep", "swimmer \"Ann\" distance 80%\nswimmer \"Bo\" distance 80%\n" + plan) ==
          Found{"3: error: longest rep is 600 m, the race is 750 m",
                "3: error: longest rep of Ann and Bo is 500 m, the race is 750 m"});
    CHECK(found("race-rep", "swimmer \"Ann\" distance 99%\n" + plan).size() == 1);  // 594 m: 600 too
    CHECK(found("race-rep", "swimmer \"Ann\" distance 130%\n" + plan).size() == 1); // 780 m: up to 800

    std::string const lanes = race_in_week(1) + pool +
                              "week 1 from 2027-05-03\nsession Mon\nmain\n400\n"
                              "lane 1: 750\nlane 2: 1000\n";
    CHECK(found("race-rep", "swimmer \"Ann\" lane 2 distance 75%\n" + lanes).empty());
    CHECK(found("race-rep", "swimmer \"Ann\" lane 1 distance 75%\n" + lanes) ==
          Found{"2: error: longest rep of Ann is 600 m, the race is 750 m"});
    CHECK(found("race-rep", "swimmer \"Ann\" lane 3\n" + lanes) ==
          Found{"2: error: longest rep of Ann is 400 m, the race is 750 m"}); // no line for lane 3
}

TEST_CASE("race-rep: a lower limit, and none at all") {
    auto const plan = [](std::string const& setting, std::string const& line) {
        return found("race-rep", race_in_week(2) + pool + setting + weeks({{line}}));
    };
    CHECK(plan("limit race-rep 75%\n", "575").empty()); // 562.5 m are asked
    CHECK(plan("limit race-rep 75%\n", "550") ==
          Found{"1: error: longest rep is 550 m, 75 % of the race is 562.5 m"});
    CHECK(plan("allow race-rep \"relay, 250 m each\"\n", "250").empty());
}

TEST_CASE("race-rep: without a race one note, and none for a file of sets") {
    CHECK(found("race-rep", pool + weeks({{"100"}, {"100"}})) ==
          Found{"3: note: no race is named, so nothing is measured against one"});
    CHECK(found("race-rep", "set \"A\" = 4 x 100\n").empty());
}

TEST_CASE("rep-step: a lap or a third") {
    auto const step = [](std::string const& before, std::string const& rep) {
        return found("rep-step", "before longest " + before + "m\n" + pool + weeks({{rep}}));
    };
    CHECK(step("500", "650").empty()); // a third of 500 is 166⅔
    CHECK(step("500", "675") ==
          Found{"6: warning: 675 m after a longest rep of 500 m, the next step is 650 m"});
    CHECK(step("600", "775").empty());
    CHECK(step("600", "800").empty()); // a third exactly
    CHECK(step("600", "825").size() == 1);
    CHECK(step("100", "150").empty()); // a lap, where a third would be stuck
    CHECK(step("100", "175").size() == 1);
    CHECK(first_hint("rep-step", "before longest 500m\n" + pool + weeks({{"750"}})) ==
          "a week with 650 m between them, or: limit rep-step 50%");
}

TEST_CASE("rep-step: the share that is offered is whole, and lets the step pass") {
    // 125 m more than 300 m are 41.7 %; a third is 100 m.
    auto const steps = pool + weeks({{"300"}, {"425"}});
    CHECK(first_hint("rep-step", steps) == "a week with 400 m between them, or: limit rep-step 42%");
    CHECK(found("rep-step", "limit rep-step 42%\n" + steps).empty());
    CHECK(found("rep-step", "limit rep-step 41%\n" + steps).size() == 1);
}

TEST_CASE("rep-step: in pools of 40 m and more a lap is one length") {
    auto const step = [](std::string const& rep) {
        return found("rep-step", "before longest 100m\npool 50m\n" + weeks({{rep}}));
    };
    CHECK(step("150").empty());
    CHECK(step("200").size() == 1);
}

TEST_CASE("rep-step: from the highest so far, week by week") {
    CHECK(found("rep-step", pool + weeks({{"300"}, {"400"}, {"200"}, {"500"}})).empty());
    CHECK(found("rep-step", pool + weeks({{"300"}, {"400"}, {"200"}, {"550"}})) ==
          Found{"17: warning: 550 m after a longest rep of 400 m, the next step is 525 m"});
    // Two steps in one week count from the week before.
    CHECK(found("rep-step", pool + weeks({{"300"}, {"400", "500"}})).size() == 1);
}

TEST_CASE("rep-step: its own share, and none") {
    auto const step = [](std::string const& setting, std::string const& rep) {
        return found("rep-step", "before longest 500m\n" + setting + pool + weeks({{rep}}));
    };
    CHECK(step("limit rep-step 50%\n", "750").empty());
    CHECK(step("limit rep-step 50%\n", "775").size() == 1);
    CHECK(step("allow rep-step\n", "1000").empty());
}

TEST_CASE("week-growth: a lap a session or a tenth") {
    auto const growth = [](std::string const& setting, std::vector<std::string> const& week) {
        return found("week-growth", "before longest 500m week 2000m\n" + setting + pool + weeks({week}));
    };
    CHECK(growth("", {"1100", "1075"}).empty());
    CHECK(growth("", {"1100", "1100"}).empty());
    CHECK(growth("", {"1100", "1125"}) ==
          Found{"3: warning: week 1 has 2225 m after at most 2000 m, the next step is 2200 m"});
    CHECK(growth("limit week-growth 20%\n", {"1200", "1200"}).empty());
    CHECK(growth("limit week-growth 20%\n", {"1200", "1225"}).size() == 1);
    CHECK(growth("allow week-growth\n", {"2000", "2000"}).empty());
}

TEST_CASE("week-growth: small weeks may grow by a lap a session") {
    auto const growth = [](std::vector<std::string> const& week) {
        return found("week-growth", "before longest 100m week 500m\n" + pool + weeks({week}));
    };
    CHECK(growth({"300", "300"}).empty());
    CHECK(growth({"300", "325"}).size() == 1);
    CHECK(growth({"200", "200", "250"}).empty()); // three sessions, three laps
    CHECK(growth({"200", "225", "250"}).size() == 1);
}

TEST_CASE("week-growth: over the highest week so far") {
    CHECK(found("week-growth", pool + weeks({{"2000"}, {"2200"}, {"1000"}, {"2400"}})).empty());
    CHECK(found("week-growth", pool + weeks({{"2000"}, {"2200"}, {"1000"}, {"2425"}})).size() == 1);
}

TEST_CASE("sessions: two a week, but not in the race's own") {
    CHECK(found("sessions", pool + weeks({{"100", "100"}, {"100", "100"}})).empty());
    CHECK(found("sessions", pool + weeks({{"100", "100", "100"}})).empty());
    CHECK(found("sessions", pool + weeks({{"100", "100"}, {"100"}})) ==
          Found{"9: warning: week 2 has 1 session, at least 2 are asked for"});
    CHECK(found("sessions", pool + "week 1 from 2027-05-03\n") ==
          Found{"2: warning: week 1 has no session, at least 2 are asked for"});
    CHECK(found("sessions", race_in_week(2) + pool + weeks({{"750", "100"}, {"100"}})).empty());
    CHECK(found("sessions", race_in_week(3) + pool + weeks({{"750", "100"}, {"100"}})).size() == 1);
    CHECK(found("sessions", "limit sessions 3\n" + pool + weeks({{"100", "100"}})).size() == 1);
    CHECK(found("sessions", "limit sessions 1\n" + pool + weeks({{"100"}})).empty());
    CHECK(found("sessions", "allow sessions\n" + pool + weeks({{"100"}})).empty());
    CHECK(found("sessions", pool + "session Tue\nmain\n100\n").empty()); // no week, no count
}

TEST_CASE("session-floor: the race and a third, once before the taper") {
    // 750 m are 15 laps, and a session of them takes 20.
    auto const floor = [](std::string const& setting, std::vector<std::vector<std::string>> const& all) {
        return found("session-floor",
                     race_in_week(static_cast<int>(all.size())) + setting + pool + weeks(all));
    };
    CHECK(floor("", {{"1025"}, {"100"}}).empty());
    CHECK(floor("", {{"1000"}, {"100"}}).empty());
    CHECK(floor("", {{"975"}, {"100"}}) ==
          Found{"1: warning: the longest session before the last week is 975 m, this race wants 1000 m"});
    CHECK(floor("", {{"975"}, {"1000"}}).size() == 1); // too late
    CHECK(floor("limit session-floor 800m\n", {{"800"}, {"100"}}).empty());
    CHECK(floor("limit session-floor 800m\n", {{"775"}, {"100"}}).size() == 1);
    CHECK(floor("limit race-rep 50%\n", {{"550"}, {"100"}}).empty()); // 8 laps, and 11 around them
    CHECK(floor("limit race-rep 50%\n", {{"525"}, {"100"}}).size() == 1);
    CHECK(floor("allow session-floor\n", {{"100"}, {"100"}}).empty());
    // Where there is nothing but the last week, it counts.
    CHECK(floor("", {{"975"}}).size() == 1);
    CHECK(floor("", {{"1000"}}).empty());
}

TEST_CASE("session-floor: a long race eases two weeks of more than six") {
    auto const floor = [](std::vector<std::string> const& mains) {
        std::vector<std::vector<std::string>> all;
        for (auto const& main : mains) {
            all.push_back({main});
        }
        return found("session-floor", "race standard on 2027-06-20\n" + pool + weeks(all));
    };
    CHECK(floor({"100", "100", "100", "100", "2000", "100", "100"}).empty());
    CHECK(floor({"100", "100", "100", "100", "100", "2000", "100"}).size() == 1);
    CHECK(floor({"100", "100", "100", "100", "2000", "100"}).empty()); // six weeks: one is eased
}

TEST_CASE("taper: the last week before the race is at most 60 % of the highest") {
    auto const taper = [](std::string const& setting, std::string const& last) {
        return found("taper", race_in_week(3) + setting + pool + weeks({{"1000"}, {"500"}, {last}}));
    };
    CHECK(taper("", "575").empty());
    CHECK(taper("", "600").empty());
    CHECK(taper("", "625") ==
          Found{"11: warning: 625 m in the last week before the race, 60 % of 1000 m is 600 m"});
    CHECK(taper("limit taper 70%\n", "700").empty());
    CHECK(taper("limit taper 70%\n", "725").size() == 1);
    CHECK(taper("allow taper\n", "1000").empty());
    // The weeks before it are the measure, even where it is the highest itself.
    CHECK(taper("", "1200") ==
          Found{"11: warning: 1200 m in the last week before the race, 60 % of 1000 m is 600 m"});
}

TEST_CASE("taper: four laps a session are short whatever came before") {
    auto const taper = [](std::vector<std::string> const& last) {
        return found("taper", race_in_week(2) + pool + weeks({{"100", "100"}, last}));
    };
    CHECK(taper({"200", "200"}).empty());
    CHECK(taper({"200", "225"}).size() == 1);
}

TEST_CASE("taper: a last week that ends more than 14 days before the race is no taper") {
    CHECK(found("taper", race_in_week(4) + pool + weeks({{"1000"}, {"1000"}})).size() == 1);
    CHECK(found("taper", race_in_week(5) + pool + weeks({{"1000"}, {"1000"}})).empty());
    CHECK(
        found("taper", race_in_week(7) + pool + "week 1\nsession\nmain\n1000\nweek 2\nsession\nmain\n1000\n")
            .size() == 1); // without dates it may be near
}

TEST_CASE("taper: without a race, or with one week only, nothing is eased") {
    CHECK(found("taper", pool + weeks({{"1000"}, {"1000"}})).empty());
    CHECK(found("taper", race_in_week(1) + pool + weeks({{"1000"}})).empty());
}

TEST_CASE("rep-step: a swimmer's share grows by its own laps") {
    // 350 m and 450 m of the group; 88 %: 308 m (300) and 396 m (400), a third is 100
    auto const steps = [](std::string const& share, std::string const& reps) {
        return found("rep-step", "swimmer \"Ann\" distance " + share + "\n" + pool + reps);
    };
    std::string const fine = weeks({{"350"}, {"450"}});
    CHECK(steps("100%", fine).empty());
    CHECK(steps("88%", fine).empty());
    CHECK(steps("77%", fine) == // 269.5 m (250), 346.5 m (350)
          Found{"10: warning: 350 m after a longest rep of 250 m, the next step is 325 m (Ann)"});
    // where the lane has it, it is said once
    CHECK(steps("50%", weeks({{"300"}, {"600"}})) ==
          Found{"10: warning: 600 m after a longest rep of 300 m, the next step is 400 m"});
}

TEST_CASE("rep-step: what a swimmer swims today is scaled too") {
    std::string const plan = "before longest 400m\n" + pool + weeks({{"500"}});
    CHECK(found("rep-step", plan).empty());
    CHECK(found("rep-step", "swimmer \"Ann\" distance 50%\n" + plan).empty()); // 200, then 250
}

TEST_CASE("session-floor: for a swimmer's share as well") {
    std::string const plan = race_in_week(3) + pool + weeks({{"950"}, {"950\n100"}, {"400"}});
    CHECK(found("session-floor", plan).empty()); // 1050 m; 20 laps are 1000
    CHECK(
        found("session-floor", "swimmer \"Ann\" distance 80%\n" + plan) ==
        Found{"2: warning: the longest session before the last week is 900 m, this race wants 1000 m (Ann)"});
}

TEST_CASE("week-growth, taper: reps of one lap, which no share makes shorter, are no growth") {
    auto const taper = race_in_week(2) + pool + weeks({{"1000"}, {"12 x 50"}});
    CHECK(found("taper", "swimmer \"Ann\" distance 50%\n" + taper).empty());
    auto const growing = pool + weeks({{"600"}, {"12 x 50"}});
    CHECK(found("week-growth", "swimmer \"Ann\" distance 50%\n" + growing).empty());
}
