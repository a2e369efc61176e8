#include "grammar/page.hpp"

#include "grammar/parse.hpp"
#include "grammar/write.hpp"

#include <catch2/catch.hpp>

#include <string>

using namespace lengthwise;
using namespace lengthwise::grammar;

namespace {

/// The canonical text, after a look at whether it comes back from itself.
std::string tidied(std::string const& text, std::uint32_t base = 0) {
    Source const source{"written.swim", text, base};
    auto const parsed = parse(source);
    REQUIRE_FALSE(parsed.findings.has_errors());
    auto const once = write(parsed.tree);
    Source const again{"tidied.swim", once};
    CHECK(write(parse(again).tree) == once);
    return once;
}

} // namespace

TEST_CASE("page: nothing to write") {
    CHECK(tidied("").empty());
    CHECK(tidied("\n \n\t\n").empty());
    CHECK(tidied("\xEF\xBB\xBF").empty());
}

TEST_CASE("page: line ends, byte order mark and the last line") {
    CHECK(tidied("plan \"A\"") == "plan \"A\"\n");
    CHECK(tidied("plan \"A\"\n\n\n") == "plan \"A\"\n");
    CHECK(tidied("\xEF\xBB\xBFplan \"A\"\r\n\r\n\r\npool 25m # p \t\r\n") == "plan \"A\"\n\npool 25m  # p\n");
    CHECK(tidied("\xEF\xBB\xBF# first\n") == "# first\n");
}

TEST_CASE("page: at most one blank line where there were some, none at either end") {
    CHECK(tidied("\n\nplan \"A\"\npool 25m\n\n \n\t\nrest 20s\n\n") == "plan \"A\"\npool 25m\n\nrest 20s\n");
}

TEST_CASE("page: a comment behind a line stays there, two blanks off") {
    CHECK(tidied("pool 25m# a\nrest 20s \t # b  \n") == "pool 25m  # a\nrest 20s  # b\n");
}

TEST_CASE("page: a comment of its own stands as deep as what follows") {
    CHECK(tidied(R"(# file
session
      # setting
  rest 20s
# heading
    main
# item
100

  # next

session
)") == R"(# file
session
  # setting
  rest 20s
  # heading
  main
    # item
    100

# next

session
)");
}

TEST_CASE("page: comments at the end of the text stay at the margin or with the last line") {
    CHECK(tidied("session\nmain\n100\n # a\n\n# b\n") == "session\n  main\n    100\n    # a\n\n# b\n");
}

TEST_CASE("page: comments in groups") {
    CHECK(tidied(R"(session
main
3 x ( # rounds
# first of all
200 + 50 # both
# between
+ # a plus

  25 # not lost

# last
) rest 1min # after
)") == R"(session
  main
    3 x (  # rounds
      # first of all
      200
      50  # both
      # between
      # a plus

      25  # not lost

      # last
    ) rest 1min  # after
)");
}

TEST_CASE("page: offsets that do not begin at 0") {
    std::string const text = "# a\npool 25m # b\n\nset \"s\" = (100 # c\n50\n)\n# d";
    CHECK(tidied(text, 1000) == tidied(text));
}
