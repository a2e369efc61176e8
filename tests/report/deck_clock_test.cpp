#include "report/deck_text.hpp"
#include "report/deck_view.hpp"
#include "support/read_plan.hpp"
#include "tailor/pool.hpp"

#include <catch2/catch.hpp>

#include <optional>
#include <string>
#include <vector>

/// The clock of a deck, the pace clock's hand, and what is said where a pace is missing. A hundred
/// takes 100 s.
namespace lengthwise {
namespace {

struct How {
    std::optional<int> lane{};
    std::optional<TimeOfDay> start{};
    std::size_t width = 80;
    bool ascii = false;
};

std::string deck(std::string const& text, How const& how = {}) {
    auto const read = support::read_plan(text);
    INFO(text);
    CHECK(read.error() == "");
    report::DeckOptions const options{.session = 0, .lane = how.lane, .ascii = how.ascii, .start = how.start};
    return report::deck_text(report::deck_view(read.plan(), options),
                             {.width = how.width, .ascii = how.ascii}, report::Paint{});
}

std::string const head = "pool 25m\nthreshold 1:40\nfactor steady 100%\n";

std::string lines(std::string const& main, std::string const& session = "session") {
    return head + session + "\n  main\n" + main;
}

/// The lines of a deck that begin so, without what they begin with.
std::vector<std::string> after(std::string const& text, std::string const& begin) {
    std::vector<std::string> found;
    for (std::size_t at = 0; at < text.size();) {
        auto const end = text.find('\n', at);
        auto const line = text.substr(at, end - at);
        if (line.starts_with(begin)) {
            found.push_back(line.substr(begin.size()));
        }
        at = end + 1;
    }
    return found;
}

/// The second column: when rows leave.
std::vector<std::string> clocks(std::string const& text) {
    std::vector<std::string> found;
    for (std::size_t at = 0; at < text.size();) {
        auto const end = text.find('\n', at);
        auto const line = text.substr(at, end - at);
        auto const from = line.find_first_not_of(' ', 2);
        if (!line.empty() && (line[0] >= '1' && line[0] <= '9') && line[1] == ' ') {
            found.push_back(line.substr(from, line.find(' ', from) - from));
        }
        at = end + 1;
    }
    return found;
}

std::vector<std::string> hands(std::string const& main) {
    auto const text = deck(lines(main));
    std::vector<std::string> found;
    for (auto at = text.find("  hand "); at != std::string::npos; at = text.find("  hand ", at + 1)) {
        found.push_back(text.substr(at + 7, text.find('\n', at) - at - 7));
    }
    return found;
}

using Texts = std::vector<std::string>;

} // namespace

TEST_CASE("rows leave when what is before them is over", "[deck]") {
    std::string const set = "    4 x 100 rest 20s\n    pause 2min\n    2 x 100 on 2:00\n    100\n";
    CHECK(clocks(deck(lines(set))) == Texts{"0:00", "9:40", "13:40"}); // 460 + 120 s, and 240 s
    CHECK(clocks(deck(lines(set, "session 07:00"))) == Texts{"07:00", "07:09", "07:13"});
    CHECK(clocks(deck(lines(set, "session 07:00"), {.start = TimeOfDay{10 * 60 + 5}})) ==
          Texts{"10:05", "10:14", "10:18"});
    CHECK(clocks(deck(lines(set), {.start = TimeOfDay{23 * 60 + 50}})) == Texts{"23:50", "23:59", "00:03"});
    CHECK(clocks(deck(lines("    40 x 100\n    100\n"))) == Texts{"0:00", "1:06:40"});
}

TEST_CASE("the last row's end and the band of ends stand below, rounded outward", "[deck]") {
    auto const text = deck("pool 25m\nthreshold 1:40\nsession Tue 07:00 for 45min\nmain\n1000 easy\n");
    // 1000 m at 110, 115 and 120 % of 1:40: 18:20, 19:10, 20:00.
    CHECK(after(text, "    07:19         40   1000   end").size() == 1);
    CHECK(after(text, "ends ") == Texts{"07:18–07:20; slot to 07:45"});
    auto const counted = deck("pool 25m\nthreshold 1:40\nsession for 45min\nmain\n1000 easy\n");
    CHECK(after(counted, "    19:10         40   1000   end").size() == 1);
    CHECK(after(counted, "takes ") == Texts{"18–20 min; slot 45 min"});
    CHECK(after(deck(lines("    3 x 100\n", "session 23:57")), "ends ") == Texts{"00:02"});
    CHECK(after(deck("pool 25m\nthreshold 1:40\nsession Tue 07:00\nmain\n1000 easy\n", {.ascii = true}),
                "ends ") == Texts{"07:18-07:20"});
}

TEST_CASE("the end is rounded as the minutes of tally are", "[deck]") {
    // 1075 m at 115 % of 1:40: 20:36.25
    std::string const text = "pool 25m\nthreshold 1:40\nsession Tue 07:00\nmain\n1075 easy\n";
    CHECK(after(deck(text), "    07:21         43   1075   end").size() == 1);
}

TEST_CASE("optional rows and pauses have no time", "[deck]") {
    auto const text = deck(lines("    100\n    pause 1min\n    if time: 100 kick\n    100\n"));
    CHECK(clocks(text) == Texts{"0:00", "2:40"});
    CHECK(after(text, "             4    +4          if time: 100 kick").size() == 1);
}

TEST_CASE("each lane has a clock of its own, and ends at its own time", "[deck]") {
    std::string const text = "pool 25m\nfactor steady 100%\nswimmer \"Ann\" threshold 1:40 lane 1\n"
                             "swimmer \"Ben\" threshold 2:00 lane 2\nsession Tue 07:00\nmain\n"
                             "lane 1: 6 x 100\nlane 2: 3 x 100\n200\n";
    CHECK(deck(text) == R"(Tue, 07:00 · pool 25 m
longest today 200 m · kit: none

    lane 1  lane 2    lengths
     clock   clock  rep  line   1 m   2 m

main
1    07:00            4    24   600         6 x 100
2            07:00    4    12         300   3 x 100
3    07:10   07:06    8     8   800   500   200

     07:13   07:10              800   500   end
                                 32    20   lengths

clock at 1:40 per 100 m in lane 1, 2:00 per 100 m in lane 2
lane 1 ends 07:13–07:14, lane 2 07:10
)");
    auto const second = deck(text, {.lane = 2});
    CHECK(after(second, "clock at ") == Texts{"2:00 per 100 m"});
    CHECK(after(second, "lane 2 ends ") == Texts{"07:10"});
}

TEST_CASE("lanes that swim alike share a clock only at one pace", "[deck]") {
    std::string const lanes = "session\nmain\nlane 1-2: 100\n100\n";
    CHECK(after(deck(head + lanes), "lanes 1, 2 take ") == Texts{"3–4 min"}); // 200 s
    auto const two = deck("pool 25m\nswimmer \"Ann\" threshold 1:40 lane 1\n"
                          "swimmer \"Ben\" threshold 2:00 lane 2\n" +
                          lanes);
    CHECK(after(two, "    lane 1  lane 2").size() == 1);
}

TEST_CASE("a session without lane lines goes by the threshold in force, and names what lanes take",
          "[deck]") {
    std::string const swimmers =
        "swimmer \"Ann\" threshold 1:40 lane 1\nswimmer \"Ben\" threshold 2:00 lane 2\n"
        "swimmer \"Cy\" threshold 1:40 lane 3\n";
    std::string const session = "factor steady 100%\nsession Tue 07:00 for 30min\nmain\n6 x 100\n100\n";
    auto const both = deck("pool 25m\n" + swimmers + "threshold 1:50\n" + session);
    CHECK(clocks(both) == Texts{"07:00", "07:11"});
    CHECK(after(both, "clock at ") == Texts{"1:50 per 100 m"});
    CHECK(after(both, "lanes 1, 3 end ") == Texts{"07:11–07:12, lane 2 07:14; slot to 07:30"});
    auto const lanes_only = deck("pool 25m\n" + swimmers + session);
    CHECK(clocks(lanes_only) == Texts{"07:00", "07:10"});
    CHECK(after(lanes_only, "clock at ") == Texts{"1:40 per 100 m in lane 1"});
}

TEST_CASE("without a pace the clock vanishes and the question is turned round", "[deck]") {
    auto const text = deck("pool 25m\nsession Tue 07:00 for 20min\nmain\n10 x 100 rest 20s\n");
    CHECK(text.find("clock  ") == std::string::npos);
    CHECK(after(text, "no threshold, so no clock").size() == 1);
    CHECK(after(text, "fits 20 min at a threshold of ") == Texts{"1:32 per 100 m or faster"});
    auto const no_slot = deck("pool 25m\nsession Tue 07:00\nmain\n10 x 100 rest 20s\n");
    CHECK(after(no_slot, "fits ").empty());
    CHECK(after(deck("pool 25m\nsession for 1min\nmain\n10 x 100\n"), "fits 1 min at ") ==
          Texts{"no threshold"});
}

TEST_CASE("a single unknown time is a question mark", "[deck]") {
    auto const text = deck("pool 25m\nsession Tue 07:00\nmain\n4 x 100 at 2:00 per 100\n100\n100\n");
    CHECK(clocks(text) == Texts{"07:00", "07:08", "?"});
    CHECK(after(text, "        ?         24").size() == 1);
    CHECK(after(text, "no threshold, so no clock from ? on").size() == 1);
}

TEST_CASE("what takes longer than may be timed has no clock", "[deck]") {
    auto const text = deck("pool 25m\nthreshold 1h per 25m\nsession\nmain\n9999 x 100\n");
    CHECK(clocks(text) == Texts{"4"});
    CHECK(after(text, "too long to be timed, so no clock").size() == 1);
    CHECK(after(text, "takes ").empty());
}

TEST_CASE("the hand at each start of a set with send-offs", "[deck]") {
    CHECK(hands("    6 x 100 on 2:30\n") == Texts{"00 30"});
    CHECK(hands("    5 x 100 on 2:45\n") == Texts{"00 45 30 15"});
    CHECK(hands("    3 x 100 on 2:45\n") == Texts{"00 45 30"});
    CHECK(hands("    8 x 100 on 1:45\n") == Texts{"00 45 30 15"});
    CHECK(hands("    4 x 100 on 2:00\n") == Texts{"00"});
    CHECK(hands("    40 x 100 on 2:01\n") == Texts{"00 01 02 03 04 05 06 07 08 09 10 11 …"});
    CHECK(hands("    40 x 100 on 1:55\n") == Texts{"00 55 50 45 40 35 30 25 20 15 10 05"});
    CHECK(hands("    100 on 2:00\n    4 x 100 rest 20s\n").empty());
}

TEST_CASE("the hand with steps, in groups and in named sets", "[deck]") {
    CHECK(hands("    4 x 100 on 2:10, 2:05, 2:00, 3:00\n") == Texts{"00 10 15 15"});
    CHECK(hands("    4 x 100 on 2:10, 1:50, 2:10, 1:50\n") == Texts{"00 10"});
    CHECK(hands("    100, 200, 100 on 4:15\n") == Texts{"00 15 30"});
    CHECK(hands("    3 x (2 x 50 on 1:15) on 3:20\n") == Texts{"00 20 40"}); // the rounds'
    CHECK(hands("    3 x (4 x 50 on 1:15 + 100 easy) rest 1min\n") == Texts{"00 15 30 45"});
    CHECK(hands("    3 x (4 x 50 on 1:15 + 2 x 100 on 2:30) rest 1min\n").empty());
    CHECK(hands("    2 x (3 x (4 x 50 on 1:15) + 2 x 100 on 2:30) rest 1min\n").empty());
    CHECK(hands("    2 x (2 x (2 x 50 on 1:15 + 2 x 25 on 1:00) + 2 x 100 on 2:30)\n").empty());
    auto const set = "set \"A\" = 4 x 50 on 1:20\n" + lines("    2 x use \"A\"\n");
    CHECK(deck(set).find("  hand 00 20 40\n") != std::string::npos);
}

TEST_CASE("the hand is left out where a start is not made, in groups too", "[deck]") {
    CHECK(hands("    4 x 100 on 1:35\n").empty()); // 1:40 each
    CHECK(hands("    50, 200, 50 on 2:00\n").empty());
    CHECK(hands("    4 x 100 on 2:00, last kick\n").empty());
    CHECK(hands("    3 x (4 x 100 on 1:35 + 100 easy) rest 1min\n").empty());
    CHECK(hands("    3 x (4 x 100 on 1:50 + 100 easy) rest 1min\n") == Texts{"00 50 40 30"});
}

TEST_CASE("no hand shows a fraction of a second", "[deck]") {
    CHECK(hands("    4 x 100 on 1:50.5\n").empty());
    CHECK(hands("    2 x 100 on 2:00, 1:50.5\n") == Texts{"00"}); // the last step starts nothing
}

TEST_CASE("what the hand is stands below, once", "[deck]") {
    std::string const foot = "hand: the pace clock at each start, the set begun at 00";
    CHECK(after(deck(lines("    4 x 50 on 1:15\n    2 x 50 on 1:15\n")), foot).size() == 1);
    CHECK(after(deck(lines("    4 x 50 rest 15s\n")), foot).empty());
}

TEST_CASE("a reserve that is assumed and decides a time is said", "[deck]") {
    std::string const words = "35, 20, 10 m of reserve assumed";
    CHECK(after(deck(lines("    400 sprint\n")), words).size() == 1);
    CHECK(after(deck(lines("    400 steady\n")), words).empty());
    CHECK(after(deck("pool 25m\nthreshold 1:40 reserve 20m\nsession\nmain\n400 sprint\n"), words).empty());
    CHECK(after(deck("pool 25m\nsession\nmain\n400 sprint\n"), words).empty());
}

TEST_CASE("in another pool the clock is that pool's", "[deck]") {
    auto const read = support::read_plan("pool 25m\nthreshold 1:40\nfactor steady 100%\n"
                                         "session Mon\nmain\n50\n"
                                         "session Tue 07:00\nmain\n1000\n100\n");
    REQUIRE(read.error() == "");
    auto const long_pool = Pool::of(Distance::metres(50), Unit::metre);
    auto const tailored = tailor::fit(read.plan(), 1, {.pool = long_pool});
    auto const view = report::deck_view(read.plan(), {.session = 1}, tailored);
    // 1000 m at 1:40 in 25 m, where a push-off is a metre of 25, take 0.98/0.96 of it in 50 m.
    CHECK(view.sections[0].rows[1].start == std::vector{std::optional{Duration::ms(1'020'833)}});
}

TEST_CASE("clocks are bold, and so is what is swum", "[deck]") {
    auto const read = support::read_plan(lines("    100\n    pause 1min\n", "session 07:00"));
    auto const text = report::deck_text(report::deck_view(read.plan(), {}), {}, report::Paint{true});
    CHECK(after(text, "1   \033[1m07:00\033[0m    4     4   100   \033[1m100\033[0m").size() == 1);
    CHECK(after(text, "    \033[1m07:02\033[0m          4   100   end").size() == 1);
}

TEST_CASE("forty columns hold clock and set", "[deck]") {
    auto const text =
        deck(lines("    4 x 100 crawl on 2:00, odds easy, evens hard\n", "session 07:00"), {.width = 40});
    CHECK(after(text, "    clock     m").size() == 1);
    CHECK(after(text, "1   07:00   400   4 x 100 crawl").size() == 1);
}

} // namespace lengthwise
