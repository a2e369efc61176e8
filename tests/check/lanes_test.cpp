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
