#include "grammar/write.hpp"

#include "grammar/parse.hpp"

#include <catch2/catch.hpp>

#include <string>
#include <utility>
#include <vector>

using namespace lengthwise;
using namespace lengthwise::grammar;

namespace {

/// What `write` makes of a text that must be well formed; the result must be so, too, and
/// come back byte for byte.
std::string tidied(std::string const& text) {
    Source const source{"written.swim", text};
    auto const parsed = parse(source);
    INFO("text:\n" << text);
    for (auto const& finding : parsed.findings.kept()) {
        FAIL_CHECK(source.locate(finding.span.begin).line << ": " << finding.message);
    }
    auto const once = write(parsed.tree);
    Source const again{"tidied.swim", once};
    auto const reparsed = parse(again);
    INFO("tidied:\n" << once);
    CHECK_FALSE(reparsed.findings.has_errors());
    CHECK(write(reparsed.tree) == once);
    return once;
}

/// A line as it stands in a section of a session, in a pool.
std::string tidied_line(std::string const& line, std::string const& pool = "25m") {
    std::string const before = "pool " + pool + "\n\nsession\n  main\n    ";
    auto const text = tidied(before + line + "\n");
    REQUIRE(text.starts_with(before));
    return text.substr(before.size(), text.size() - before.size() - 1);
}

using Row = std::pair<std::string, std::string>;

} // namespace

TEST_CASE("write: statements and settings in one spelling") {
    auto const [is, would_be] = GENERATE(values<Row>({
        {"PLAN \"A\"", "plan \"A\""},
        {"race   \"Otter Weir\"  olympic  on 2027-06-13", "race \"Otter Weir\" standard on 2027-06-13"},
        {"race 750 metres on 2027-06-13", "race 750m on 2027-06-13"},
        {"swimmer \"Ivo\" distance 80% lane 2 threshold about 2:10 per 100 yards in 25 yards reserve 18 m",
         "swimmer \"Ivo\" distance 80% lane 2 threshold about 2:10 per 100yd in 25yd reserve 18m"},
        {"before longest 8 lengths week 2000m\npool 25m", "before longest 8 lengths week 2000m\npool 25m"},
        {"include \"drills/fist.swim\"", "include \"drills/fist.swim\""},
        {"pool 33 2/6 m", "pool 33 1/3 m"},
        {"pool 25 yards", "pool 25yd"},
        {"Pool Open Water", "pool open water"},
        {"threshold 125s", "threshold 125s"},
        {"threshold :58 per 50 in open water", "threshold 0:58 per 50 in open water"},
        {"rest 20 - 40 secs", "rest 20-40s"},
        {"rest 30s-1 minute", "rest 30s-1min"},
        {"factor butterfly 140%", "factor fly 140%"},
        {"limit rest-band 15-45 sec", "limit rest-band 15-45s"},
        {"limit session-floor 1200 m\nlimit sessions 3\nlimit taper 55%\nlimit slot 90sec",
         "limit session-floor 1200m\nlimit sessions 3\nlimit taper 55%\nlimit slot 90s"},
        {"allow  home-wall   \"they walk back\"", "allow home-wall \"they walk back\""},
        {"\"a note for all\"", "\"a note for all\""},
    }));
    CHECK(tidied(is) == would_be + "\n");
}

TEST_CASE("write: a level for week, session, heading and line, settings one level in") {
    CHECK(tidied(R"(plan "A"
pool 25m
week 01 from 2027-04-19 "Begin"
rest 20s
"mind the clock"
session Tuesday 7:00 for 45 minutes "Longer"
pool 50m
WARM UP "loosen" backstroke moderate rest 10s
200 IM
"eyes down"
pause :30 "drink"
swim down
100
session 2027-04-22
main
100
)") == R"(plan "A"
pool 25m
week 1 from 2027-04-19 "Begin"
  rest 20s
  "mind the clock"
  session Tue 07:00 for 45min "Longer"
    pool 50m
    warm-up "loosen" back steady rest 10s
      200 medley
      "eyes down"
      pause 0:30 "drink"
    cool-down
      100
  session 2027-04-22
    main
      100
)");
}

TEST_CASE("write: a session without a week stands at the margin") {
    CHECK(tidied("session\nrest 10s\nmain\n100\n") == "session\n  rest 10s\n  main\n    100\n");
}

TEST_CASE("write: amounts") {
    auto const [is, would_be] = GENERATE(values<Row>({
        {"200 m", "200m"},
        {"12.50", "12.5"},
        {"12.0 m", "12m"},
        {"12.05m", "12.05m"},
        {"33 2/6 m", "33 1/3 m"},
        {"36 16/24yd", "36 2/3 yd"},
        {"0 1/2 m", "0 1/2 m"},
        {"1 length", "1 length"},
        {"02 lengths", "2 lengths"},
        {"100,  200 , 100 metres", "100, 200, 100m"},
        {"2, 4, 2 lengths", "2, 4, 2 lengths"},
        {"10 minutes", "10min"},
        {"90 seconds", "90s"},
        {"1 hour", "1h"},
        {":50", "0:50"},
        {"01:02:03", "1:02:03"},
        {"1:05.50", "1:05.5"},
        {"1min, 2min, 90s", "1min, 2min, 90s"},
        {"4x50", "4 x 50"},
        {"4 × 50", "4 x 50"},
        {"1 x 50", "1 x 50"},
        {"10x 1:30", "10 x 1:30"},
        {"3 X use  \"pyramid\"", "3 x use \"pyramid\""},
    }));
    CHECK(tidied_line(is) == would_be);
}

TEST_CASE("write: modifiers stay in their order, in one spelling") {
    auto const [is, would_be] = GENERATE(values<Row>({
        {"100 Front Crawl", "100 crawl"},
        {"100 freestyle max", "100 crawl sprint"},
        {"100 strong free", "100 hard crawl"},
        {"100 breaststroke kick", "100 breast kick"},
        {"100 drill \"a \\\"b\\\" \\\\\" crawl \"note\"", "100 drill \"a \\\"b\\\" \\\\\" crawl \"note\""},
        {"100 threshold plus 5 sec", "100 threshold plus 5s"},
        {"100 threshold minus :05", "100 threshold minus 0:05"},
        {"100 at 95%", "100 at 95%"},
        {"100 at 1:55 per 100 m", "100 at 1:55 per 100m"},
        {"50 hold :52", "50 hold 0:52"},
        {"50 rpe 7", "50 rpe 7"},
        {"4 x 50 build", "4 x 50 build"},
        {"4 x 50 descend", "4 x 50 descend"},
        {"4 x 50 descend 1 - 4", "4 x 50 descend 1-4"},
        {"400 negative  split", "400 negative split"},
        {"50 kick with kickboard,  fins", "50 kick with board, fins"},
        {"50 pull with pull buoy", "50 pull with buoy"},
        {"50 with nothing", "50 with nothing"},
        {"50 with stops with snorkel", "50 with stops with snorkel"},
        {"50 as 25 drill \"fist\" / 25 free build \"n\" rest 5s",
         "50 as 25 drill \"fist\" / 25 crawl build \"n\" rest 5s"},
        {"3min as 1 min kick / 30 sec tread", "3min as 1min kick / 30s tread"},
        {"750 broken at 250 for 15 seconds", "750 broken at 250 for 15s"},
        {"10min broken at 4 min for 1min", "10min broken at 4min for 1min"},
        {"100 rest :20", "100 rest 0:20"},
        {"100 rest 20 - 40 s", "100 rest 20-40s"},
        {"100 rest as needed", "100 rest as needed"},
        {"100 rest 1 breath", "100 rest 1 breaths"},
        {"100 off 2:15", "100 on 2:15"},
        {"3 x 100 on 2:15,  2:10, 2:05", "3 x 100 on 2:15, 2:10, 2:05"},
    }));
    CHECK(tidied_line(is) == would_be);
}

TEST_CASE("write: selectors behind commas") {
    auto const [is, would_be] = GENERATE(values<Row>({
        {"4 x 50 odds easy evens fast", "4 x 50, odds easy, evens hard"},
        {"4 x 50 on 1:00, odds easy", "4 x 50 on 1:00, odds easy"},
        {"6 x 50 every 3th build", "6 x 50, every 3rd build"},
        {"30 x 50 every 1th hard", "30 x 50, every 1st hard"},
        {"30 x 50 every 22th hard", "30 x 50, every 22nd hard"},
        {"30 x 50, every 11st easy \"n\" with fins, board",
         "30 x 50, every 11th easy \"n\" with fins, board"},
        {"30 x 50 every 13rd hard", "30 x 50, every 13th hard"},
        {"6 x 50 first easy, next 2 steady, last 2 sprint",
         "6 x 50, first easy, next 2 steady, last 2 sprint"},
        {"100, 200 with stops, last with nothing", "100, 200 with stops, last with nothing"},
    }));
    CHECK(tidied_line(is) == would_be);
}

TEST_CASE("write: labels") {
    auto const [is, would_be] = GENERATE(values<Row>({
        {"lane 1: 100", "lane 1: 100"},
        {"lane 2 :  100", "lane 2: 100"},
        {"lane 1 - 3: 100", "lane 1-3: 100"},
        {"lane 2-2: 100", "lane 2: 100"},
        {"If Time: lane 2: 4x25", "if time: lane 2: 4 x 25"},
        {"lane 2: if time: 4x25", "lane 2: if time: 4 x 25"},
    }));
    CHECK(tidied_line(is) == would_be);
}

TEST_CASE("write: groups on one line keep their parentheses") {
    auto const [is, would_be] = GENERATE(values<Row>({
        {"3x(200 free steady+50 back easy) rest 1min", "3 x (200 crawl steady + 50 back easy) rest 1min"},
        {"( 200 )", "(200)"},
        {"((200 + (100)) easy)", "((200 + (100)) easy)"},
        {"2 x (3 x (100 + 50) rest 5s + use \"a\"), last easy",
         "2 x (3 x (100 + 50) rest 5s + use \"a\"), last easy"},
    }));
    CHECK(tidied_line(is) == would_be);
}

TEST_CASE("write: groups over several lines have an item a line") {
    CHECK(tidied("session\nmain\n2x(\n100 + 50 easy +\n3 x (25\n50) rest 5s) rest 1min\n") == R"(session
  main
    2 x (
      100
      50 easy
      3 x (
        25
        50
      ) rest 5s
    ) rest 1min
)");
    CHECK(tidied("set \"a\" = 2 x (100\n\n50 +\n\n25)\n") == "set \"a\" = 2 x (\n  100\n\n  50\n\n  25\n)\n");
}

TEST_CASE("write: what counts lengths of a pool that is no whole number") {
    auto const [is, would_be] = GENERATE(values<Row>({
        {"33", "1 length"},
        {"66 crawl", "2 lengths crawl"},
        {"4 x 67", "4 x 2 lengths"},
        {"100", "100"},
        {"34", "34"},
        {"67m", "67m"},
        {"66, 133, 67", "2, 4, 2 lengths"},
        {"66, 100", "2, 3 lengths"},
        {"66, 50", "66, 50"},
        {"100, 200", "100, 200"},
        {"66, 67m", "66, 67m"},
        {"67 as 33 kick / 33 drill", "2 lengths as 1 length kick / 1 length drill"},
        {"200 broken at 67 for 5s", "200 broken at 2 lengths for 5s"},
        {"100 at 0:40 per 33", "100 at 0:40 per 1 length"},
        {"3 x (67 + 100)", "3 x (2 lengths + 100)"},
        {"33 1/3", "33 1/3"},
    }));
    CHECK(tidied_line(is, "33 1/3 m") == would_be);
    CHECK(tidied_line("37", "36 2/3 yd") == "1 length");
    CHECK(tidied_line("37", "36 2/3 m") == "1 length");
    CHECK(tidied_line("1", "1.25m") == "1 length");
    CHECK(tidied_line("3", "1.25m") == "2 lengths"); // 2.5 rounds half up, 3.75 is cut
}

TEST_CASE("write: lengths of the pool in force, wherever it is set") {
    CHECK(tidied(R"(before longest 67
threshold 0:40 per 33
set "a" = 67
pool 33 1/3 m
session
pool 25m
threshold 0:40 per 33
main
67
session
pool open water
main
67
week 1
pool 50m
session
main
67
session
pool 33 1/3 m
main
67
week 2
session
main
67
)") == R"(before longest 2 lengths
threshold 0:40 per 1 length
set "a" = 67
pool 33 1/3 m
session
  pool 25m
  threshold 0:40 per 33
  main
    67
session
  pool open water
  main
    67
week 1
  pool 50m
  session
    main
      67
  session
    pool 33 1/3 m
    main
      2 lengths
week 2
  session
    main
      2 lengths
)");
}

TEST_CASE("write_line: one item, pause or note on a line") {
    Source const source{
        "lines.swim",
        "session\nmain\nlane 2: 3x( # c\n200 free\n50) rest 1min # d\n\"n\"\npause :30 \"m\"\n"};
    auto const tree = parse(source).tree;
    std::vector<std::string> lines;
    auto const session = std::uint32_t{0};
    auto const section = session + 1;
    for (auto i = section + 1; i < tree.size(); i = tree.next(i)) {
        if (tree.nodes[i].kind != Kind::note) {
            lines.push_back(write_line(tree, i));
        }
    }
    CHECK(lines ==
          std::vector<std::string>{"lane 2: 3 x (200 crawl + 50) rest 1min", "\"n\"", "pause 0:30 \"m\""});
}
