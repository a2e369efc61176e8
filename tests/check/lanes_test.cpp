#include "support/found.hpp"

#include <catch2/catch.hpp>

#include <string>

using lengthwise::support::first_hint;
using lengthwise::support::found;
using Found = std::vector<std::string>;

namespace {

Found lanes(std::string const& lines) {
    return found("lanes", "pool 25m\nsession Tue\nmain\n" + lines);
}

} // namespace

TEST_CASE("lanes: every lane of the session has its line in a block") {
    CHECK(lanes("lane 1: 100\nlane 2: 50\n").empty());
    CHECK(lanes("lane 1: 100\nlane 2: 50\n100\nlane 1: 50\n") ==
          Found{"7: warning: lane 2 of this session has no line here"});
    CHECK(lanes("lane 1: 100\nlane 2: 50\nlane 3: 50\n100\nlane 1: 50\n") ==
          Found{"8: warning: lanes 2 and 3 of this session have no line here"});
    CHECK(lanes("lane 1: 100\nlane 2: 50\n100\nlane 1-2: 50\n").empty());
}

TEST_CASE("lanes: a block ends at an unlabelled item, a pause or a heading, not at a note") {
    CHECK(lanes("lane 1: 100\n\"shorter:\"\nlane 2: 50\n").empty());
    CHECK(lanes("lane 1: 100\npause 1min\nlane 2: 50\n").size() == 2);
    CHECK(lanes("lane 1: 100\n50\nlane 2: 50\n").size() == 2);
    CHECK(lanes("lane 1: 100\ncool-down\nlane 2: 50\n").size() == 2);
}

TEST_CASE("lanes: one lane twice in a block is a note, but not beside if time") {
    CHECK(lanes("lane 1: 100\nlane 2: 50\nlane 1: 50\n") ==
          Found{"6: note: lane 1 has two lines here and swims both"});
    CHECK(lanes("lane 1: 100\nlane 2: 50\nlane 1: if time: 50\n").empty());
    CHECK(lanes("lane 1-2: 100\nlane 2: 50\n") == Found{"5: note: lane 2 has two lines here and swims both"});
}

TEST_CASE("lanes: a swimmer's lane is one that a session names") {
    std::string const session = "session Tue\nmain\nlane 1: 100\nlane 2: 50\n";
    CHECK(found("lanes", "swimmer \"Ada\" lane 2\npool 25m\n" + session).empty());
    CHECK(found("lanes", "swimmer \"Ada\" lane 3\npool 25m\n" + session) ==
          Found{"1: warning: no session has a line for lane 3"});
    CHECK(first_hint("lanes", "swimmer \"Ada\" lane 3\npool 25m\n" + session) ==
          "the sessions name lanes 1 and 2");
    CHECK(found("lanes", "swimmer \"Ada\" lane 3\npool 25m\nallow lanes\n" + session).empty());
}

TEST_CASE("lanes: allowed for one session") {
    CHECK(found("lanes", "pool 25m\nsession Tue\nallow lanes\nmain\nlane 1: 100\n50\nlane 2: 50\n").empty());
}

TEST_CASE("lanes: nobody is lapped inside a rep") {
    std::string const two = "pool 25m\nswimmer \"Ann\" threshold 2:10 lane 1\n"
                            "swimmer \"Ben\" threshold 1:40 lane 1\n";
    auto const reps = [&](std::string const& lines, std::string const& head = "") {
        return found("lanes", two + head + "session Tue\nmain\nlane 1: 50\n" + lines);
    };
    // At threshold: 1:40 and 2:10, 5 s apart, meet at 200, 416.7 and 633.3 m.
    CHECK(reps("200 threshold\n").empty());
    CHECK(reps("225 threshold\n") == Found{"7: warning: in lane 1 Ben laps Ann at 200 m of 225 m"});
    CHECK(first_hint("lanes", two + "session Tue\nmain\nlane 1: 50\n225 threshold\n") ==
          "fastest first, 5 s apart; let them pass at the wall, or give them different lanes");
    CHECK(reps("100 threshold\n2 x (3 x 150 + 400, 800 threshold)\n").size() == 1); // once an item
    CHECK(reps("if time: 400\n").size() == 1);
    // Not where all keep one pace, are sorted at a break or end together.
    CHECK(reps("800 at 2:00 per 100\n800 broken at 200 for 15s\n30min\n").empty());
    CHECK(reps("400\n", "allow lanes \"they wait\"\n").empty());
    CHECK(reps("2 x use \"A\"\nuse \"A\"\n", "set \"A\" = 4 x 400\n").size() == 1);
    CHECK(reps("2 x (400 + 50), odds easy, evens hard\n").size() == 1);
}

TEST_CASE("lanes: lapping needs two swimmers with thresholds in one lane, and a pool") {
    std::string const session = "session Tue\nmain\nlane 1: 50\nlane 2: 50\n800\n";
    auto const with = [&](std::string const& swimmers, std::string const& pool = "25m") {
        return found("lanes", "pool " + pool + "\nswimmer \"Ann\" " + swimmers + "\n" + session);
    };
    CHECK(with("threshold 2:10 lane 1\nswimmer \"Ben\" lane 1").empty());
    CHECK(with("threshold 2:10 lane 1\nswimmer \"Ben\" threshold 1:40 lane 2").empty());
    CHECK(with("threshold 2:10\nswimmer \"Ben\" threshold 1:40").empty());
    CHECK(with("threshold 1:40 lane 1\nswimmer \"Ben\" threshold 1:40 lane 1").empty());
    CHECK(with("threshold 2:10 lane 2\nswimmer \"Ben\" threshold 1:40 lane 2") ==
          Found{"8: warning: in lane 2 Ben laps Ann at 201 m of 800 m"});
    CHECK(with("threshold 2:10 lane 1\nswimmer \"Ben\" threshold 1:40 lane 1", "open water").empty());
    // A third between them changes who is last by 5 s more.
    CHECK(with("threshold 2:10 lane 2\nswimmer \"Cy\" threshold 2:00 lane 2\n"
               "swimmer \"Ben\" threshold 1:40 lane 2") ==
          Found{"9: warning: in lane 2 Ben laps Ann at 186 m of 800 m"});
}
