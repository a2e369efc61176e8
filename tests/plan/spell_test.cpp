#include "plan/spell.hpp"

#include "grammar/write.hpp"
#include "support/read_plan.hpp"
#include "support/sets_of_sets.hpp"

#include <catch2/catch.hpp>

#include <string>
#include <utility>

using namespace lengthwise;

namespace {

std::string spelled(std::string const& text) {
    auto const read = support::read_plan(text);
    INFO(text);
    REQUIRE(read.error() == "");
    return grammar::write(plan::spell(read.plan()));
}

plan::Item const& first_item(plan::Plan const& plan) {
    return plan.items[plan.sections.front().body];
}

/// The first line of a section in a pool; `head` may define sets.
std::string spelled_line(std::string const& line, std::string const& pool = "25m", plan::LineStyle style = {},
                         std::string const& head = {}) {
    auto const read = support::read_plan(head + "session\npool " + pool + "\nmain\n" + line + "\n");
    INFO(line);
    REQUIRE(read.error() == "");
    auto const& plan = read.plan();
    return plan::spell_line(plan, plan.sessions.front(), first_item(plan), style);
}

using Row = std::pair<std::string, std::string>;

} // namespace

TEST_CASE("spell: everything but comments, in the tidy order, each session apart") {
    std::string const text = R"(plan "Otters \"A\""
race "Weir" sprint on 2027-06-13
swimmer "Ivo" threshold about 2:10 per 100yd in 25yd reserve 18m lane 2 distance 80%
before longest 200m week 2000m
pool 25m
threshold 2:05 per 100m
rest 20-40s
factor kick 160%
limit rest-band 15-45s
limit sessions 3
limit session-floor 1200m
limit taper 55%
limit slot 1:30
allow home-wall "they walk back"
"mind the clock"
set "a" = 2 x (50 crawl + 2 lengths back) rest 5s

week 1 from 2027-04-19 "Begin"
  rest 15s
  session Tue 07:00 for 45min "Longer"
    pool 33 1/3 m
    warm-up "loosen" back steady with board rest 10s
      use "a"
      "eyes down"
      pause 30s "drink"

  session 2027-04-22
    main
      lane 1-2: if time: 100, 200, 100 crawl rest 30s
)";
    CHECK(spelled(text) == text);
}

TEST_CASE("spell: sessions without a week, and nothing at all") {
    CHECK(spelled("session\nmain\n100\nsession\n") == "session\n  main\n    100\n\nsession\n");
    CHECK(spelled("") == "");
    CHECK(spelled("set \"unused\" = 50\n") == "");
}

TEST_CASE("spell: an included set stands in the file itself") {
    auto const read = support::read_plan("include \"a.swim\"\nsession\nmain\nuse \"a\"\n",
                                         {{"/a.swim", "set \"a\" = use \"b\" easy\nset \"b\" = 50m\n"}});
    REQUIRE(read.error() == "");
    CHECK(grammar::write(plan::spell(read.plan())) ==
          "set \"a\" = use \"b\" easy\nset \"b\" = 50m\n\nsession\n  main\n    use \"a\"\n");
}

TEST_CASE("spell: a set's numbers are right wherever it is used") {
    auto const [set, would_be] = GENERATE(values<Row>({
        {"67", "67"},
        {"66, 50", "66, 50"},
        {"2 lengths", "2 lengths"},
        {"100m", "100m"},
        {"100 at 1:50 per 100", "100 at 1:50 per 100"},
        {"100 at 1:50 per 100m", "100 at 1:50 per 100m"},
        {"33 1/2", "33 1/2"},
        {"4 lengths broken at 2 lengths for 5s", "4 lengths broken at 2 lengths for 5s"},
        {"50 as 25 kick / 25 drill", "50 as 25 kick / 25 drill"},
    }));
    std::string text = "set \"a\" = " + set + "\n";
    for (auto const* pool : {"25m", "33 1/3 m", "25yd", "66 2/3 m"}) {
        text += std::string{"\nsession\n  pool "} + pool + "\n  main\n    use \"a\"\n";
    }
    CHECK(spelled(text).substr(0, 10 + would_be.size() + 1) == "set \"a\" = " + would_be + "\n");
    auto const read = support::read_plan(text);
    auto const again = support::read_plan(spelled(text));
    CHECK(plan::same_meaning(read.plan(), again.plan()));
}

TEST_CASE("spell_line: amounts as they were written, where that is exact") {
    auto const [is, would_be] = GENERATE(values<Row>({
        {"200", "200"},
        {"1 x 200", "200"},
        {"200m", "200m"},
        {"220yd", "220yd"},
        {"8 lengths", "8 lengths"},
        {"12.5", "12.5"},
        {"12 1/2 m", "12.5m"},
        {"33 1/3 m", "33 1/3 m"},
        {"10min", "10min"},
        {"90s", "1:30"},
        {"1:30", "1:30"},
        {"1:00:05", "1:00:05"},
        {"120min", "2h"},
        {"100, 200, 100", "100, 200, 100"},
        {"100, 200, 100m", "100, 200, 100m"},
        {"100m, 200m", "100, 200m"},
        {"100m, 4 lengths", "4, 4 lengths"},
        {"2, 4 lengths", "2, 4 lengths"},
        {"1min, 90s", "1min, 1:30"},
    }));
    CHECK(spelled_line(is) == would_be);
}

TEST_CASE("spell_line: lengths where a bare number would not be exact") {
    auto const [is, would_be] = GENERATE(values<Row>({
        {"67", "2 lengths"},
        {"100", "100"},
        {"50", "50"},
        {"33m", "33m"},
        {"66 2/3 m", "66 2/3 m"},
        {"66, 133", "2, 4 lengths"},
        {"66, 50", "66, 50"},
        {"67 as 33 kick / 33 drill", "2 lengths as 1 length kick / 1 length drill"},
        {"200 broken at 67 for 90s", "200 broken at 2 lengths for 90s"},
        {"100 at 0:40 per 33", "100 at 0:40 per 1 length"},
    }));
    CHECK(spelled_line(is, "33 1/3 m") == would_be);
    CHECK(spelled_line("12 1/2", "25yd") == "12 1/2");
    CHECK(spelled_line("100 at 1:40 per 100m", "25yd") == "100 at 1:40 per 100m");
}

TEST_CASE("spell_line: modifiers in one order") {
    auto const [is, would_be] = GENERATE(values<Row>({
        {"100 easy crawl kick", "100 crawl kick easy"},
        {"100 crawl threshold plus 5s", "100 crawl threshold plus 5s"},
        {"100 crawl threshold minus 0:05", "100 crawl threshold minus 5s"},
        {"100 at 95%", "100 at 95%"},
        {"100 at 1:50 per 100m", "100 at 1:50 per 100"},
        {"50 hold 52s", "50 hold 0:52"},
        {"50 rpe 7", "50 rpe 7"},
        {"100 \"a\" rest 20s \"b\" crawl", "100 crawl rest 20s \"a\" \"b\""},
        {"50 with fins, snorkel with stops", "50 with fins, snorkel with stops"},
        {"50 with snorkel, fins", "50 with fins, snorkel"},
        {"50 with nothing", "50 with nothing"},
        {"4 x 50 descend 1-4", "4 x 50 descend 1-4"},
        {"4 x 50 descend", "4 x 50 descend"},
        {"50 build", "50 build"},
        {"50 negative split", "50 negative split"},
        {"50 drill \"fist\" \"note\"", "50 drill \"fist\" \"note\""},
        {"50 \"note\" drill", "50 \"note\" drill"},
        {"50 drill crawl \"note\"", "50 \"note\" crawl drill"},
        {"100 as 25 \"n\" drill / 25 crawl \"m\" with fins \"o\"",
         "100 \"o\" as 25 \"n\" drill / 25 crawl \"m\" with fins"},
        {"2min as 1min kick / 1min build rest 5s", "2min as 1min kick / 1min build rest 5s"},
        {"10min broken at 4min for 1min", "10min broken at 4min for 1min"},
        {"100 rest 20-40s", "100 rest 20-40s"},
        {"100 rest 30s-1min", "100 rest 30s-1min"},
        {"100 rest 1-2min", "100 rest 1-2min"},
        {"100 rest 90s-2min", "100 rest 1:30-2min"},
        {"100 rest 60-90s", "100 rest 1min-1:30"},
        {"100 rest 0s", "100 rest 0s"},
        {"100 rest as needed", "100 rest as needed"},
        {"100 rest 3 breaths", "100 rest 3 breaths"},
        {"3 x 50 on 60s, 59s, 0:58.5", "3 x 50 on 1:00, 0:59, 0:58.5"},
    }));
    CHECK(spelled_line(is) == would_be);
}

TEST_CASE("spell_line: selectors say what they said") {
    auto const [is, would_be] = GENERATE(values<Row>({
        {"4 x 50, odds easy, evens hard with fins", "4 x 50, odds easy, evens hard with fins"},
        {"6 x 50 crawl, every 3rd build", "6 x 50 crawl, every 3rd build"},
        {"6 x 50 build, first 2 easy, next build, last \"n\" drill",
         "6 x 50 build, first 2 easy, next build, last \"n\" drill"},
        {"4 x 50 with stops, odds with stops, evens with nothing",
         "4 x 50 with stops, odds with stops, evens with nothing"},
        {"2 x (50 + 25), last easy", "2 x (50 + 25), last easy"},
    }));
    CHECK(spelled_line(is) == would_be);
}

TEST_CASE("spell_line: labels, pauses and notes") {
    CHECK(spelled_line("if time: lane 1-2: 4 x 25") == "lane 1-2: if time: 4 x 25");
    CHECK(spelled_line("lane 2: 4 x 25", "25m", {.labels = false}) == "4 x 25");
    CHECK(spelled_line("pause 90s \"drink\"") == "pause 1:30 \"drink\"");
    CHECK(spelled_line("\"a \\\"b\\\" \\\\\"") == "\"a \\\"b\\\" \\\\\"");
}

TEST_CASE("spell_line: what a set holds instead of its name") {
    std::string const sets = "set \"one\" = 4 x 50 crawl\n"
                             "set \"group\" = (50 + 25) easy\n"
                             "set \"bare group\" = (50 + 25)\n"
                             "set \"outer\" = 2 x (use \"one\" + use \"bare group\")\n"
                             "set \"other name\" = use \"one\"\n";
    auto const [is, would_be] = GENERATE(values<Row>({
        {"use \"one\"", "4 x 50 crawl"},
        {"lane 2: use \"one\"", "lane 2: 4 x 50 crawl"},
        {"use \"other name\"", "4 x 50 crawl"},
        {"use \"one\" easy", "(4 x 50 crawl) easy"},
        {"3 x use \"one\" rest 1min", "3 x (4 x 50 crawl) rest 1min"},
        {"3 x use \"other name\"", "3 x (4 x 50 crawl)"},
        {"use \"one\", odds easy", "(4 x 50 crawl), odds easy"},
        {"2 x use \"group\"", "2 x ((50 + 25) easy)"},
        {"2 x use \"bare group\"", "2 x (50 + 25)"},
        {"use \"bare group\" easy", "(50 + 25) easy"},
        {"use \"outer\"", "2 x (4 x 50 crawl + (50 + 25))"},
        {"(use \"one\" + 25)", "(4 x 50 crawl + 25)"},
    }));
    CHECK(spelled_line(is, "25m", {.expand_sets = true}, sets) == would_be);
}

TEST_CASE(
    "spell_line: without expansion a set keeps its name, and what it holds reads as in the session's pool") {
    CHECK(spelled_line("2 x use \"a\" easy", "25m", {}, "set \"a\" = 67\n") == "2 x use \"a\" easy");
    CHECK(spelled_line("use \"a\"", "33 1/3 m", {.expand_sets = true}, "set \"a\" = 67\n") == "2 lengths");
}

TEST_CASE("spell_line: sets of sets do not make a line without end") {
    auto const line = spelled_line("use \"14\"", "25m", {.expand_sets = true}, support::sets_of_sets(14));
    CHECK(line.size() < 64 * 1024);
    CHECK(line.find("use \"") != std::string::npos);
    CHECK(line.find("0:00.001 + 0:00.001") != std::string::npos);
}

TEST_CASE("spell_defaults: behind a heading") {
    auto const defaults = [](std::string const& heading) {
        auto const read = support::read_plan("session\npool 25yd\n" + heading + "\n100\n");
        REQUIRE(read.error() == "");
        auto const& plan = read.plan();
        return plan::spell_defaults(plan.heading_of(plan.sections.front()));
    };
    CHECK(defaults("main") == "");
    CHECK(defaults("main \"name\"") == "");
    CHECK(defaults("drill rest 20s easy with fins back") == "back easy with fins rest 20s");
    CHECK(defaults("main at 1:40 per 100") == "at 1:40 per 100yd");
    CHECK(defaults("main at 1:40 per 100m") == "at 1:40 per 100m");
}

TEST_CASE("spell: a distance that no number of metres says stays in lengths") {
    CHECK(spelled("pool 25m\nbefore longest 4250109 lengths\n") ==
          "before longest 4250109 lengths\npool 25m\n");
}
