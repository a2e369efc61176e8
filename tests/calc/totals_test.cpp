#include "calc/reps.hpp"
#include "calc/totals.hpp"
#include "support/plan_text.hpp"
#include "support/read_plan.hpp"
#include "units/spell.hpp"

#include <catch2/catch.hpp>

/// What counts, rule by rule (docs/notation.md, "Amounts and units" and "Reps, groups,
/// selection").
namespace lengthwise {
namespace {

using support::read_plan;
using support::session_with;

calc::Totals swum(std::string const& text, int lane = 0) {
    auto const read = read_plan(text);
    CHECK(read.error() == "");
    return calc::Reckoner{read.plan()}.of_plan().swum(lane);
}

calc::Totals if_time(std::string const& text, int lane = 0) {
    auto const read = read_plan(text);
    CHECK(read.error() == "");
    return calc::Reckoner{read.plan()}.of_plan().if_time(lane);
}

calc::Totals in_pool(std::string_view lines, std::string_view head = "pool 25m\n") {
    return swum(session_with(lines, head));
}

std::string metres(Distance distance) {
    return spell::number(distance, Unit::metre);
}

std::string longest(std::string_view lines) {
    return metres(in_pool(lines).longest);
}

} // namespace

TEST_CASE("a count multiplies a rep, and rounds what is inside them") {
    auto const totals = in_pool("4 x 100\n3 x (2 x 50 + 25) rest 20s\n");
    CHECK(totals.distance == Distance::metres(775));
    CHECK(totals.lengths == 31);
    CHECK(totals.reps == 4 + 3 * 3);
}

TEST_CASE("a ladder adds its reps one by one") {
    auto const totals = in_pool("100, 200, 300, 200, 100\n");
    CHECK(totals.distance == Distance::metres(900));
    CHECK(totals.reps == 5);
    CHECK(metres(totals.longest) == "300");
}

TEST_CASE("lengths are rounded up once a rep") {
    CHECK(in_pool("110\n").lengths == 5);
    CHECK(in_pool("4 x 110\n").lengths == 20);       // and not 440 m as 18
    CHECK(in_pool("2 x (110, 10)\n").lengths == 12); // 5 and 1, twice
    CHECK(in_pool("4 lengths\n", "pool 33 1/3 m\n").lengths == 4);
    CHECK(in_pool("100\n", "pool 33 1/3 m\n").lengths == 3);
    CHECK(in_pool("101m\n", "pool 33 1/3 m\n").lengths == 4);
    CHECK(in_pool("8 x 50yd\n", "pool 25yd\n").lengths == 16);
}

TEST_CASE("lengths are unknown only where no session has a pool with a length") {
    auto const known = [](std::string const& text) {
        auto const read = read_plan(text);
        return calc::Reckoner{read.plan()}.of_plan().has_lengths();
    };
    CHECK(known(session_with("100\n")));
    CHECK_FALSE(known(session_with("100\n", "pool open water\n")));
    CHECK_FALSE(known(session_with("100\n", "")));
    CHECK(known("session\npool open water\nmain\n1000\nsession\npool 25m\nmain\n"));
    CHECK_FALSE(known(""));
    CHECK(swum("session\npool open water\nmain\n1000\nsession\npool 25m\nmain\n100\n").lengths == 4);
}

TEST_CASE("timed reps count in reps, never in metres, lengths or the longest") {
    auto const totals = in_pool("2 x 5min easy\n1:30, 90s\n100\n");
    CHECK(totals.reps == 5);
    CHECK(totals.timed_reps == 4);
    CHECK(totals.treading_reps == 0);
    CHECK(totals.timed == Duration::minutes(13));
    CHECK(totals.distance == Distance::metres(100));
    CHECK(totals.lengths == 4);
    CHECK(metres(totals.longest) == "100");
}

TEST_CASE("treading is time without a distance, also in all parts of a split") {
    CHECK(in_pool("3 x 2min tread\n").treading_reps == 3);
    CHECK(in_pool("4min as 1min tread / 1min kick\n").treading_reps == 0);
    CHECK(in_pool("4min as 1min tread easy / 1min tread hard\n").treading_reps == 1);
    CHECK(in_pool("4 x 2min, odds tread\n").treading_reps == 2);
    CHECK(in_pool("3 x (2 x 2min tread + 1min kick) rest 20s\n").treading_reps == 6);
}

TEST_CASE("timed reps count in every round, of a set too") {
    auto const rounds = in_pool("3 x (2 x 2min + 1min) rest 20s\n");
    CHECK(rounds.timed == Duration::minutes(15));
    CHECK(rounds.timed_reps == 9);
    // Only what is used again is remembered.
    auto const in_set = in_pool("use \"go\"\n4 x use \"go\"\n", "pool 25m\nset \"go\" = 2 x (3min + 50)\n");
    CHECK(in_set.timed == Duration::minutes(30));
    CHECK(in_set.timed_reps == 10);
    CHECK(in_set.distance == Distance::metres(500));
}

TEST_CASE("breaks of a broken timed rep are no time of the rep") {
    CHECK(in_pool("10min broken at 2min for 10s\n").timed == Duration::minutes(10));
}

TEST_CASE("the longest rep is in swim mode") {
    CHECK(longest("400\n") == "400");
    CHECK(longest("400 swim back\n") == "400");
    for (auto const* mode : {"kick", "pull", "drill \"fist\""}) {
        CHECK(longest("400 " + std::string{mode} + "\n200\n") == "200");
    }
}

TEST_CASE("the longest rep has at most snorkel and wetsuit") {
    CHECK(longest("400 with snorkel, wetsuit\n") == "400");
    for (auto const* gear : {"fins", "paddles", "buoy", "board", "band", "snorkel, fins"}) {
        CHECK(longest("400 with " + std::string{gear} + "\n200\n") == "200");
    }
    CHECK(longest("2 x (400 with nothing + 500) with fins\n") == "400");
}

TEST_CASE("a rep with stops counts its metres and is no longest rep") {
    auto const totals = in_pool("400 with stops\n100\n");
    CHECK(totals.distance == Distance::metres(500));
    CHECK(metres(totals.longest) == "100");
}

TEST_CASE("a broken rep counts its longest piece") {
    CHECK(longest("750 broken at 250 for 15s\n") == "250");
    CHECK(longest("700 broken at 250 for 15s\n") == "250"); // 250, 250, 200
    CHECK(longest("750 kick broken at 250 for 15s\n") == "0");
    CHECK(in_pool("750 broken at 250 for 15s\n").reps == 1);
}

TEST_CASE("a split with one part that does not qualify is no longest rep") {
    CHECK(longest("200 as 100 easy / 100 hard\n") == "200");
    CHECK(longest("200 as 25 kick / 25 crawl\n") == "0");
    CHECK(longest("200 kick as 100 swim / 100 swim easy\n") == "200"); // the parts say otherwise
    CHECK(longest("200 as 100 easy / 100 hard with fins\n") == "0");
}

TEST_CASE("reps that a selector changes may qualify or not") {
    CHECK(longest("4 x 400, odds kick\n") == "400");
    CHECK(longest("4 x 400, first 4 kick\n") == "0");
    CHECK(longest("4 x 400 kick, last 1 swim\n") == "400");
    CHECK(longest("4 x 400, first 4 with stops\n") == "0");
    CHECK(longest("100, 200, 300, last 1 with fins\n") == "200");
    CHECK(longest("3 x 200 as 100 / 100, first 2 kick\n") == "200");
    CHECK(longest("3 x 200 as 100 / 100, first 3 kick\n") == "0");
}

TEST_CASE("rounds that a selector changes are swum as it says") {
    CHECK(longest("2 x (400 + 100), first 2 with fins\n") == "0");
    CHECK(longest("2 x (400 + 100), first 1 with fins\n") == "400");
    CHECK(longest("2 x (400 swim + 500), first 2 kick\n") == "400"); // what an inner item says stays
    auto const totals = in_pool("5 x (100 + 50), evens kick\n");
    CHECK(totals.distance == Distance::metres(750));
    CHECK(totals.reps == 10);
}

TEST_CASE("a named set counts as if it were written there, in the pool of the place") {
    std::string const text = "set \"A\" = 4 x 100\n"
                             "session\npool 25m\nmain\nuse \"A\"\n3 x use \"A\"\n"
                             "session\npool 50m\nmain\nuse \"A\"\n"
                             "session\npool 25yd\nmain\nuse \"A\"\n";
    auto const read = read_plan(text);
    REQUIRE(read.error() == "");
    calc::Reckoner reckoner{read.plan()};
    auto const& sessions = read.plan().sessions;
    CHECK(reckoner.of_session(sessions[0]).swum(0).lengths == 64);
    CHECK(reckoner.of_session(sessions[1]).swum(0).lengths == 8);
    CHECK(reckoner.of_session(sessions[2]).swum(0).lengths == 16);
    CHECK(reckoner.of_session(sessions[2]).swum(0).distance == Distance::yards(400));
}

TEST_CASE("sets that use sets twice are summed once, however deep they nest") {
    std::string text = "pool 25m\nset \"0\" = 25\n";
    for (int i = 1; i <= 24; ++i) {
        auto const inner = "use \"" + std::to_string(i - 1) + "\"";
        text += "set \"" + std::to_string(i) + "\" = (" + inner + " + " + inner + ")\n";
    }
    // 2^15 reps of 25 m by way of 15 sets.
    auto const totals = swum(text + "session\nmain\nuse \"15\"\n");
    CHECK(totals.reps == 32'768);
    CHECK(totals.lengths == 32'768);
}

TEST_CASE("thousands of rounds cost what one costs") {
    auto const totals = in_pool("3000 x (2 x 25 + 9 x 1 length)\n");
    CHECK(totals.reps == 3'000 * 11);
    CHECK(totals.distance == Distance::metres(3'000 * 275));
}

TEST_CASE("a lane swims the lines that bear it and all unlabelled ones") {
    auto const text = session_with("200\nlane 1: 6 x 100\nlane 2-3: 5 x 100\n50\n");
    CHECK(swum(text, 1).distance == Distance::metres(850));
    CHECK(swum(text, 2).distance == Distance::metres(750));
    CHECK(swum(text, 3) == swum(text, 2));
    CHECK(swum(text, 4).distance == Distance::metres(250));
    CHECK(swum(text, 0) == swum(text, 4));
}

TEST_CASE("the lanes of a session are those it names, of a plan those of its sessions") {
    auto const read = read_plan("pool 25m\nweek 1\nsession\nmain\nlane 2: 100\nlane 4-5: 100\n"
                                "session\nmain\n100\nweek 2\nsession\nmain\nif time: lane 1: 100\n");
    REQUIRE(read.error() == "");
    auto const& plan = read.plan();
    CHECK(calc::numbers(calc::lanes_of(plan, plan.sessions[0])) == std::vector<int>{2, 4, 5});
    CHECK(calc::numbers(calc::lanes_of(plan, plan.sessions[1])).empty());
    CHECK(calc::numbers(calc::lanes_of(plan, plan.weeks[0])) == std::vector<int>{2, 4, 5});
    CHECK(calc::numbers(calc::lanes_of(plan)) == std::vector<int>{1, 2, 4, 5});
    CHECK(calc::lowest(calc::lanes_of(plan, plan.weeks[0])) == 2);
    CHECK(calc::lowest({}) == 0);
    CHECK(calc::Reckoner{plan}.of_plan().lanes() == calc::lanes_of(plan));
}

TEST_CASE("a lane that a session does not name swims its unlabelled lines there") {
    std::string const text = "pool 25m\nsession\nmain\nlane 1: 100\nlane 2: 200\nsession\nmain\n400\n";
    CHECK(swum(text, 1).distance == Distance::metres(500));
    CHECK(swum(text, 2).distance == Distance::metres(600));
    CHECK(swum(text, 1).longest == Distance::metres(400));
}

TEST_CASE("optional lines stand apart, outside totals and longest rep") {
    auto const text = session_with("200\nif time: 4 x 25\nif time: lane 2: 400\nlane 1-2: 100\n");
    CHECK(swum(text, 1).distance == Distance::metres(300));
    CHECK(swum(text, 2).longest == Distance::metres(200));
    CHECK(if_time(text, 1).distance == Distance::metres(100));
    CHECK(if_time(text, 1).reps == 4);
    CHECK(if_time(text, 2).distance == Distance::metres(500));
    CHECK(if_time(text, 2).longest == Distance::metres(400));
    CHECK(if_time(session_with("200\n")).reps == 0);
}

TEST_CASE("pauses and notes count nothing") {
    auto const totals = in_pool("\"look up\"\n100\npause 2min \"drink\"\n100\n");
    CHECK(totals.reps == 2);
    CHECK(totals.timed.zero());
    CHECK(totals.distance == Distance::metres(200));
}

TEST_CASE("one item can be asked for") {
    auto const read = read_plan(session_with("3 x (100 + 50)\npause 1min\n"));
    auto const& plan = read.plan();
    calc::Reckoner reckoner{plan};
    auto const& group = plan.items[plan.sections[0].body];
    CHECK(reckoner.of_item(plan.sessions[0], group).distance == Distance::metres(450));
    CHECK(reckoner.of_item(plan.sessions[0], plan.items[plan.after(plan.sections[0].body)]) ==
          calc::Totals{});
}

TEST_CASE("lengths of a rep are whole, the last one begun counts") {
    auto const pool = Pool::of(Distance::metres(25), Unit::metre);
    CHECK(calc::lengths_of(Distance::metres(100), pool) == 4);
    CHECK(calc::lengths_of(Distance::units(Distance::metres(100).units() + 1), pool) == 5);
    CHECK(calc::lengths_of(Distance::metres(1), pool) == 1);
    CHECK_FALSE(calc::lengths_of(Distance::metres(100), Pool::open_water()).has_value());
    CHECK_FALSE(calc::lengths_of(Distance::metres(100), Pool{}).has_value());
}

} // namespace lengthwise
