#include "report/deck_text.hpp"
#include "report/deck_view.hpp"
#include "report/width.hpp"

#include "support/read_plan.hpp"
#include "tailor/pool.hpp"

#include <catch2/catch.hpp>

#include <optional>
#include <string>

using namespace lengthwise;
using support::read_plan;

namespace {

struct How {
    plan::Index session = 0;
    std::optional<int> lane{};
    std::optional<Pool> pool{};
    std::uint32_t percent = 100;
    std::size_t width = 80;
    bool ascii = false;
    bool colour = false;
};

std::string deck(std::string const& text, How const& how = {}) {
    auto const read = read_plan(text);
    REQUIRE(read.error() == "");
    report::DeckOptions const options{how.session, how.lane, how.ascii};
    report::DeckStyle const style{how.width, how.ascii};
    report::Paint const paint{how.colour};
    if (!how.pool && how.percent == 100) {
        return report::deck_text(report::deck_view(read.plan(), options), style, paint);
    }
    auto const tailored = tailor::fit(read.plan(), how.session, {how.pool, how.percent});
    return report::deck_text(report::deck_view(read.plan(), options, tailored), style, paint);
}

/// The first line that begins with `begin`, without it.
std::string line_from(std::string const& text, std::string const& begin) {
    auto const at = text.find("\n" + begin);
    REQUIRE(at != std::string::npos);
    auto const from = at + 1 + begin.size();
    return text.substr(from, text.find('\n', from) - from);
}

Pool const yd25 = Pool::of(Distance::yards(25), Unit::yard);
Pool const m50 = Pool::of(Distance::metres(50), Unit::metre);

std::string const regatta = R"(race "Lantern Lake" sprint on 2027-06-13
before longest 400m
pool 25m
rest 20-40s
week 1 from 2027-05-03
  "Short week"
  session Tue 07:00 for 45min "Halfway"
    main
      600 crawl
  session Thu 07:00 for 45min "The distance"
    "Bring a drink"
    warm-up easy rest 20s
      200 choice
      4 x 25 kick with board
    drill "Body line"
      "Look at the floor"
      4 x 50 as 25 drill "fist" / 25 crawl
    main
      750 crawl steady
      pause 1min "drink"
      4 x 25 crawl hard rest 30s
      if time: 4 x 25 crawl sprint on 0:50
    cool-down easy
      100 choice
)";

std::string const two_lanes = R"(pool 25m
session "Two lanes"
  warm-up
    200 choice with fins
  main
    lane 1: 6 x 100 crawl on 2:30, odds steady, evens hard
    "one behind the other"
    lane 2: 5 x 100 crawl on 2:45
    2 x 50 crawl pull with buoy
    lane 2: if time: 50 crawl
  cool-down
    2min tread
)";

} // namespace

TEST_CASE("a deck shows the session as on a whiteboard", "[deck]") {
    CHECK(deck(regatta, {1}) == R"(The distance · Thu 6 May 2027, 07:00, 45 min · pool 25 m
longest today 750 · before 600 · race 750 m · kit: board
Short week
Bring a drink

      lengths
    rep  line      m

warm-up easy rest 20s
1     8     8    200   200 choice
2     1     4    300   4 x 25 kick with board

drill "Body line"
                       "Look at the floor"
3     2     8    500   4 x 50 as 25 drill "fist" / 25 crawl

main
4    30    30   1250   750 crawl steady
                       pause 1min "drink"
5     1     4   1350   4 x 25 crawl hard rest 30s
      1    +4          if time: 4 x 25 crawl sprint on 0:50
                         hand 00 50 40 30

cool-down easy
6     4     4   1450   100 choice

           58   1450   end
           +4   +100   if time

rest 20–40 s where a line has none
no threshold, so no clock
fits 45 min at a threshold of 2:01 per 100 m or faster
hand: the pace clock at each start, the set begun at 00
)");
}

TEST_CASE("lanes share rows until they part; empty is not swum", "[deck]") {
    CHECK(deck(two_lanes) == R"(Two lanes · pool 25 m
longest today 100 m · kit: fins, buoy

       lengths   lane 1   lane 2
     rep  line        m        m

warm-up
1      8     8      200      200   200 choice with fins

main
2      4    24      800            6 x 100 crawl on 2:30, odds steady,
                                     evens hard
                                     hand 00 30
                                   "one behind the other"
3      4    20               700   5 x 100 crawl on 2:45
                                     hand 00 45 30 15
4      2     4      900      800   2 x 50 crawl pull with buoy
       2    +2                     lane 2: if time: 50 crawl

cool-down
5   2min  2min      900      800   2min tread

                    900      800   end
                     36       32   lengths
                   2min     2min   timed, not in the metres
                             +50   if time

no threshold, so no clock
hand: the pace clock at each start, the set begun at 00
)");
}

TEST_CASE("one lane alone keeps the numbers of the whole session", "[deck]") {
    CHECK(deck(two_lanes, {0, 2}) == R"(Two lanes · pool 25 m
lane 2 · longest today 100 m · kit: fins, buoy

       lengths
     rep  line      m

warm-up
1      8     8    200   200 choice with fins

main
                        "one behind the other"
3      4    20    700   5 x 100 crawl on 2:45
                          hand 00 45 30 15
4      2     4    800   2 x 50 crawl pull with buoy
       2    +2          if time: 50 crawl

cool-down
5   2min  2min    800   2min tread

            32    800   end
                 2min   timed, not in the metres
            +2    +50   if time

no threshold, so no clock
hand: the pace clock at each start, the set begun at 00
)");
}

TEST_CASE("below 80 columns one lane follows the other", "[deck]") {
    auto const text = deck(two_lanes, {.width = 60});
    CHECK(text.find("\nlane 1\n\n") < text.find("\nlane 2\n\n"));
    CHECK(text.find("lane 1   lane 2") == std::string::npos);
    CHECK(text.find("5 x 100") > text.find("\nlane 2\n\n"));
    CHECK(text.find("6 x 100", text.find("\nlane 2\n\n")) == std::string::npos);
}

TEST_CASE("lanes that differ each say their longest rep", "[deck]") {
    auto const text = deck("race 400m on 2027-06-13\nbefore longest 200m\npool 25m\nsession\n  main\n"
                           "    lane 1: 300 crawl\n    lane 2: 250 crawl\n");
    CHECK(line_from(text, "longest today ") ==
          "300 in lane 1, 250 in lane 2 · before 200 · race 400 m · kit: none");
}

TEST_CASE("lanes that swim alike share a column", "[deck]") {
    auto const text = deck("race 400m on 2027-06-13\npool 25m\nsession\n  main\n    lane 1-3: 300 crawl\n"
                           "    lane 4: 250 crawl\n    lane 5-6: 200 crawl\n    100 kick\n");
    CHECK(line_from(text, "longest today ") ==
          "300 in lanes 1–3, 250 in lane 4, 200 in lanes 5, 6 · race 400 m ·");
    CHECK(line_from(text, "      lengths") == "   lanes 1–3   lane 4   lanes 5, 6");
    CHECK(line_from(text, "4     4 ") == "    4         400      350          300   100 kick");
    auto const alike = deck("pool 25m\nsession\n  main\n    lane 1-2: 300 crawl\n    100 kick\n");
    CHECK(line_from(alike, "1    12") == "    12   300   300 crawl");
}

TEST_CASE("a rep that does not qualify is no longest rep, and there may be none", "[deck]") {
    CHECK(line_from(deck("pool 25m\nsession\n  main\n    200 pull with buoy\n    100 kick\n"),
                    "longest today ") == "- · kit: buoy");
}

TEST_CASE("the kit is what is in force on some rep or part", "[deck]") {
    auto const kit = [](std::string const& lines) {
        auto const text =
            deck("pool 25m\nset \"A\" = 100 kick with board\nsession\n  main with fins\n" + lines);
        return text.substr(text.find("kit: ") + 5,
                           text.find('\n', text.find("kit: ")) - text.find("kit: ") - 5);
    };
    CHECK(kit("    100 crawl\n") == "fins");
    CHECK(kit("    100 crawl with nothing\n") == "none");
    CHECK(kit("    2 x 100 with nothing, last with paddles, snorkel\n") == "paddles, snorkel");
    CHECK(kit("    2 x 100, odds with buoy, evens with band\n") == "buoy, band");
    CHECK(kit("    use \"A\"\n") == "board");
    CHECK(kit("    (100 with wetsuit + 50 with nothing)\n") == "wetsuit");
    CHECK(kit("    2 x (100 + 50 with nothing), first with buoy, last with board\n") == "buoy, board");
    CHECK(kit("    if time: 100 with snorkel\n") == "snorkel");
}

TEST_CASE("thirds hang outside their column", "[deck]") {
    auto const text =
        deck("pool 33 1/3m\nsession\n  main\n    6 lengths crawl\n    2 lengths kick\n    4 lengths back\n");
    CHECK(line_from(text, "1 ") == "    6     6   200    6 lengths crawl");
    CHECK(line_from(text, "2 ") == "    2     2   266⅔   2 lengths kick");
    CHECK(line_from(text, "3 ") == "    4     4   400    4 lengths back");
}

TEST_CASE("with --ascii a deck is plain", "[deck]") {
    auto const text = deck("rest 20-30s\npool 33 1/3m\nsession Tue \"Long hall\"\n  main\n"
                           "    2, 4, 6, 8, 6, 4 lengths crawl\n",
                           {.ascii = true});
    CHECK(text == "Long hall, Tue, pool 33 1/3 m\n"
                  "longest today 266 2/3 m, kit: none\n\n"
                  "      lengths\n"
                  "    rep  line      m\n\n"
                  "main\n"
                  "1   2-8    30   1000   2, 4, 6, 8, 6, 4 lengths crawl\n\n"
                  "           30   1000   end\n\n"
                  "rest 20-30 s where a line has none\nno threshold, so no clock\n");
}

TEST_CASE("colour paints words that stand there anyway", "[deck]") {
    auto const plain = deck(regatta, {1});
    auto painted = deck(regatta, {.session = 1, .colour = true});
    CHECK(painted.find("\033[1m750 crawl steady\033[0m") != std::string::npos);
    for (auto at = painted.find('\033'); at != std::string::npos; at = painted.find('\033')) {
        painted.erase(at, painted.find('m', at) - at + 1);
    }
    CHECK(painted == plain);
}

TEST_CASE("yards are yards, and a race in metres is compared with them", "[deck]") {
    auto const text =
        deck("race sprint on 2027-06-13\nbefore longest 600yd\npool 25yd\nsession\n  main\n    825 crawl\n");
    CHECK(line_from(text, "longest today ") ==
          "825 yd · before 600 yd · race 750 m (about 820 yd) · kit: none");
    CHECK(line_from(text, "1 ") == "   33    33   825   825 crawl");
    CHECK(line_from(text, "    rep  line") == "    yd");
}

TEST_CASE("without a pool there are no lengths, and the deck says why", "[deck]") {
    CHECK(deck("session \"Lake\"\n  main\n    2 x 400 crawl\n    10min swim\n    if time: 200 crawl\n") ==
          R"(Lake
longest today 400 m · kit: none

         m

main
1      800   2 x 400 crawl
2      800   10min swim
             if time: 200 crawl

       800   end
     10min   timed, not in the metres
      +200   if time

no threshold, so no clock
no pool is named, so no lengths
)");
    auto const open = deck("pool open water\nsession \"Lake\"\n  main\n    2 x 400 crawl\n");
    CHECK(open.substr(0, open.find('\n')) == "Lake · open water");
    CHECK(open.find("no pool") == std::string::npos);
}

TEST_CASE("the rest that lines inherit stands at the foot, where some line can", "[deck]") {
    auto const has_foot = [](std::string const& text) {
        return deck(text).find("rest 15 s where a line has none") != std::string::npos;
    };
    CHECK(has_foot("rest 15s\npool 25m\nsession\n  main\n    100\n"));
    CHECK(has_foot("rest 40s\npool 25m\nsession\n  rest 15s\n  main\n    100\n"));
    CHECK_FALSE(has_foot("rest 15s\npool 25m\nsession\n  main rest 20s\n    100\n"));
    CHECK_FALSE(has_foot("rest 15s\npool 25m\nsession\n  rest 0s\n  main\n    100\n"));
    CHECK(has_foot("rest 15s\npool 25m\nsession\n  warm-up\n    50\n  main rest 20s\n    100\n"));
}

TEST_CASE("named sets show what they hold", "[deck]") {
    auto const text =
        deck("set \"A\" = (100 crawl + 50 back)\npool 25m\nsession\n  main\n    2 x use \"A\" rest 1min\n");
    CHECK(line_from(text, "1 ") == "  4+2    12   300   2 x (100 crawl + 50 back) rest 1min");
}

TEST_CASE("a set that would fill pages keeps its name", "[deck]") {
    std::string head = "pool 25m\nset \"0\" = (25 crawl + 50 back)\n";
    for (int i = 1; i < 12; ++i) {
        auto const inner = "use \"" + std::to_string(i - 1) + "\"";
        head += "set \"" + std::to_string(i) + "\" = (" + inner + " + " + inner + ")\n";
    }
    auto const text = deck(head + "session\n  main\n    use \"11\"\n");
    CHECK(text.find("use \"11\"") != std::string::npos);
    CHECK(text.size() < 1000);
    std::string deep = "pool 25m\nset \"0\" = 25\n";
    for (int i = 1; i < 30; ++i) {
        auto const inner = "use \"" + std::to_string(i - 1) + "\"";
        deep += "set \"" + std::to_string(i) + "\" = (" + inner + " + " + inner + ")\n";
    }
    CHECK(deck(deep + "session\n  main\n    use \"14\"\n").find("use \"14\"") != std::string::npos);
}

TEST_CASE("in another pool changed rows are marked and what they were stands below", "[deck]") {
    CHECK(deck(regatta, {.session = 1, .pool = yd25}) ==
          R"(The distance · Thu 6 May 2027, 07:00, 45 min · pool 25 yd instead of 25 m
longest today 850 yd · before about 656 yd · race 750 m (about 820 yd) ·
  kit: board
Short week
Bring a drink

      lengths
    rep  line     yd

warm-up easy rest 20s
1     8     8    200   200 choice
2     1     4    300   4 x 25 kick with board

drill "Body line"
                       "Look at the floor"
3     2     8    500   4 x 50 as 25 drill "fist" / 25 crawl

main
4*   34    34   1350   850 crawl steady
                       pause 1min "drink"
5     1     4   1450   4 x 25 crawl hard rest 30s
      1    +4          if time: 4 x 25 crawl sprint on 0:50
                         hand 00 50 40 30

cool-down easy
6     4     4   1550   100 choice

           62   1550   end
           +4   +100   if time

rest 20–40 s where a line has none
no threshold, so no clock
fits 45 min at a threshold of 1:54 per 100 yd or faster
hand: the pace clock at each start, the set begun at 00

* made to fit lengths of 25 yd; written for 25 m:
4   750 crawl steady
rows without * read as before, in yards
)");
}

TEST_CASE("times that no longer suit their reps are pointed out", "[deck]") {
    auto const text = deck("pool 25m\nsession\n  main\n    4 x 25 crawl on 0:50\n    2 x 100 crawl on 2:30\n"
                           "    if time: 75 crawl hold 1:30\n",
                           {.pool = m50});
    CHECK(text.substr(text.find("* made")) ==
          "* made to fit lengths of 50 m; written for 25 m:\n"
          "1   4 x 25 crawl on 0:50\n"
          "    if time: 75 crawl hold 1:30\n"
          "send-offs and times to hold stay as written: look at row 1, \"if time\"\n");
    CHECK(text.find("1*    1     4   200   4 x 50 crawl on 0:50\n") != std::string::npos);
    CHECK(text.find(" *    1    +1         if time: 50 crawl hold 1:30\n") != std::string::npos);
}

TEST_CASE("a session that fits as it is says so", "[deck]") {
    auto const text = deck("pool 25m\nsession\n  main\n    4 x 50 crawl\n", {.pool = yd25});
    CHECK(text.ends_with("\n\nevery row reads as before, in yards\n"));
    CHECK(deck("pool 25m\nsession\n  main\n    4 x 50 crawl\n", {.pool = m50})
              .ends_with("as before, in metres\n"));
}

TEST_CASE("a share says so too", "[deck]") {
    auto const text = deck("pool 25m\nsession\n  main\n    4 x 200 crawl\n", {.percent = 80});
    CHECK(text.ends_with("* made to fit 80 %, in lengths of 25 m; written:\n1   4 x 200 crawl\n"));
}

TEST_CASE("whatever names hold, no line is wider than asked and nothing escapes", "[deck]") {
    auto const name =
        std::string(70, 'n') + " 放松慢慢游放松慢慢游 " + std::string(120, 'x') + "e\u0301\u202E";
    auto const text = "plan \"" + name + "\"\nrace \"" + name +
                      "\" sprint on 2027-06-13\npool 25m\nsession \"" + name + "\"\n  \"" + name +
                      "\"\n  main \"" + name + "\"\n    \"" + name + "\"\n    100 drill \"" + name + "\" \"" +
                      name + "\"\n    lane 1: 50\n    lane 2: 50 \"" + name + "\"\n    pause 1min \"" + name +
                      "\"\n";
    for (auto const width : {std::size_t{40}, std::size_t{60}, std::size_t{80}}) {
        auto const drawn = deck(text, {.width = width});
        CHECK(drawn.find("\u202E") == std::string::npos);
        for (std::size_t at = 0; at < drawn.size();) {
            auto const end = drawn.find('\n', at);
            REQUIRE(report::cells(drawn.substr(at, end - at)) <= width);
            at = end + 1;
        }
    }
}
