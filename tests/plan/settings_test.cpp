#include "support/plan_text.hpp"
#include "units/spell.hpp"

#include <catch2/catch.hpp>

#include <string>
#include <vector>

/// Settings, the head of a file, and the days of weeks and sessions (docs/notation.md).
namespace lengthwise {
namespace {

using support::faults;
using support::meanings;
using support::read_plan;

using Found = std::vector<std::string>;

std::string day(std::optional<Date> date) {
    return date ? spell::iso(*date) : "-";
}

} // namespace

TEST_CASE("settings hold for the whole scope, in any order, the nearest wins") {
    auto const read =
        read_plan("threshold 2:05\nbefore longest 200\npool 25yd\nrest 30s\n"
                  "week 1\n  pool 50m\n"
                  "  session\n    main\n      100\n"
                  "  session\n    threshold 1:50 per 100m in 25m reserve 20m\n    pool 33 1/3 m\n"
                  "    rest 10s\n    main\n      67\n");
    CHECK(read.error() == "");
    auto const& plan = read.plan();
    CHECK(plan.before->longest == Distance::yards(200)); // the file's pool, though it stands below
    CHECK(plan.pool_of(plan.sessions[0]).length == Distance::metres(50));
    CHECK(plan.pool_of(plan.sessions[1]).length == Distance::units(1'000'000));
    auto const& outer = plan.thresholds[plan.sessions[0].threshold];
    CHECK(outer.per == Distance::yards(100)); // fixed where it is written
    CHECK(outer.course == Pool::of(Distance::yards(25), Unit::yard));
    auto const& inner = plan.thresholds[plan.sessions[1].threshold];
    CHECK(inner.per == Distance::metres(100));
    CHECK(inner.course.length == Distance::metres(25));
    CHECK(inner.reserve == Distance::metres(20));
    CHECK(meanings(plan) == Found{"1 x 100 m rest 30s"});
}

TEST_CASE("a threshold without pool is per 100 m, its course unknown") {
    auto const read = read_plan("threshold about 2:40\nsession\n  main\n    100\n");
    auto const& threshold = read.plan().thresholds.at(0);
    CHECK(threshold.about);
    CHECK(threshold.per == Distance::metres(100));
    CHECK(threshold.course.kind == Pool::Kind::unsaid);
}

TEST_CASE("the same setting twice in a scope names both places") {
    CHECK(faults("pool 25m\npool 50m\n") == Found{"syntax-twice | pool 50m | pool is set twice here"});
    CHECK(faults("pool 25m\npool open water\n") ==
          Found{"syntax-twice | pool open water | pool is set twice here"});
    CHECK(faults("rest 10s\nrest 20s\n") == Found{"syntax-twice | rest 20s | rest is set twice here"});
    CHECK(faults("threshold 2:00\nthreshold 2:10\n") ==
          Found{"syntax-twice | threshold 2:10 | threshold is set twice here"});
    CHECK(faults("factor back 110%\nfactor back 120%\nfactor breast 130%\n") ==
          Found{"syntax-twice | factor back 120% | two factors for back here"});
    CHECK(faults("limit taper 60%\nlimit taper 50%\nlimit sessions 1\n") ==
          Found{"syntax-twice | limit taper 50% | two limits of taper here"});
    CHECK(faults("allow shape\nallow shape \"again\"\nallow medley\n") ==
          Found{"syntax-twice | allow shape \"again\" | shape is waived twice here"});
    CHECK(faults("pool 25m\nsession\n  pool 50m\n  main\n    100\n").empty());
}

TEST_CASE("pools from 1 m to 1000 m") {
    CHECK(faults("pool 1m\n").empty());
    CHECK(faults("pool 1000m\n").empty());
    CHECK(faults("pool 0.99m\n") ==
          Found{"syntax-amount | pool 0.99m | a pool of 0.99 m: pools from 1 m to 1000 m are read"});
    CHECK(faults("pool 1000.01m\n") ==
          Found{"syntax-amount | pool 1000.01m | a pool of 1000.01 m: pools from 1 m to 1000 m are read"});
    CHECK(faults("pool 25\nsession\n  main\n    100\n").empty()); // a bare pool length is metres
    CHECK(faults("pool 4 lengths\n") ==
          Found{"syntax-amount | pool 4 lengths | a pool's length is given in metres or yards"});
}

TEST_CASE("reserve takes its unit, 1 to 100 m") {
    CHECK(faults("threshold 2:00 reserve 1m\n").empty());
    CHECK(faults("threshold 2:00 reserve 100m\n").empty());
    CHECK(faults("threshold 2:00 reserve 20yd\n").empty());
    CHECK(faults("threshold 2:00 reserve 0.5m\n") ==
          Found{"syntax-amount | reserve 0.5m | a reserve of 0.5 m: from 1 m to 100 m are read"});
    CHECK(faults("threshold 2:00 reserve 101m\n") ==
          Found{"syntax-amount | reserve 101m | a reserve of 101 m: from 1 m to 100 m are read"});
    CHECK(faults("threshold 2:00 reserve 20\n") ==
          Found{"syntax-amount | reserve 20 | metres or yards? this distance needs its unit"});
}

TEST_CASE("factors: one word that has one, 1 to 1000 percent") {
    CHECK(faults("factor kick 1%\nfactor fins 1000%\nfactor easy 90%\nfactor choice 100%\n").empty());
    CHECK(faults("factor kick 0%\n") ==
          Found{"syntax-amount | factor kick 0% | a factor of 0%: from 1% to 1000% are read"});
    CHECK(faults("factor kick 1001%\n") ==
          Found{"syntax-amount | factor kick 1001% | a factor of 1001%: from 1% to 1000% are read"});
}

TEST_CASE("limits are of their rule's kind and place") {
    CHECK(
        faults("pool 25m\nlimit race-rep 75%\nlimit sessions 1\nlimit session-floor 1000m\nlimit slot 2min\n"
               "limit rest-band 20-40s\nlimit send-off 5s\n")
            .empty());
    CHECK(faults("limit race-rep 5s\n") ==
          Found{"syntax-pairing | 5s | the limit of race-rep is a percentage, 100%"});
    CHECK(faults("limit sessions 50%\n") ==
          Found{"syntax-pairing | 50% | the limit of sessions is a number, 2"});
    CHECK(faults("limit slot 20-40s\n") == Found{"syntax-pairing | 20 | the limit of slot is a time, 5s"});
    CHECK(faults("limit rest-band 2\n") ==
          Found{"syntax-pairing | 2 | the limit of rest-band is a range of times, 20-40s"});
    CHECK(faults("limit shape 5%\n") == Found{"syntax-pairing | limit shape 5% | shape has no limit to set"});
    CHECK(faults("limit rep-stp 5%\n") == Found{"syntax-name | rep-stp | no rule is named rep-stp"});
    CHECK(faults("allow nothing-such\n") ==
          Found{"syntax-name | nothing-such | no rule is named nothing-such"});
    CHECK(faults(
              "week 1\n  limit taper 60%\n  session\n    allow shape \"test swim\"\n    main\n      100\n") ==
          Found{"syntax-pairing | taper | taper judges the whole plan"});
    auto const read = read_plan("pool 25yd\nlimit session-floor 1000\n");
    CHECK(read.plan().settings[read.plan().file_settings].limits.at(0).low == Distance::yards(1000).units());
}

TEST_CASE("race, before and swimmers") {
    auto const read = read_plan("race \"Lake\" 1000yd on 2027-06-13\nbefore longest 200m week 1500m\n"
                                "swimmer \"Ana\" threshold 1:55 lane 2 distance 80%\npool 25m\n");
    CHECK(read.error() == "");
    CHECK(read.plan().race->distance == Distance::yards(1000));
    CHECK(spell::iso(read.plan().race->on) == "2027-06-13");
    CHECK(read.plan().before->week == Distance::metres(1500));
    CHECK(read.plan().swimmers.at(0).lane == 2);
    CHECK(read.plan().swimmers.at(0).share == 80U);
    CHECK(read.plan().swimmers.at(0).threshold->per == Distance::metres(100));

    CHECK(faults("race 750 on 2027-06-13\n") ==
          Found{"syntax-amount | 750 | metres or yards? this distance needs its unit"});
    CHECK(faults("race sprint on 2027-06-13\nrace sprint on 2027-06-14\n") ==
          Found{"syntax-twice | race sprint on 2027-06-14 | race stands twice"});
    CHECK(faults("before longest 200m\nbefore longest 250m\n") ==
          Found{"syntax-twice | before longest 250m | before stands twice"});
    CHECK(faults("swimmer \"Ana\"\nswimmer \"Ana\"\n") ==
          Found{"syntax-twice | \"Ana\" | two swimmers are named \"Ana\""});
    CHECK(faults("swimmer \"Ana\" lane 1 lane 2\n") ==
          Found{"syntax-twice | lane 2 | the swimmer's lane stands twice"});
    CHECK(faults("swimmer \"Ana\" distance 0%\n") ==
          Found{"syntax-amount | distance 0% | a share of 0%: from 1% to 200% are read"});
    CHECK(faults("swimmer \"Ana\" distance 201%\n") ==
          Found{"syntax-amount | distance 201% | a share of 201%: from 1% to 200% are read"});
}

TEST_CASE("a week without a date follows the nearest earlier dated one; nothing dates backward") {
    auto const read =
        read_plan("week 1\nweek 2 from 2027-04-26\n  session Tue\n    main\n      100\n"
                  "  session Mon\n    main\n      100\n"
                  "week 4\n  session 2027-05-12\n    main\n      100\n  session\n    main\n      100\n"
                  "week 5 from 2027-06-01\n  session Mon\n    main\n      100\nweek 6\n");
    CHECK(read.error() == "");
    auto const& weeks = read.plan().weeks;
    CHECK(day(weeks[0].from) == "-");
    CHECK(day(weeks[2].from) == "2027-05-10");
    CHECK(day(weeks[4].from) == "2027-06-08");
    auto const& sessions = read.plan().sessions;
    CHECK(day(sessions[0].date) == "2027-04-27");
    CHECK(day(sessions[1].date) == "2027-04-26"); // the week's own first day
    CHECK(day(sessions[2].date) == "2027-05-12");
    CHECK(day(sessions[3].date) == "-");
    CHECK(day(sessions[4].date) == "2027-06-07"); // that week starts on a Tuesday
}

TEST_CASE("a day without a week has no date; sessions before any week form one unnumbered week") {
    auto const read =
        read_plan("session Tue\n  main\n    100\nsession 2027-05-12\n  main\n    100\nweek 3\n");
    CHECK(read.plan().weeks.size() == 2);
    CHECK(!read.plan().weeks[0].number);
    CHECK(read.plan().weeks[0].sessions.count == 2);
    CHECK(day(read.plan().sessions[0].date) == "-");
    CHECK(day(read.plan().sessions[1].date) == "2027-05-12");
    CHECK(read_plan("plan \"Empty\"\n").plan().weeks.size() == 1); // a file with neither
}

TEST_CASE("days outside their week or the calendar") {
    CHECK(faults("week 1 from 2027-04-26\n  session 2027-05-03\n    main\n      100\n") ==
          Found{"syntax-date | 2027-05-03 | Mon 3 May 2027 is outside the week from Mon 26 April 2027"});
    CHECK(faults("week 1 from 2027-04-26\n  session 2027-04-25\n    main\n      100\n") ==
          Found{"syntax-date | 2027-04-25 | Sun 25 April 2027 is outside the week from Mon 26 April 2027"});
    CHECK(faults("week 1 from 2027-04-26\n  session 2027-05-02\n    main\n      100\n").empty());
    CHECK(faults("week 2\nweek 2\n") == Found{"syntax-date | 2 | week 2 stands behind week 2"});
    CHECK(faults("week 3\nweek 2\n") == Found{"syntax-date | 2 | week 2 stands behind week 3"});
    CHECK(faults("week 1 from 9999-12-25\nweek 2\n") ==
          Found{"syntax-date | week 2 | this week lies behind the year 9999"});
    CHECK(faults("week 1 from 9999-12-31\n  session Sat\n    main\n      100\n") ==
          Found{"syntax-date | session Sat | this session lies behind the year 9999"});
}

TEST_CASE("limits of one session, both sides") {
    auto const session = [](std::string const& lines) { return support::session_with(lines); };
    // distance: 1000 km over all lines
    CHECK(faults(session("    9999 x 100\n    100")).empty());
    CHECK(
        faults(session("    9999 x 100\n    125")) ==
        Found{
            "syntax-limit | 125 | with this line the session's distance comes to 1001 km; 1000 km are read"});
    CHECK(
        faults(session("    lane 1: 9999 x 100\n    lane 2: 125")) ==
        Found{
            "syntax-limit | 125 | with this line the session's distance comes to 1001 km; 1000 km are read"});
    // reps: 10^9; of a tenth of a millisecond there are none, so times of 1 ms
    CHECK(faults(session("    9999 x (9999 x (10 x 0:00.001))")).empty());
    CHECK(
        faults(session("    9999 x (9999 x (10 x 0:00.001))\n    9999 x (21 x 0:00.001)")) ==
        Found{"syntax-limit | 9999 x (21 x 0:00.001) | with this line the session's number of reps comes to "
              "1000009989 reps; 1000000000 reps are read"});
    // time: 10 000 h of what is said in times
    CHECK(faults(session("    100 x (100 x 1h)")).empty());
    CHECK(faults(session("    100 x (100 x 1h)\n    1s")) ==
          Found{"syntax-limit | 1s | with this line the session's time comes to 10001 h; 10000 h are read"});
    // a rest counts with its high end, a break once less than pieces
    CHECK(faults(session("    100 x (100 x 25 rest 30min-1h)")).empty());
    CHECK(faults(session("    100 x (100 x 25 rest 30min-1h)\n    1s")) ==
          Found{"syntax-limit | 1s | with this line the session's time comes to 10001 h; 10000 h are read"});
    CHECK(faults(session("    100 x (100 x 50 broken at 25 for 1h)")).empty());
    CHECK(faults(session("    100 x (100 x 50 broken at 25 for 1h)\n    1s")).size() == 1);
    // products beyond 64 bits stick instead of wrapping
    CHECK(faults(session("    9999 x (9999 x (9999 x (9999 x (9999 x 100000m))))")).size() == 1);
    // a new session starts from nothing
    CHECK(faults("pool 25m\nsession\n  main\n    9999 x 100\nsession\n  main\n    9999 x 100\n").empty());
}

} // namespace lengthwise
