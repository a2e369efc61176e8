#include "support/plan_text.hpp"

#include <catch2/catch.hpp>

#include <string>
#include <vector>

/// Every error of meaning, by the rule it keeps (docs/notation.md): the code, the words it stands at, the
/// message.
namespace lengthwise {
namespace {

using support::faults;
using support::session_with;

struct Row {
    char const* rule;
    char const* lines;
    std::vector<std::string> found;
};

void check(std::vector<Row> const& rows, std::string_view head = "pool 25m\n") {
    for (auto const& row : rows) {
        INFO(row.rule << ": " << row.lines);
        CHECK(faults(session_with(std::string{"    "} + row.lines, head)) == row.found);
    }
}

} // namespace

TEST_CASE("amounts: what cannot be a distance or a time") {
    check({
        {"lengths are whole", "2 1/2, 4 lengths", {"syntax-amount | 2 1/2 | lengths come in whole numbers"}},
        {"one rep is at most 100 km",
         "100001m",
         {"syntax-limit | 100001m | a rep of 100001 m; one rep may be 100 km"}},
        {"100 km is read", "100000m", {}},
        {"a ladder's units: all, none or the last",
         "100, 200m, 100",
         {"syntax-amount | 200m | a ladder's units stand on all numbers, on none, or on the last only"}},
        {"the same from the other side",
         "100m, 200, 100",
         {"syntax-amount | 100m | a ladder's units stand on all numbers, on none, or on the last only"}},
        {"the last governs all", "4, 8, 4 lengths", {}},
        {"units on all", "100m, 200yd, 4 lengths", {}},
        {"times and distances do not mix",
         "100, 1min",
         {"syntax-pairing | 100 | a ladder holds distances or times, not both"}},
    });
    check({{"no pool, no lengths",
            "4 lengths",
            {"syntax-amount | 4 lengths | lengths need a pool, and none is named"}}},
          "");
    check({{"open water has no lengths",
            "4 lengths",
            {"syntax-amount | 4 lengths | open water has no lengths"}}},
          "pool open water\n");
    check({{"a bare decimal in a yard pool",
            "12.5",
            {"syntax-amount | 12.5 | yards take whole numbers or fractions, no decimals"}}},
          "pool 25yd\n");
}

TEST_CASE("one modifier of a class, whatever the class") {
    check({
        {"strokes", "100 crawl back", {"syntax-twice | back | crawl and back are two strokes"}},
        {"modes", "100 kick pull", {"syntax-twice | pull | kick and pull are two modes"}},
        {"efforts, rpe among them",
         "100 rpe 3 easy",
         {"syntax-twice | easy | rpe 3 and easy are two efforts"}},
        {"exact paces are efforts",
         "100 easy at 1:50 per 100",
         {"syntax-twice | at 1:50 per 100 | easy and at 1:50 per 100 are two efforts"}},
        {"hold is an effort",
         "100 hold 1:40 hard",
         {"syntax-twice | hard | hold 1:40 and hard are two efforts"}},
        {"shapes", "4 x 100 build descend", {"syntax-twice | descend | build and descend are two shapes"}},
        {"gear",
         "100 with fins with paddles",
         {"syntax-twice | with paddles | with fins and with paddles are two gear clauses"}},
        {"gear once a list", "100 with fins, paddles, fins", {"syntax-twice | fins | fins is named twice"}},
        {"nothing beside gear",
         "100 with nothing with fins",
         {"syntax-twice | with fins | with nothing and with fins are two gear clauses"}},
        {"nothing beside stops",
         "100 with stops with nothing",
         {"syntax-pairing | with nothing | with nothing takes stops away; with stops asks for them"}},
        {"stops and gear are two classes", "100 with stops with fins", {}},
        {"recoveries, rest beside on",
         "4 x 100 rest 10s on 2:00",
         {"syntax-twice | on 2:00 | rest 10s and on 2:00 are two recoveries"}},
        {"in a part", "100 as 50 kick swim / 50", {"syntax-twice | swim | kick and swim are two modes"}},
        {"in a selector", "4 x 100 odds easy hard", {"syntax-twice | hard | easy and hard are two efforts"}},
        {"notes add up", "100 easy \"one\" \"two\"", {}},
    });
    CHECK(faults("pool 25m\nsession\n  main crawl back\n    100\n") ==
          std::vector<std::string>{"syntax-twice | back | crawl and back are two strokes"});
}

TEST_CASE("amounts of modifiers") {
    check({
        {"percent of threshold speed, low side",
         "100 at 29%",
         {"syntax-amount | at 29% | 29: percent of threshold speed goes from 30 to 150"}},
        {"in range", "100 at 30%", {}},
        {"in range", "100 at 150%", {}},
        {"high side",
         "100 at 151%",
         {"syntax-amount | at 151% | 151: percent of threshold speed goes from 30 to 150"}},
        {"a pause of nothing is none", "pause 0s", {}},
        {"rest of nothing undoes", "4 x 100 rest 0s", {}},
    });
}

TEST_CASE("splits add up to the rep, or go into it") {
    check({
        {"add up", "100 as 25 kick / 75 crawl", {}},
        {"go into it", "200 as 25 kick / 25 crawl", {}},
        {"do not",
         "200 as 75 kick / 50 crawl",
         {"syntax-split | as 75 kick / 50 crawl | the parts make 125 m, the rep is 200 m"}},
        {"more than the rep",
         "100 as 75 kick / 50 crawl",
         {"syntax-split | as 75 kick / 50 crawl | the parts make 125 m, the rep is 100 m"}},
        {"times too", "3min as 1min kick / 2min easy", {}},
        {"times that do not",
         "3min as 1min kick / 1min easy",
         {"syntax-split | as 1min kick / 1min easy | the parts make 2min, the rep is 3min"}},
        {"parts of the rep's kind",
         "100 as 50 kick / 1min",
         {"syntax-split | 1min | the rep is a distance, this part a time"}},
        {"and the other way",
         "2min as 50 kick / 1min",
         {"syntax-split | 50 | the rep is a time, this part a distance"}},
        {"parts need not end at a wall", "50 as 10 kick / 15 crawl", {}},
        {"behind a group",
         "(100 + 50) as 25 / 25",
         {"syntax-line | as | \"as\" stands only behind one amount"}},
        {"behind a ladder",
         "100, 200 as 50 / 50",
         {"syntax-line | as | \"as\" stands only behind one amount"}},
    });
}

TEST_CASE("broken swims stop at walls inside the rep") {
    check({
        {"at a wall", "750 broken at 250 for 15s", {}},
        {"the last piece may be shorter", "750 broken at 500 for 15s", {}},
        {"not at the end",
         "750 broken at 750 for 15s",
         {"syntax-split | broken at 750 for 15s | broken at 750 m, but the rep is 750 m"}},
        {"whole lengths",
         "750 broken at 110 for 15s",
         {"syntax-split | broken at 110 for 15s | 110 m is not a whole number of 25 m lengths"}},
        {"of the rep's kind",
         "750 broken at 2min for 15s",
         {"syntax-split | broken at 2min for 15s | the rep is a distance, so it is broken at a distance"}},
        {"a timed rep at a time", "10min broken at 5min for 15s", {}},
        {"and not at a distance",
         "10min broken at 50 for 15s",
         {"syntax-split | broken at 50 for 15s | the rep is a time, so it is broken at a time"}},
        {"behind a group",
         "2 x (100 + 50) broken at 50 for 5s",
         {"syntax-line | broken | \"broken\" stands only behind one amount"}},
    });
}

TEST_CASE("what does not go together") {
    check({
        {"tread needs a time",
         "100 tread",
         {"syntax-pairing | 100 tread | tread needs a time: no distance is swum"}},
        {"tread a time", "1min tread", {}},
        {"in force counts, from the group",
         "2 x (100 + 50) tread",
         {"syntax-pairing | 100 | tread needs a time: no distance is swum",
          "syntax-pairing | 50 | tread needs a time: no distance is swum"}},
        {"in force counts, from a selector",
         "4 x 50 odds tread",
         {"syntax-pairing | 4 x 50 odds tread | tread needs a time: no distance is swum"}},
        {"every rep is chosen otherwise", "2 x 50 tread, odds swim, evens kick", {}},
        {"in a part",
         "100 as 50 tread / 50",
         {"syntax-pairing | 100 as 50 tread / 50 | tread needs a time: no distance is swum"}},
        {"hold needs a distance",
         "1min hold 0:50",
         {"syntax-pairing | 1min hold 0:50 | hold is the time of a distance; this rep is a time already"}},
        {"hold in a part",
         "100 as 50 hold 0:50 / 50",
         {"syntax-pairing | hold 0:50 | hold is the time of a whole rep, not of a part"}},
        {"hold over a part with its own effort",
         "100 hold 1:40 as 50 easy / 50",
         {"syntax-pairing | 100 hold 1:40 as 50 easy / 50 | hold is the time of the whole rep; a part has "
          "its own "
          "effort"}},
        {"hold over a split", "100 hold 1:40 as 50 kick / 50", {}},
        {"stops behind a group",
         "(100 + 50) with stops",
         {"syntax-pairing | with stops | with stops stands behind reps, not behind a group or heading"}},
        {"stops behind a ladder", "100, 200 with stops", {}},
        {"stops behind a selector of reps", "4 x 100 odds with stops", {}},
        {"stops behind a selector of rounds",
         "2 x (100 + 50) odds with stops",
         {"syntax-pairing | odds with stops | with stops stands behind reps, not behind a group"}},
    });
}

TEST_CASE("send-offs and cycles fit the count") {
    check({
        {"a step each", "3 x 100 on 2:00, 1:55, 1:50", {}},
        {"one for all", "3 x 100 on 2:00", {}},
        {"neither", "5 x 100 on 2:00, 1:55", {"syntax-count | on 2:00, 1:55 | 2 send-offs for 5 reps"}},
        {"a ladder's reps", "100, 200 on 2:00, 3:30", {}},
        {"too few for a ladder",
         "100, 200, 100 on 2:00, 3:30",
         {"syntax-count | on 2:00, 3:30 | 2 send-offs for 3 reps"}},
        {"a group's rounds",
         "3 x (100 + 50) on 4:00, 3:50",
         {"syntax-count | on 4:00, 3:50 | 2 send-offs for 3 rounds"}},
        {"a timed rep fits its send-off", "4 x 2min on 2:00", {}},
        {"and does not",
         "4 x 2min on 1:59",
         {"syntax-count | on 1:59 | 2min of swimming do not fit a send-off of 1:59"}},
        {"breaks come on top",
         "4min broken at 2min for 10s on 4:05",
         {"syntax-count | on 4:05 | 4:10 of swimming do not fit a send-off of 4:05"}},
        {"the step of the rung",
         "1min, 2min on 1:30, 1:30",
         {"syntax-count | on 1:30, 1:30 | 2min of swimming do not fit a send-off of 1:30"}},
        {"cycles come out even", "8 x 50 descend 1-4", {}},
        {"or do not",
         "6 x 50 descend 1-4",
         {"syntax-count | descend 1-4 | descend 1-4 over 6 reps: the cycles do not come out even"}},
        {"bare descend takes any", "7 x 50 descend", {}},
    });
}

TEST_CASE("selectors choose reps that are there, each once") {
    check({
        {"odds and evens", "5 x 50 odds easy, evens hard", {}},
        {"a rep chosen twice",
         "4 x 50 odds easy, first 2 hard",
         {"syntax-selector | first 2 hard | rep 1 is chosen twice"}},
        {"a round chosen twice",
         "4 x (50 + 25) evens easy, last hard",
         {"syntax-selector | last hard | round 4 is chosen twice"}},
        {"more than there are",
         "4 x 50 first 5 easy",
         {"syntax-selector | first 5 easy | first 5 of 4 reps: there are not so many"}},
        {"next past the end",
         "4 x 50 first 3 easy, next 2 hard",
         {"syntax-selector | next 2 hard | next 2 of 4 reps: there are not so many"}},
        {"a lone amount counts as one",
         "50 evens easy",
         {"syntax-selector | evens easy | evens of 1 rep: there are not so many"}},
        {"and its first is there", "50 first easy", {}},
        {"every 5th of 4",
         "4 x 50 every 5th easy",
         {"syntax-selector | every 5th easy | every 5 of 4 reps: there are not so many"}},
        {"every 4th of 4", "4 x 50 every 4th easy", {}},
        {"a ladder's rungs", "100, 200, 100 last 2 easy", {}},
        {"more than the rungs",
         "100, 200, 100 last 4 easy",
         {"syntax-selector | last 4 easy | last 4 of 3 reps: there are not so many"}},
    });
}

} // namespace lengthwise
