#include "support/found.hpp"

#include <catch2/catch.hpp>

#include <string>

using lengthwise::support::first_hint;
using lengthwise::support::found;
using Found = std::vector<std::string>;

namespace {

std::string in_pool(std::string const& pool, std::string const& lines) {
    return "pool " + pool + "\nsession Tue\nmain\n" + lines;
}

Found home_wall(std::string const& pool, std::string const& lines) {
    return found("home-wall", in_pool(pool, lines));
}

} // namespace

TEST_CASE("home-wall: an odd number of lengths ends at the far wall") {
    CHECK(home_wall("25m", "350\n").empty());
    CHECK(home_wall("25m", "375 crawl steady\n") == Found{"4: note: 15 lengths end at the far wall"});
    CHECK(home_wall("25m", "400\n").empty());
    CHECK(first_hint("home-wall", in_pool("25m", "375\n")) ==
          "14 or 16 lengths (350 or 400 m) end at the start");
    CHECK(home_wall("25m", "25\n") == Found{"4: note: 1 length ends at the far wall"});
    CHECK(first_hint("home-wall", in_pool("25m", "25\n")) == "2 lengths (50 m) end at the start");
}

TEST_CASE("home-wall: the line counts, not its rep") {
    CHECK(home_wall("25m", "4 x 25\n").empty());
    CHECK(home_wall("25m", "5 x 25\n").size() == 1);
    CHECK(home_wall("25m", "3 x (50 + 25)\n").size() == 1);
    CHECK(home_wall("25m", "2 x (50 + 25)\n").empty());
}

TEST_CASE("home-wall: a line that brings the lane back is left alone") {
    CHECK(home_wall("25m", "75\n25\n100\n") == Found{"4: note: 3 lengths end at the far wall"});
    CHECK(home_wall("25m", "75\n25\n25\n").size() == 2);
}

TEST_CASE("home-wall: each lane has its wall") {
    CHECK(home_wall("25m", "lane 1: 75\nlane 2: 100\nlane 1: 25\nlane 2: 50\n").size() == 1);
    CHECK(home_wall("25m", "lane 1: 75\nlane 2: 100\n25\n").size() == 2); // back for 1, away for 2
    CHECK(home_wall("25m", "lane 2: 75\nlane 1: 100\n25\n").size() == 2); // back for 2, away for 1
}

TEST_CASE("home-wall: in pools of 40 m and more both walls will do") {
    CHECK(home_wall("39m", "1 lengths\n").size() == 1);
    CHECK(home_wall("40m", "1 lengths\n").empty());
    CHECK(home_wall("50m", "150\n").empty());
}

TEST_CASE("home-wall: what ends between the walls is another rule's") {
    CHECK(home_wall("25m", "110\n").empty());
}

TEST_CASE("home-wall: allowed") {
    CHECK(found("home-wall", "pool 25m\nallow home-wall\nsession Tue\nmain\n75\n").empty());
}
