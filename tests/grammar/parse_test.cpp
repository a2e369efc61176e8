#include "grammar/parse.hpp"
#include "grammar/source.hpp"
#include "support/dump.hpp"

#include <catch2/catch.hpp>

#include <string>
#include <vector>

namespace {

using namespace lengthwise;

struct Read {
    std::string text;
    std::string dump;
};

std::string dump_of(std::string const& text) {
    Source const source{"a.swim", text};
    auto const result = grammar::parse(source);
    return result.findings.has_errors() ? "error: " + result.findings.kept().front().message
                                        : test::dump(result.tree);
}

} // namespace

TEST_CASE("lines under a heading become nodes", "[grammar]") {
    std::vector<Read> const rows{
        // amounts
        {"200", "item{distance=200}"},
        {"200m", "item{distance=200m}"},
        {"220yd", "item{distance=220yd}"},
        {"220 yards", "item{distance=220yd}"},
        {"4 lengths", "item{distance=4len}"},
        {"1 length", "item{distance=1len}"},
        {"33 1/3 m", "item{distance=33+200/600m}"},
        {"36 2/3yd", "item{distance=36+400/600yd}"},
        {"0 1/2 m", "item{distance=0+300/600m}"},
        {"12.5", "item{distance=12+300/600.}"},
        {"33.33m", "item{distance=33+198/600.m}"},
        {"10min", "item{time=10min}"},
        {"90s", "item{time=90s}"},
        {"90 seconds", "item{time=90s}"},
        {"1h", "item{time=1h}"},
        {"1:30", "item{time=1:30}"},
        {":50", "item{time=0:50}"},
        {"0:52.5", "item{time=0:52.500}"},
        {"1:02:03", "item{time=1:02:03}"},
        {"7000000", "item{distance=7000000}"},
        // counts
        {"4 x 50", "item*4{distance=50}"},
        {"4x50", "item*4{distance=50}"},
        {"4X50", "item*4{distance=50}"},
        {"4 x50", "item*4{distance=50}"},
        {"4× 50", "item*4{distance=50}"},
        {"9999 x 25", "item*9999{distance=25}"},
        {"3 x 10min", "item*3{time=10min}"},
        // ladders
        {"100, 200, 100", "item{distance=100 distance=200 distance=100}"},
        {"50,  100m", "item{distance=50 distance=100m}"},
        {"1min, 2min", "item{time=1min time=2min}"},
        {"100, 200 crawl rest 10s", "item{distance=100 distance=200 stroke:crawl rest=10s}"},
        // strokes, modes
        {"50 crawl", "item{distance=50 stroke:crawl}"},
        {"50 front crawl", "item{distance=50 stroke:crawl}"},
        {"50 Freestyle", "item{distance=50 stroke:crawl}"},
        {"50 IM", "item{distance=50 stroke:medley}"},
        {"50 butterfly", "item{distance=50 stroke:fly}"},
        {"50 kick", "item{distance=50 mode:kick}"},
        {R"(50 drill "fist")", R"(item{distance=50 mode:drill name"fist"})"},
        {R"(50 drill crawl "fist")", R"(item{distance=50 mode:drill stroke:crawl note"fist"})"},
        {R"(50 drill "fist" "note")", R"(item{distance=50 mode:drill name"fist" note"note"})"},
        // efforts
        {"50 easy", "item{distance=50 effort:easy}"},
        {"50 moderate", "item{distance=50 effort:steady}"},
        {"50 FAST", "item{distance=50 effort:hard}"},
        {"50 max", "item{distance=50 effort:sprint}"},
        {"50 threshold", "item{distance=50 effort:threshold}"},
        {"50 threshold plus 5s", "item{distance=50 effort:threshold effort_shift:plus shift_time=5s}"},
        {"50 threshold minus 0:02", "item{distance=50 effort:threshold effort_shift:minus shift_time=0:02}"},
        {"50 at 95%", "item{distance=50 at_percent=95}"},
        {"50 at 1:55 per 100", "item{distance=50 at_pace=1:55 at_per=100}"},
        {"50 at 0:50 per 33 1/3 m", "item{distance=50 at_pace=0:50 at_per=33+200/600m}"},
        {"50 hold 0:52", "item{distance=50 hold=0:52}"},
        {"50 rpe 10", "item{distance=50 rpe=10}"},
        // shapes
        {"50 build", "item{distance=50 build}"},
        {"8 x 50 descend", "item*8{distance=50 descend}"},
        {"8 x 50 descend 1-4", "item*8{distance=50 descend=1-4}"},
        {"8 x 50 descend 1 - 4", "item*8{distance=50 descend=1-4}"},
        {"200 negative split", "item{distance=200 negative_split}"},
        // gear
        {"50 with fins", "item{distance=50 with:fins}"},
        {"50 with kickboard, pull buoy , snorkel",
         "item{distance=50 with:board with_more:buoy with_more:snorkel}"},
        {"50 with nothing", "item{distance=50 with:nothing}"},
        {"50 with stops", "item{distance=50 with:stops}"},
        // recovery
        {"4 x 50 rest 20s", "item*4{distance=50 rest=20s}"},
        {"4 x 50 rest 20-40s", "item*4{distance=50 rest=20 rest_to=40s}"},
        {"4 x 50 rest 30s - 1min", "item*4{distance=50 rest=30s rest_to=1min}"},
        {"4 x 50 rest 0:20-0:40", "item*4{distance=50 rest=0:20 rest_to=0:40}"},
        {"4 x 50 rest 0s", "item*4{distance=50 rest=0s}"},
        {"4 x 50 rest as needed", "item*4{distance=50 rest_as_needed}"},
        {"4 x 50 rest 5 breaths", "item*4{distance=50 rest_breaths=5}"},
        {"4 x 50 rest 1 breath", "item*4{distance=50 rest_breaths=1}"},
        {"4 x 50 on 1:10", "item*4{distance=50 on=1:10}"},
        {"4 x 50 off 1:10", "item*4{distance=50 on=1:10}"},
        {"3 x 50 on 1:10, 1:05, :58", "item*3{distance=50 on=1:10 on_more=1:05 on_more=0:58}"},
        // notes
        {R"(50 "one" crawl "two")", R"(item{distance=50 note"one" stroke:crawl note"two"})"},
        {R"(50 "a \"b\" \\")", R"(item{distance=50 note"a \"b\" \\"})"},
        // splits, breaks
        {"50 as 25 kick / 25 crawl", "item{distance=50 split{part=25 mode:kick part=25 stroke:crawl}}"},
        {R"(200 easy as 25 drill "fist" "slow" / 25 crawl build rest 10s "all")",
         R"(item{distance=200 effort:easy split{part=25 mode:drill name"fist" note"slow" part=25 stroke:crawl build} rest=10s note"all"})"},
        {"4 x 1min as 30s kick / 30s swim with fins",
         "item*4{time=1min split{part_time=30s mode:kick part_time=30s mode:swim} with:fins}"},
        {"750 broken at 250 for 15s", "item{distance=750 broken=250 broken_for=15s}"},
        {"10min broken at 2min for 0s", "item{time=10min broken_time=2min broken_for=0s}"},
        // selectors
        {"6 x 50 odds easy", "item*6{distance=50 selector:odds{effort:easy}}"},
        {"6 x 50, odds easy, evens hard",
         "item*6{distance=50 selector:odds{effort:easy} selector:evens{effort:hard}}"},
        {"6 x 50 on 1:10, odds easy evens hard",
         "item*6{distance=50 on=1:10 selector:odds{effort:easy} selector:evens{effort:hard}}"},
        {R"(6 x 50, first 2 kick "toes" next back last 2 with fins, board)",
         R"(item*6{distance=50 selector:first{selector_number=2 mode:kick note"toes"} selector:next{stroke:back} selector:last{selector_number=2 with:fins with_more:board}})"},
        {"6 x 50, every 3rd at 90%", "item*6{distance=50 selector:every{selector_number=3 at_percent=90}}"},
        {"6 x 50, every 22nd build", "item*6{distance=50 selector:every{selector_number=22 build}}"},
        // groups
        {"(100)", "item{group{item{distance=100} group_end}}"},
        {"3 x (200 crawl steady + 50 back easy) rest 1min",
         "item*3{group{item{distance=200 stroke:crawl effort:steady} item{distance=50 stroke:back "
         "effort:easy} group_end} rest=1min}"},
        {"3 x(100+50)", "item*3{group{item{distance=100} item{distance=50} group_end}}"},
        {"2 x (2 x (50 + 25 rest 5s) rest 10s + 100) on 5:00, odds easy",
         "item*2{group{item*2{group{item{distance=50} item{distance=25 rest=5s} group_end} rest=10s} "
         "item{distance=100} group_end} on=5:00 selector:odds{effort:easy}}"},
        {"2 x (\n  100 easy\n  50 + # joint\n\n  25\n) rest 1min",
         "item*2{group{item{distance=100 effort:easy} item{distance=50} item{distance=25} group_end} "
         "rest=1min}"},
        {"(\n100\n+\n50)", "item{group{item{distance=100} item{distance=50} group_end}}"},
        {"(((50)))",
         "item{group{item{group{item{group{item{distance=50} group_end}} group_end}} group_end}}"},
        {R"(use "fours")", R"(item{use name"fours"})"},
        {R"(3 x use "fours" with fins, last easy)",
         R"(item*3{use name"fours" with:fins selector:last{effort:easy}})"},
        // labels
        {"lane 1: 100", "item{lane_label=1-1 distance=100}"},
        {"lane 2-4: 100", "item{lane_label=2-4 distance=100}"},
        {"lane 2 - 4 : 100", "item{lane_label=2-4 distance=100}"},
        {"if time: 100", "item{if_time distance=100}"},
        {"lane 1: if time: 2 x (50 + 25)",
         "item*2{lane_label=1-1 if_time group{item{distance=50} item{distance=25} group_end}}"},
        {"if time: lane 3: 100", "item{if_time lane_label=3-3 distance=100}"},
        // other lines
        {R"("a note")", R"(note_line"a note")"},
        {"pause 2min", "pause=2min"},
        {R"(pause 0s "breathe")", R"(pause=0s note"breathe")"},
        {"100 # a comment", "item{distance=100}"},
    };
    for (auto const& [text, dump] : rows) {
        CAPTURE(text);
        CHECK(dump_of("session\nmain\n" + text) == "session{section:main{" + dump + "}}");
    }
}

TEST_CASE("statements become nodes", "[grammar]") {
    std::vector<Read> const rows{
        {"plan \"A\"\n", R"(plan name"A")"},
        {"race \"B\" sprint on 2027-06-13\n", R"(race{name"B" race_kind:sprint date=2027-06-13})"},
        {"race olympic on 2028-02-29\n", "race{race_kind:standard date=2028-02-29}"},
        {"race 750m on 2027-06-13\n", "race{race_distance=750m date=2027-06-13}"},
        {"swimmer \"C\"\n", R"(swimmer{name"C"})"},
        {"swimmer \"C\" lane 2 threshold about 1:50 per 100m distance 80%\n",
         R"(swimmer{name"C" swimmer_lane=2 threshold{about pace_time=1:50 pace_per=100m} swimmer_share=80})"},
        {"before longest 200m\n", "before{before_longest=200m}"},
        {"before longest 8 lengths week 2000m\n", "before{before_longest=8len before_week=2000m}"},
        {"set \"D\" = 4 x 50 crawl\n", R"(set{name"D" item*4{distance=50 stroke:crawl}})"},
        {"set \"D\" = (\n  50\n  25\n) easy\npool 25m\n",
         R"(set{name"D" item{group{item{distance=50} item{distance=25} group_end} effort:easy}} pool=25m)"},
        {"include \"E\"\n", R"(include name"E")"},
        {"pool 25\npool 25yd\npool 33 1/3 m\npool open water\n",
         "pool=25 pool=25yd pool=33+200/600m pool_open_water"},
        {"threshold 2:05\nthreshold 1:55 per 100m in 50m reserve 20m\nthreshold 2:00 in open water\n",
         "threshold{pace_time=2:05} threshold{pace_time=1:55 pace_per=100m pace_in=50m reserve=20m} "
         "threshold{pace_time=2:00 pace_open_water}"},
        {"rest 20s\nrest 20-40s\n", "default_rest=20s default_rest=20 rest_to=40s"},
        {"factor kick 140%\nfactor fins 85%\nfactor threshold 100%\n",
         "factor:kick=140 factor:fins=85 factor:threshold=100"},
        {"limit slot 5min\nlimit race-rep 90%\nlimit sessions 3\nlimit session-floor 1200m\nlimit rest-band "
         "20-40s\n",
         "limit{rule_name:slot limit_time=5min} limit{rule_name:race-rep limit_percent=90} "
         "limit{rule_name:sessions limit_number=3} limit{rule_name:session-floor limit_distance=1200m} "
         "limit{rule_name:rest-band limit_time=20 limit_time_to=40s}"},
        {"allow taper\nallow taper \"short\"\n",
         R"(allow{rule_name:taper} allow{rule_name:taper note"short"})"},
        {"\"a note for all\"\n", R"(note_line"a note for all")"},
        {"week 1\n", "week{week_number=1}"},
        {"week 12 from 2027-04-19 \"F\"\n  rest 30s\n  session\n  session Mon\nweek 13\n",
         R"(week{week_number=12 week_from=2027-04-19 name"F" default_rest=30s session{} session{day:Mon}} week{week_number=13})"},
        {"session\n", "session{}"},
        {"session Tuesday 7:05 for 90min \"G\"\n",
         R"(session{day:Tue time_of_day=07:05 slot=90min name"G"})"},
        {"session 2027-04-20 for 1h\n  pool 50m\n  \"mind the stairs\"\n  main\n    50\n  main\n",
         R"(session{date=2027-04-20 slot=1h pool=50m note_line"mind the stairs" section:main{item{distance=50}} section:main{}})"},
        {"session\n  warm up\n  warm-up \"H\" easy crawl with fins rest 20s\n  drill\n  main\n  cool down\n  "
         "swim down\n  warm down\n  cool-down\n",
         R"(session{section:warm-up{} section:warm-up{name"H" effort:easy stroke:crawl with:fins rest=20s} section:drill{} section:main{} section:cool-down{} section:cool-down{} section:cool-down{} section:cool-down{}})"},
        {"﻿plan \"A\"\r\npool 25m # c\r\n\r\n  # d\r\n", R"(plan name"A" pool=25m)"},
        {"# only a comment", ""},
    };
    for (auto const& [text, dump] : rows) {
        CAPTURE(text);
        CHECK(dump_of(text) == dump);
    }
}
