#include "support/found.hpp"

#include <catch2/catch.hpp>

#include <string>
#include <vector>

using lengthwise::support::first_hint;
using lengthwise::support::found;
using Found = std::vector<std::string>;

namespace {

// At a threshold of 1:40 steady takes 104, 107, 110 %, hard 91, 95, 98 %.
std::string plan(std::string const& lines, std::string const& head = "threshold 1:40\n") {
    return "pool 25m\n" + head + "session Tue\nmain\n" + lines + "\n";
}

Found send_off(std::string const& lines, std::string const& head = "threshold 1:40\n") {
    return found("send-off", plan(lines, head));
}

std::string hint(std::string const& lines, std::string const& head = "threshold 1:40\n") {
    return first_hint("send-off", plan(lines, head));
}

} // namespace

TEST_CASE("send-off: 5 s are left behind the expected time") {
    CHECK(send_off("4 x 100 on 1:53").empty());
    CHECK(send_off("4 x 100 on 1:52").empty());
    CHECK(send_off("4 x 100 on 1:51") == Found{"5: warning: a rep takes 1:44–1:50, the send-off is 1:51"});
    CHECK(hint("4 x 100 on 1:51") == "expected 1:47 leaves 4 s to breathe, 5 s is asked; try: on 1:55");
    CHECK(hint("4 x 100 on 1:47") == "expected 1:47 leaves 0 s to breathe, 5 s is asked; try: on 1:55");
    CHECK(hint("4 x 100 on 1:46") == "expected 1:47 is 0:01 over; try: on 1:55");
    CHECK(send_off("100 on 1:46").front() == "5: warning: the rep takes 1:44–1:50, the send-off is 1:46");
    CHECK(send_off("2 x 1min on 1:04").size() == 1);
    CHECK(send_off("2 x 1min on 1:05").empty());
}

TEST_CASE("send-off: another limit, or none") {
    CHECK(send_off("4 x 100 on 1:57", "threshold 1:40\nlimit send-off 10s\n").empty());
    CHECK(send_off("4 x 100 on 1:56", "threshold 1:40\nlimit send-off 10s\n").size() == 1);
    CHECK(send_off("4 x 100 on 1:47", "threshold 1:40\nlimit send-off 0s\n").empty());
    CHECK(send_off("4 x 100 on 1:46", "threshold 1:40\nlimit send-off 0s\n").size() == 1);
    CHECK(send_off("4 x 100 on 1:40", "threshold 1:40\nallow send-off \"they share the lane\"\n").empty());
}

TEST_CASE("send-off: without a pace only what is known") {
    CHECK(send_off("4 x 100 on 1:00", "").empty());
    CHECK(send_off("4 x 100 at 1:58 per 100 on 2:00", "").size() == 1);
    CHECK(send_off("2 x (100 + 50) on 1:00", "").empty());
}

TEST_CASE("send-off: the rep with least time is named") {
    CHECK(send_off("3 x 100 on 2:00, 1:52, 1:51").front() ==
          "5: warning: rep 3 takes 1:44–1:50, the send-off is 1:51");
    CHECK(hint("3 x 100 on 2:00, 1:52, 1:51") ==
          "expected 1:47 leaves 4 s to breathe, 5 s is asked; try 1:55 there");
    CHECK(send_off("50, 100, 50 on 1:50").front() ==
          "5: warning: rep 2 takes 1:44–1:50, the send-off is 1:50");
    CHECK(send_off("4 x 100 hard on 1:50, evens steady").front() ==
          "5: warning: rep 2 takes 1:44–1:50, the send-off is 1:50");
    CHECK(send_off("4 x 100 on 1:50, evens hard").front() ==
          "5: warning: rep 1 takes 1:44–1:50, the send-off is 1:50");
    CHECK(send_off("4 x 100 hard on 1:55, 1:50, 1:50, 1:55, last steady").empty());
    CHECK(send_off("4 x 100 hard on 1:55, 1:50, 1:50, 1:50, last steady").front() ==
          "5: warning: rep 4 takes 1:44–1:50, the send-off is 1:50");
}

TEST_CASE("send-off: rounds") {
    // 1:47, 10 s, 53.5 s: 2:50.5
    CHECK(send_off("3 x (100 rest 10s + 50) on 2:56").empty());
    CHECK(send_off("3 x (100 rest 10s + 50) on 2:55").front() ==
          "5: warning: a round takes 2:46–2:55, the send-off is 2:55");
    CHECK(send_off("3 x (100 rest 10s + 50) on 3:00, 2:56, 2:50").front() ==
          "5: warning: round 3 takes 2:46–2:55, the send-off is 2:50");
    // Its own send-offs hold the round up.
    CHECK(send_off("2 x (2 x 50 on 1:10) on 2:20").empty());
    CHECK(send_off("2 x (2 x 50 on 1:10) on 2:19").front() ==
          "5: warning: a round takes 2:20 with its own send-offs, the send-off is 2:19");
    CHECK(hint("2 x (2 x 50 on 1:10) on 2:19") == "expected 2:20 is 0:01 over; try: on 2:20");
    CHECK(send_off("2 x (2 x (2 x 50 on 58s))").front() ==
          "5: warning: a rep takes 0:52–0:55, the send-off is 0:58");
}

TEST_CASE("send-off: the slowest lane that swims the line, once") {
    std::string const two = "swimmer \"Ada\" threshold 1:40 lane 1\nswimmer \"Bo\" threshold 2:00 lane 2\n";
    CHECK(send_off("4 x 100 on 2:00", two).front() ==
          "6: warning: a rep takes 2:04–2:12 in lane 2, the send-off is 2:00");
    CHECK(send_off("4 x 100 on 1:40", two) ==
          Found{"6: warning: a rep takes 2:04–2:12 in lane 2, the send-off is 1:40"});
    CHECK(send_off("lane 1: 4 x 100 on 1:55\nlane 2: 4 x 100 on 2:15", two).empty());
    CHECK(send_off("lane 1: 4 x 100 on 1:50\nlane 2: 4 x 100 on 2:15", two).front() ==
          "6: warning: a rep takes 1:44–1:50, the send-off is 1:50");
}

TEST_CASE("send-off: in a set once, however often it is used") {
    auto const text = "pool 25m\nthreshold 1:40\nset \"quick\" = 4 x 100 on 1:45\n"
                      "session Tue\nmain\nuse \"quick\"\nuse \"quick\"\nsession Thu\nmain\nuse \"quick\"\n";
    CHECK(found("send-off", text) == Found{"3: warning: a rep takes 1:44–1:50, the send-off is 1:45"});
}
