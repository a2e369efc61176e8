#include "support/found.hpp"

#include <catch2/catch.hpp>

#include <string>

using lengthwise::support::first_hint;
using lengthwise::support::found;
using Found = std::vector<std::string>;

namespace {

Found shape(std::string const& lines) {
    return found("shape", "pool 25m\nsession Tue\n" + lines);
}

} // namespace

TEST_CASE("shape: warm-up, main, cool-down") {
    CHECK(shape("warm-up\n100\nmain\n100\ncool-down\n100\n").empty());
    CHECK(shape("warm-up\n100\ndrill\n100\nmain\n100\nmain\n50\ncool-down\n100\n").empty());
    CHECK(shape("warm-up\n100\nmain\n100\n") == Found{"2: warning: this session has no cool-down"});
    CHECK(shape("main\n100\n") == Found{"2: warning: this session has no warm-up or cool-down"});
    CHECK(shape("drill\n100\n") == Found{"2: warning: this session has no warm-up, main or cool-down"});
}

TEST_CASE("shape: each session on its own, allowed where it is allowed") {
    CHECK(found("shape", "pool 25m\nsession Mon\nallow shape\nmain\n100\nsession Tue\nmain\n50\n") ==
          Found{"6: warning: this session has no warm-up or cool-down"});
}
