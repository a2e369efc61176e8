#include "report/deck_text.hpp"
#include "report/deck_view.hpp"
#include "support/read_plan.hpp"
#include "tailor/pool.hpp"

#include <catch2/catch.hpp>

#include <optional>
#include <string>
#include <vector>

/// What a deck says of swimmers one behind the other.
namespace lengthwise {
namespace {

using Texts = std::vector<std::string>;

struct Asked {
    std::int64_t gap = 5;
    std::optional<int> swimmers{};
    std::optional<int> lane{};
    bool ascii = false;
};

report::Deck view(std::string const& text, Asked const& asked) {
    auto const read = support::read_plan(text);
    INFO(text);
    CHECK(read.error() == "");
    return report::deck_view(read.plan(),
                             {.session = 0,
                              .lane = asked.lane,
                              .ascii = asked.ascii,
                              .queue = report::DeckQueue{Duration::seconds(asked.gap), asked.swimmers}});
}

/// Below the rows, one after the other.
Texts below(std::string const& text, Asked const& asked = {}) {
    Texts all;
    for (auto const& section : view(text, asked).sections) {
        for (auto const& row : section.rows) {
            CHECK((row.hand.empty() || row.queue.empty()));
            all.insert(all.end(), row.queue.begin(), row.queue.end());
        }
    }
    return all;
}

Texts foot(std::string const& text, Asked const& asked = {}) {
    return view(text, asked).queue;
}

std::string const two = "pool 25m\nswimmer \"Ben\" threshold 2:10 lane 1\n"
                        "swimmer \"Ann\" threshold 1:40 lane 1\n";

std::string session(std::string const& lines) {
    return "session\nmain\nlane 1: 25\n" + lines;
}

} // namespace

TEST_CASE("queue: each has the hand of his own starts", "[deck]") {
    CHECK(below(two + session("8 x 50 on 1:45\n")) == Texts{"Ann 00 45 30 15", "Ben 05 50 35 20"});
    CHECK(below("pool 25m\n" + session("8 x 50 on 1:45\n"), {.gap = 10, .swimmers = 3}) ==
          Texts{"1st 00 45 30 15", "2nd 10 55 40 25", "3rd 20 05 50 35"});
    auto const many = below("pool 25m\n" + session("8 x 50 on 5:00\n"), {.gap = 5, .swimmers = 12});
    CHECK(many.front() == "1st  00");
    CHECK(many.back() == "12th 55");
}

TEST_CASE("queue: no hands where the lane's slowest does not make the starts", "[deck]") {
    for (auto const& text : below(two + session("8 x 50 on 1:05\n"))) { // Ben takes 1:10
        CHECK_FALSE(text.starts_with("Ann "));
        CHECK_FALSE(text.starts_with("Ben "));
    }
}

TEST_CASE("queue: who laps whom, in the longest rep of a row", "[deck]") {
    CHECK(below(two + session("700 threshold\n")) == Texts{"Ann laps Ben at 200, 417 and 633 m"});
    CHECK(below(two + session("(50 + 2 x 400 threshold)\n")) == Texts{"Ann laps Ben at 200 m"});
    CHECK(below(two + session("200 threshold\n")).empty());
    CHECK(below(two + session("700 at 1:40 per 100\n")).empty());
    CHECK(below(two + session("1500 threshold\n"))[0] == "Ann laps Ben at 200, 417, 633 m … (6 times)");
    CHECK(below(two + session("1500 threshold\n"), {.ascii = true})[0] ==
          "Ann laps Ben at 200, 417, 633 m ... (6 times)");
    auto const yards =
        "pool 25yd\nswimmer \"Ben\" threshold 2:10 lane 1\nswimmer \"Ann\" threshold 1:40 lane 1\n";
    CHECK(below(yards + session("700 threshold\n")) == Texts{"Ann laps Ben at 200, 417 and 633 yd"});
}

TEST_CASE("queue: where the order by threshold is not that of a sprint, the first is caught", "[deck]") {
    auto const swimmers = "pool 25m\nswimmer \"Ann\" threshold 1:40 reserve 1m lane 1\n"
                          "swimmer \"Ben\" threshold 1:42 reserve 60m lane 1\n";
    // 100 m: Ann 100 s less 1 m, Ben 85 % of 102 s.
    CHECK(below(swimmers + session("100 sprint\n"), {.gap = 5}) == Texts{"Ben catches Ann after 41 m"});
}

TEST_CASE("queue: many meetings are cut off", "[deck]") {
    std::string text = "pool 25m\n";
    for (int i = 0; i < 5; ++i) {
        text += "swimmer \"S" + std::to_string(i) + "\" threshold " + std::to_string(1 + i) + ":30 lane 1\n";
    }
    auto const met = below(text + "session\nmain\n700 threshold\n");
    REQUIRE(met.size() == 5);
    CHECK(met.back() == "and 6 more so");
}

TEST_CASE("queue: not all get away", "[deck]") {
    auto const lane = [](std::string const& lines, int swimmers) {
        return below("pool 25m\nthreshold 1:40\nfactor steady 100%\nsession\nmain\n" + lines,
                     {.gap = 5, .swimmers = swimmers});
    };
    CHECK(lane("200\n", 10).empty()); // the first is back after 50 s
    CHECK(lane("200\n", 11) == Texts{"the first is back after 0:50, 11 need 0:55 to get away"});
    CHECK(lane("50\n", 10).empty()); // no longer than a lap, and he leaves again after 50 s
    CHECK(lane("50\n", 11) == Texts{"the first leaves again after 0:50, 11 need 0:55 to get away"});
    CHECK(lane("50 rest 5s\n", 11).empty());
    CHECK(lane("2 x 25 on 0:50\n", 11).back() ==
          "the first leaves again after 0:50, 11 need 0:55 to get away");
    CHECK(lane("10min\n", 20).empty());
}

TEST_CASE("queue: the foot says who they are and what stands below rows", "[deck]") {
    CHECK(foot(two + session("700 threshold\n8 x 50 on 1:45\n")) ==
          Texts{"lane 1: Ann, Ben, 5 s apart", "all of them are away before the first is back",
                "behind each: the pace clock at each start, the first away at 00",
                "laps at: what the faster has swum of the longest rep by then, both at an even pace"});
    CHECK(foot("pool 25m\n" + session("4 x 50\n"), {.gap = 10, .swimmers = 4}) ==
          Texts{"4 in a lane, 10 s apart"});
    CHECK(foot("pool 25m\n" + session("4 x 50\n")) ==
          Texts{"no lane has two swimmers with a threshold; four at its pace: --swimmers 4"});
}

TEST_CASE("queue: lanes that share a row each have their swimmers below it", "[deck]") {
    auto const text = two + "swimmer \"Cy\" threshold 1:50 lane 2\nswimmer \"Dot\" threshold 2:20 lane 2\n"
                            "session\nmain\nlane 1: 25\nlane 2: 50\n700 threshold\n";
    CHECK(below(text) == Texts{"Ann laps Ben at 200, 417 and 633 m", "Cy laps Dot at 217, 450 and 683 m"});
    CHECK(below(text, {.lane = 2}) == Texts{"Cy laps Dot at 217, 450 and 683 m"});
    CHECK(foot(text)[0] == "lane 1: Ann, Ben; lane 2: Cy, Dot, 5 s apart");
}

TEST_CASE("queue: a session without lane lines has the swimmers of all lanes", "[deck]") {
    CHECK(below(two + "session\nmain\n700 threshold\n") == Texts{"Ann laps Ben at 200, 417 and 633 m"});
}

TEST_CASE("queue: in another pool they meet elsewhere", "[deck]") {
    auto const read = support::read_plan(two + "session Mon\nmain\n50\n" + session("700 threshold\n"));
    REQUIRE(read.error() == "");
    auto const tailored = tailor::fit(read.plan(), 1, {.pool = Pool::of(Distance::metres(50), Unit::metre)});
    auto const deck = report::deck_view(
        read.plan(), {.session = 1, .queue = report::DeckQueue{Duration::seconds(5), {}}}, tailored);
    // Both are slower by 0.98/0.96 in 50 m: (100 * 1.327 - 5) / 0.30625.
    CHECK(deck.sections[0].rows[1].queue == Texts{"Ann laps Ben at 417 m"});
}

TEST_CASE("queue: names are made safe and cut", "[deck]") {
    auto const text = "pool 25m\nswimmer \"Wilhelmina-Charlotte\" threshold 1:40 lane 1\n"
                      "swimmer \"B\u202En\" threshold 2:10 lane 1\n" +
                      session("4 x 50 on 2:00\n");
    CHECK(below(text) == Texts{"Wilhelmina-… 00", "B<U+202E>n   05"});
    CHECK(below(text, {.ascii = true})[0] == "Wilhelmin... 00");
}

} // namespace lengthwise
