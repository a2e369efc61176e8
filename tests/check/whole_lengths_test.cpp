#include "support/found.hpp"

#include <catch2/catch.hpp>

#include <string>

using lengthwise::support::first_hint;
using lengthwise::support::found;
using Found = std::vector<std::string>;

namespace {

/// A session whose items are these lines, from line 4 on.
std::string in_pool(std::string const& pool, std::string const& lines) {
    return "pool " + pool + "\nsession Tue\nmain\n" + lines;
}

Found whole_lengths(std::string const& pool, std::string const& lines) {
    return found("whole-lengths", in_pool(pool, lines));
}

} // namespace

TEST_CASE("whole-lengths: a rep ends at a wall, or the two nearest that do are named") {
    CHECK(whole_lengths("25m", "100 crawl\n4 x 125\n25\n").empty());
    CHECK(whole_lengths("25m", "110 crawl\n") ==
          Found{"4: warning: 110 m is not a whole number of 25 m lengths"});
    CHECK(first_hint("whole-lengths", in_pool("25m", "110 crawl\n")) == "try: 100 or 125 m");
    CHECK(first_hint("whole-lengths", in_pool("25m", "4 x 99 crawl\n")) == "try: 75 or 100 m");
    CHECK(first_hint("whole-lengths", in_pool("25m", "4 x 101 crawl\n")) == "try: 100 or 125 m");
    CHECK(first_hint("whole-lengths", in_pool("25m", "20 crawl\n")) == "try: 25 m");
}

TEST_CASE("whole-lengths: pools of thirds are named in lengths") {
    CHECK(whole_lengths("33 1/3 m", "100\n67\n2 lengths\n").empty());
    CHECK(whole_lengths("33 1/3 m", "110m\n") ==
          Found{"4: warning: 110 m is not a whole number of 33⅓ m lengths"});
    CHECK(first_hint("whole-lengths", in_pool("33 1/3 m", "110m\n")) ==
          "try: 3 or 4 lengths (100 or 133⅓ m)");
}

TEST_CASE("whole-lengths: metres in a pool of yards") {
    CHECK(whole_lengths("25yd", "100\n").empty());
    CHECK(whole_lengths("25yd", "100m\n") ==
          Found{"4: warning: 100 m is not a whole number of 25 yd lengths"});
    CHECK(first_hint("whole-lengths", in_pool("25yd", "100m\n")) == "try: 100 or 125 yd");
}

TEST_CASE("whole-lengths: a ladder is found once, by its first rung between walls") {
    CHECK(whole_lengths("25m", "100, 110, 120, 200 crawl\n") ==
          Found{"4: warning: 110 m is not a whole number of 25 m lengths"});
}

TEST_CASE("whole-lengths: parts of a split may end anywhere, timed reps end when they end") {
    CHECK(whole_lengths("50m", "100 as 25 kick / 25 crawl\n10min easy\n").empty());
}

TEST_CASE("whole-lengths: without a pool length there is nothing to judge") {
    CHECK(whole_lengths("open water", "110m\n").empty());
}

TEST_CASE("whole-lengths: inside groups and sets, once where it is written") {
    std::string const plan = "set \"A\" = 110 crawl\npool 25m\nsession Tue\nmain\n2 x (use \"A\" + 100)\n"
                             "use \"A\"\n2 x (120 + 100)\n";
    CHECK(found("whole-lengths", plan) == Found{"1: warning: 110 m is not a whole number of 25 m lengths",
                                                "7: warning: 120 m is not a whole number of 25 m lengths"});
}

TEST_CASE("whole-lengths: allowed where it is allowed, for the file, a week, a session") {
    std::string const session = "session Tue\nmain\n110\n";
    CHECK(found("whole-lengths", "pool 25m\nallow whole-lengths \"an odd pool\"\n" + session).empty());
    CHECK(found("whole-lengths", "pool 25m\nweek 1\nallow whole-lengths\n" + session).empty());
    CHECK(found("whole-lengths", "pool 25m\nweek 1\nallow whole-lengths\n" + session + "week 2\n" + session)
              .size() == 1);
    CHECK(
        found("whole-lengths", "pool 25m\nsession Mon\nallow whole-lengths\nmain\n110\n" + session).size() ==
        1);
}
