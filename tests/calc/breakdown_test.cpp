#include "calc/breakdown.hpp"
#include "support/plan_text.hpp"
#include "support/read_plan.hpp"
#include "units/spell.hpp"

#include <catch2/catch.hpp>

#include <map>

/// Totals by word.
namespace lengthwise {
namespace {

using Words = std::map<std::string, calc::Totals>;

Words words(calc::By by, std::string const& text, int lane = 0) {
    auto const read = support::read_plan(text);
    CHECK(read.error() == "");
    calc::Breakdown breakdown;
    calc::BreakdownReader reader{read.plan(), by, lane};
    for (auto const& session : read.plan().sessions) {
        reader.add_session(session, breakdown);
    }
    Words result;
    for (auto const& word : breakdown.words) {
        result[calc::word_of(by, word.key)] = word.totals;
    }
    return result;
}

/// "crawl 200, unsaid 100"
std::string metres(calc::By by, std::string_view lines) {
    std::string text;
    for (auto const& [word, totals] : words(by, support::session_with(lines))) {
        text += (text.empty() ? "" : ", ") + word + " " + spell::number(totals.distance, Unit::metre);
    }
    return text;
}

} // namespace

TEST_CASE("unsaid stroke and effort stay unsaid, an unsaid mode is swim, no gear is nothing") {
    CHECK(metres(calc::By::stroke, "100\n200 back\n") == "back 200, unsaid 100");
    CHECK(metres(calc::By::effort, "100\n200 hard\n") == "hard 200, unsaid 100");
    CHECK(metres(calc::By::mode, "100\n200 kick\n50 swim\n") == "kick 200, swim 150");
    CHECK(metres(calc::By::gear, "100\n200 with fins\n50 with nothing\n") == "fins 200, nothing 150");
}

TEST_CASE("gear goes by the whole list, in the notation's order") {
    CHECK(metres(calc::By::gear, "100 with paddles, fins\n100 with fins, paddles\n50 with fins\n") ==
          "fins 50, fins, paddles 200");
}

TEST_CASE("efforts go by their words; shifted threshold is threshold, exact ones stand together") {
    CHECK(metres(calc::By::effort, "100 threshold\n100 threshold plus 5s\n100 at 95%\n50 at 95%\n100 rpe 7\n"
                                   "100 at 1:50 per 100\n50 hold 0:50\n") ==
          "at 95% 150, at a pace 100, hold 50, rpe 7 100, threshold 200");
}

TEST_CASE("a split is counted by its parts, as often as they repeat") {
    CHECK(metres(calc::By::mode, "2 x 200 as 25 drill \"fist\" / 75 swim\n") == "drill 100, swim 300");
    CHECK(metres(calc::By::effort, "100 as 25 easy / 25 hard / 50 easy\n") == "easy 75, hard 25");
    CHECK(metres(calc::By::stroke, "100 as 33 1/3 m back / 66 2/3 m crawl\n") == "back 33⅓, crawl 66⅔");
}

TEST_CASE("a rep of several words counts under each, its lengths rounded up once a word") {
    auto const by_stroke =
        words(calc::By::stroke, support::session_with("4 x 50 as 12.5m fly / 37.5m crawl\n"));
    CHECK(by_stroke.at("fly").reps == 4);
    CHECK(by_stroke.at("crawl").reps == 4);
    CHECK(by_stroke.at("fly").lengths == 4);
    CHECK(by_stroke.at("crawl").lengths == 8);
}

TEST_CASE("only a rep of one word throughout is that word's longest") {
    auto const by_effort =
        words(calc::By::effort, support::session_with("200 as 100 easy / 100 hard\n50 easy\n"
                                                      "100 as 25 hard / 75 hard\n"));
    CHECK(by_effort.at("easy").longest == Distance::metres(50));
    CHECK(by_effort.at("hard").longest == Distance::metres(100));
    CHECK(words(calc::By::mode, support::session_with("400 kick\n")).at("kick").longest.zero());
}

TEST_CASE("timed reps bring time to their words and no distance") {
    auto const by_mode = words(calc::By::mode, support::session_with("6min as 1min tread / 2min kick\n"));
    CHECK(by_mode.at("tread").timed == Duration::minutes(2));
    CHECK(by_mode.at("kick").timed == Duration::minutes(4));
    CHECK(by_mode.at("tread").treading_reps == 1);
    CHECK(by_mode.at("kick").treading_reps == 0);
    CHECK(by_mode.at("kick").distance.zero());
}

TEST_CASE("selectors bring their words for the reps and rounds they choose") {
    CHECK(metres(calc::By::effort, "6 x 100, odds steady, evens hard\n") == "hard 300, steady 300");
    CHECK(metres(calc::By::effort, "5 x 100, first 2 easy\n") == "easy 200, unsaid 300");
    CHECK(metres(calc::By::mode, "100, 200, 300, last 1 kick\n") == "kick 300, swim 300");
    CHECK(metres(calc::By::stroke, "3 x (100 + 50 back), evens fly\n") == "back 150, fly 100, unsaid 200");
}

TEST_CASE("sections go by their kind, and only one lane's lines count") {
    std::string const text = "pool 25m\nsession\nwarm-up \"A\"\n200\nmain\nlane 1: 100\nlane 2: 300\n"
                             "if time: 400\nwarm-up \"B\"\n100\n";
    auto const lane_1 = words(calc::By::section, text, 1);
    CHECK(lane_1.at("warm-up").distance == Distance::metres(300));
    CHECK(lane_1.at("main").distance == Distance::metres(100));
    CHECK(words(calc::By::section, text, 2).at("main").distance == Distance::metres(300));
    CHECK(words(calc::By::mode, text, 2).at("swim").distance == Distance::metres(600));
}

TEST_CASE("a drill section is a place and no mode") {
    CHECK(words(calc::By::mode, "pool 25m\nsession\ndrill\n100\n").count("drill") == 0);
}

TEST_CASE("the words of --by") {
    for (auto const by :
         {calc::By::stroke, calc::By::mode, calc::By::effort, calc::By::gear, calc::By::section}) {
        CHECK(calc::find_by(calc::spelling(by)) == by);
    }
    CHECK_FALSE(calc::find_by("strokes").has_value());
    CHECK_FALSE(calc::find_by("").has_value());
}

} // namespace lengthwise
