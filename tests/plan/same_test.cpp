#include "plan/plan.hpp"

#include "support/read_plan.hpp"
#include "support/sets_of_sets.hpp"

#include <catch2/catch.hpp>

#include <string>
#include <utility>

using namespace lengthwise;

namespace {

bool same(std::string const& a, std::string const& b) {
    auto const x = support::read_plan(a);
    auto const y = support::read_plan(b);
    INFO(a << "\n---\n" << b);
    REQUIRE(x.error() == "");
    REQUIRE(y.error() == "");
    CHECK(plan::same_meaning(x.plan(), x.plan()));
    auto const result = plan::same_meaning(x.plan(), y.plan());
    CHECK(plan::same_meaning(y.plan(), x.plan()) == result);
    return result;
}

std::string with_line(std::string const& line) {
    return "pool 25m\nset \"a\" = 50\nset \"b\" = 50\nset \"c\" = (50 + 25 easy)\nsession\nmain\n" + line +
           "\n";
}

using Row = std::pair<std::string, std::string>;

} // namespace

TEST_CASE("same_meaning: however it is written") {
    auto const [a, b] = GENERATE(values<Row>({
        {"100", "100m"},
        {"100", "4 lengths"},
        {"1 x 100", "100"},
        {"100 crawl easy", "100   easy crawl # c"},
        {"100 rest 60s", "100 rest 1min"},
        {"100, 200", "100m, 200m"},
        {"lane 1: if time: 50", "if time: lane 1: 50"},
        {"50 as 25 kick / 25 pull", "50 as 1 length kick / 1 length pull"},
        {"2 x (50 + 25)", "2 x (\n50\n25\n)"},
        {"100 broken at 50 for 60s", "100 broken at 2 lengths for 1min"},
    }));
    CHECK(same(with_line(a), with_line(b)));
    CHECK(same("session\nmain\n100\n  drill\n50\n", "session\n  main\n    100\n  drill\n    50\n"));
    CHECK(same("plan \"A\"\nrace sprint on 2027-06-13\nrest 5s\n",
               "plan \"A\"\nrest 5s\nrace sprint on 2027-06-13\n"));
    CHECK(
        same("set \"x\" = 50\nset \"y\" = 25\nsession\nmain\nuse \"y\"\nuse \"x\"\n",
             "set \"y\" = 25\nset \"x\" = 50\nset \"unused\" = 100\nsession\nmain\nuse \"y\"\nuse \"x\"\n"));
}

TEST_CASE("same_meaning: every part of a line counts") {
    auto const [a, b] = GENERATE(values<Row>({
        {"100", "125"},
        {"2 x 100", "3 x 100"},
        {"100", "100s"},
        {"100s", "101s"},
        {"100, 200", "100, 225"},
        {"100, 200", "100, 200, 25"},
        {"1min, 2min", "1min, 3min"},
        {"100, 100", "2 x 100"},
        {"(100)", "100"},
        {"use \"a\"", "use \"b\""},
        {"use \"a\"", "(50)"},
        {"use \"c\"", "use \"c\" easy"},
        {"2 x (100 + 50)", "2 x (100 + 25)"},
        {"2 x (100 + 50)", "2 x (100 + 50 + 50)"},
        {"100", "100\n100"},
        {"lane 1: 100", "lane 2: 100"},
        {"lane 1: 100", "lane 1-2: 100"},
        {"lane 1: 100", "100"},
        {"if time: 100", "100"},
        {"100 crawl", "100 back"},
        {"100 crawl", "100"},
        {"100 kick", "100 pull"},
        {"100 drill \"a\"", "100 drill \"b\""},
        {"100 easy", "100 hard"},
        {"100 threshold", "100 threshold plus 1s"},
        {"100 at 90%", "100 at 91%"},
        {"100 at 1:50 per 100", "100 at 1:50 per 50"},
        {"100 hold 1:40", "100 hold 1:41"},
        {"100 rpe 3", "100 rpe 4"},
        {"100 with fins", "100 with fins, board"},
        {"100 with nothing", "100"},
        {"100 with stops", "100"},
        {"100 build", "100 negative split"},
        {"4 x 100 descend", "4 x 100 descend 1-2"},
        {"4 x 100 descend 1-4", "4 x 100 descend 1-2"},
        {"100 broken at 50 for 5s", "100 broken at 25 for 5s"},
        {"100 broken at 50 for 5s", "100 broken at 50 for 6s"},
        {"100 as 50 kick / 50 pull", "100 as 25 kick / 75 pull"},
        {"100 as 50 kick / 50 pull", "100 as 50 kick / 50 pull build"},
        {"100 as 50 kick / 50 pull", "100 as 50 kick / 50 pull \"n\""},
        {"100 as 50 kick / 50 kick", "100 as 50 kick"},
        {"100 rest 5s", "100 rest 5-6s"},
        {"100 rest 5s", "100 on 5s"},
        {"100 rest as needed", "100 rest 3 breaths"},
        {"100 rest 4 breaths", "100 rest 3 breaths"},
        {"2 x 100 on 2:00, 1:55", "2 x 100 on 2:00, 1:50"},
        {"2 x 100 on 2:00, 2:00", "2 x 100 on 2:00"},
        {"100 \"a\"", "100 \"b\""},
        {"100 \"a\"", "100 \"a\" \"a\""},
        {"4 x 50, odds easy", "4 x 50, evens easy"},
        {"4 x 50, first 2 easy", "4 x 50, first 3 easy"},
        {"4 x 50, odds easy", "4 x 50, odds hard"},
        {"4 x 50, odds \"a\"", "4 x 50, odds \"b\""},
        {"4 x 50, odds easy", "4 x 50, odds easy, evens easy"},
        {"2 x (50 + 25), last easy", "2 x (50 + 25), last hard"},
        {"pause 5s", "pause 6s"},
        {"pause 5s \"a\"", "pause 5s"},
        {"\"a\"", "\"b\""},
        {"100", "\"100\""},
    }));
    CHECK_FALSE(same(with_line(a), with_line(b)));
}

TEST_CASE("same_meaning: so does all around the lines") {
    auto const [a, b] = GENERATE(values<Row>({
        {"plan \"A\"", "plan \"B\""},
        {"race \"A\" sprint on 2027-06-13", "race \"B\" sprint on 2027-06-13"},
        {"race sprint on 2027-06-13", "race 750m on 2027-06-13"},
        {"race 700m on 2027-06-13", "race 750m on 2027-06-13"},
        {"race sprint on 2027-06-13", "race sprint on 2027-06-14"},
        {"race sprint on 2027-06-13", ""},
        {"before longest 200m", "before longest 225m"},
        {"before longest 200m", "before longest 200m week 1000m"},
        {"swimmer \"A\"", "swimmer \"B\""},
        {"swimmer \"A\" lane 1", "swimmer \"A\" lane 2"},
        {"swimmer \"A\" distance 80%", "swimmer \"A\" distance 90%"},
        {"swimmer \"A\" threshold 2:00", "swimmer \"A\" threshold 2:01"},
        {"pool 25m", "pool 50m"},
        {"pool 25m", "pool open water"},
        {"pool 25m", ""},
        {"threshold 2:00", "threshold 2:01"},
        {"threshold 2:00", "threshold about 2:00"},
        {"threshold 2:00", "threshold 2:00 per 50"},
        {"threshold 2:00", "threshold 2:00 in 50m"},
        {"threshold 2:00", "threshold 2:00 reserve 18m"},
        {"rest 5s", "rest 6s"},
        {"factor kick 150%", "factor kick 151%"},
        {"factor kick 150%", "factor pull 150%"},
        {"limit sessions 2", "limit sessions 3"},
        {"limit rest-band 15-45s", "limit rest-band 15-46s"},
        {"allow shape", "allow medley"},
        {"allow shape \"a\"", "allow shape \"b\""},
        {"\"a\"", "\"b\""},
        {"session", ""},
        {"session Mon", "session Tue"},
        {"session 2027-04-19", "session 2027-04-20"},
        {"session 07:00", "session 07:01"},
        {"session for 45min", "session for 46min"},
        {"session \"a\"", "session \"b\""},
        {"session\nrest 5s", "session\nrest 6s"},
        {"session\npool 25m", "session\npool 50m"},
        {"session\nmain", "session\ndrill"},
        {"session\nmain", "session"},
        {"session\nmain \"a\"", "session\nmain \"b\""},
        {"session\nmain easy", "session\nmain hard"},
        {"session\nmain rest 5s", "session\nmain rest 6s"},
        {"week 1", "week 2"},
        {"week 1 from 2027-04-19", "week 1 from 2027-04-20"},
        {"week 1 from 2027-04-19\nweek 2", "week 1 from 2027-04-19\nweek 2 from 2027-04-26"},
        {"week 1 \"a\"", "week 1 \"b\""},
        {"week 1\nrest 5s", "week 1\nrest 6s"},
        {"week 1\nsession", "week 1\nsession\nsession"},
        {"session\nsession", "session\nweek 1\nsession"},
    }));
    CHECK_FALSE(same(a + "\n", b + "\n"));
}

TEST_CASE("same_meaning: what is shared is compared once") {
    auto const text = support::sets_of_sets(14) + "session\nmain\nuse \"14\"\n";
    auto const read = support::read_plan(text);
    REQUIRE(read.error() == "");
    CHECK(plan::same_meaning(read.plan(), support::read_plan(text).plan())); // one by one: for minutes
}
