#include "support/found.hpp"

#include <catch2/catch.hpp>

#include <string>
#include <vector>

using lengthwise::support::first_hint;
using lengthwise::support::found;
using Found = std::vector<std::string>;

namespace {

std::string const measured = "threshold 1:20 reserve 25m\n";

Found feasible(std::string const& lines, std::string const& head = measured) {
    return found("feasible", "pool 25m\n" + head + "session Tue\nmain\n" + lines + "\n");
}

} // namespace

TEST_CASE("feasible: the rep in which the reserve runs out") {
    CHECK(feasible("12 x 100 at 1:15 per 100 rest 5s") ==
          Found{"5: note: the reserve runs out in rep 9 of 12 (estimate; D' 25 m)"});
    CHECK(feasible("8 x 100 at 1:15 per 100 rest 5s").empty());
    CHECK(feasible("9999 x 100 at 1:15 per 100 rest 10s").empty());
    CHECK(first_hint("feasible", "pool 25m\n" + measured + "session Tue\nmain\n500 at 1:15 per 100\n") ==
          "in swimmers such forecasts are off by 28-29 % (Raimundo 2022); never a safety limit");
    // Four take all of it, to the hair; a metre more is too much.
    CHECK(feasible("400 at 1:15 per 100").empty());
    CHECK(feasible("401 at 1:15 per 100", "threshold 1:20 reserve 25m\nallow whole-lengths\n") ==
          Found{"6: note: the reserve runs out in this rep (estimate; D' 25 m)"});
}

TEST_CASE("feasible: what is assumed is said") {
    CHECK(feasible("5 x 100 at 1:15 per 100 rest 0s", "threshold 1:20\n") ==
          Found{"5: note: the reserve runs out in rep 4 of 5 (estimate; D' 20 m assumed)"});
    CHECK(feasible("9 x 100 at 1:15 per 100 rest 0s", "threshold 1:20 reserve 20yd\n").front() ==
          "5: note: the reserve runs out in rep 3 of 9 (estimate; D' 20 yd)");
}

TEST_CASE("feasible: rounds, sets, selectors") {
    CHECK(feasible("3 x (2 x 100 at 1:15 per 100 rest 0s) rest 0s").front() ==
          "5: note: the reserve runs out in rep 1 of 2, round 3 of 3 (estimate; D' 25 m)");
    CHECK(feasible("2 x (3 x (2 x 100 at 1:15 per 100 rest 0s))").front() ==
          "5: note: the reserve runs out in rep 1 of 2, round 3 of 3 in round 1 of 2 (estimate; D' 25 m)");
    CHECK(feasible("8 x 100 easy rest 0s, evens at 1:15 per 100").empty());
    auto const set = "set \"go\" = 5 x 100 at 1:15 per 100 rest 0s\n";
    CHECK(feasible("use \"go\"\nuse \"go\"", measured + set) ==
          Found{"3: note: the reserve runs out in rep 5 of 5 (estimate; D' 25 m)"});
}

TEST_CASE("feasible: what came before counts, and a line is told of once") {
    CHECK(feasible("3 x 100 at 1:15 per 100 rest 0s\n3 x 100 at 1:15 per 100 rest 0s") ==
          Found{"6: note: the reserve runs out in rep 2 of 3 (estimate; D' 25 m)"});
    CHECK(feasible("3 x 100 at 1:15 per 100 rest 0s\npause 5min\n3 x 100 at 1:15 per 100 rest 0s").empty());
    CHECK(feasible("9 x (5 x 100 at 1:15 per 100 rest 0s)").size() == 1);
}

TEST_CASE("feasible: efforts given as figures that the reserve makes slower") {
    // 400 m at 104 % are 384.6 s of 400; the assumed 20 m allow 380.
    CHECK(feasible("400 at 104%", "threshold 1:40\n").empty());
    // 105 %: 380.95 s. 106 %: 377.36.
    CHECK(feasible("400 at 105%", "threshold 1:40\n").empty());
    CHECK(feasible("400 at 106%", "threshold 1:40\n") ==
          Found{"5: note: 400 m at 106% would take 6:17, the reserve makes it 6:20 "
                "(estimate; D' 20 m assumed)"});
    CHECK(feasible("4 x 400 threshold minus 5s rest 5min", "threshold 1:40\n").empty());
    CHECK(feasible("4 x 400 threshold minus 6s rest 5min", "threshold 1:40\n") ==
          Found{"5: note: 400 m threshold minus 6s would take 6:16, the reserve makes it 6:20 "
                "(estimate; D' 20 m assumed)"});
    CHECK(feasible("400 sprint", "threshold 1:40\n").empty());
}

TEST_CASE("feasible: lanes with their paces, silence without one") {
    std::string const two = "swimmer \"Ada\" threshold 1:20 reserve 25m lane 1\n"
                            "swimmer \"Bo\" threshold 1:17 reserve 25m lane 2\n";
    CHECK(feasible("9 x 100 at 1:15 per 100 rest 5s", two) ==
          Found{"6: note: the reserve runs out in rep 9 of 9 in lane 1 (estimate; D' 25 m)"});
    // The one that runs out first; those that run out together.
    CHECK(feasible("9 x 100 at 1:12 per 100 rest 0s", two) ==
          Found{"6: note: the reserve runs out in rep 3 of 9 in lane 1 (estimate; D' 25 m)"});
    CHECK(feasible("9 x 100 sprint rest 1s", two) ==
          Found{"6: note: the reserve runs out in rep 2 of 9 (estimate; D' 25 m)"});
    CHECK(feasible("lane 1: 8 x 100 at 1:15 per 100 rest 5s\nlane 2: 9 x 100 at 1:15 per 100 rest 5s", two)
              .empty());
    CHECK(feasible("99 x 100 at 1:15 per 100 rest 0s", "").empty());
    CHECK(feasible("99 x 100 at 1:15 per 100 rest 0s", measured + "allow feasible \"they asked\"\n").empty());
}

TEST_CASE("feasible: its examples") {
    CHECK(feasible("8 x 100 sprint rest 2min", "threshold 1:40\n").empty());
    CHECK(feasible("8 x 100 sprint rest 20s", "threshold 1:40\n").size() == 1);
}
