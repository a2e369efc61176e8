#include "cards/flow.hpp"

#include <catch2/catch.hpp>

using namespace lengthwise::cards;

namespace {

using Starts = std::vector<std::size_t>;

/// Lines of 10 mm, a section each.
std::vector<BodyLine> lines(std::size_t count) {
    BodyLine line;
    line.advance = 10;
    line.rise = 10;
    line.cut = Cut::section;
    return std::vector<BodyLine>(count, line);
}

Rooms rooms(double first, double others) {
    Rooms rooms;
    rooms.alone = first;
    rooms.first = first;
    rooms.middle = others;
    rooms.last = others;
    return rooms;
}

} // namespace

TEST_CASE("a card that is just full is full, not over") {
    CHECK(flow(lines(2), rooms(20, 20)) == Starts{0});
    CHECK(flow(lines(4), rooms(20, 20)) == Starts{0, 2});
    CHECK(flow(lines(4), rooms(19, 19)) == Starts{0, 1, 2, 3});
    CHECK(flow(lines(2), rooms(9, 9)).empty());
}

TEST_CASE("the first card has the room of a first one") {
    CHECK(flow(lines(6), rooms(20, 40)) == Starts{0, 2}); // three each would be more even
}

TEST_CASE("cards are equally full by their share, not by their millimetres") {
    // Ten lines for 40 and 80 mm. Four and six leave 0 and 1/4 free, three and seven 1/4 and 1/8.
    CHECK(flow(lines(10), rooms(40, 80)) == Starts{0, 4});
    CHECK(flow(lines(6), rooms(40, 40)) == Starts{0, 3});
}
