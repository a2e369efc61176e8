#include "cards/wrap.hpp"
#include "support/card_checks.hpp"

#include <catch2/catch.hpp>

using namespace lengthwise;
using namespace lengthwise::cards;

namespace {

std::vector<std::string> lines(std::string_view text, double width) {
    support::FakeMeasure measure;
    return wrap(text, Weight::medium, width, measure);
}

} // namespace

TEST_CASE("text breaks at blanks") {
    CHECK(lines("", 10).empty());
    CHECK(lines("one hand", 100) == std::vector<std::string>{"one hand"});
    CHECK(lines("aaaa bbbb cccc", 5.4) == std::vector<std::string>{"aaaa bbbb", "cccc"}); // 2.48 + 0.3 + 2.48
    CHECK(lines("aaaa bbbb cccc", 5.2) == std::vector<std::string>{"aaaa", "bbbb", "cccc"});
}

TEST_CASE("a word that no line holds is broken between characters") {
    CHECK(lines("aaaaaaa", 2) == std::vector<std::string>{"aaa", "aaa", "a"});
    CHECK(lines("ゆっくり長く", 2.5) == std::vector<std::string>{"ゆっ", "くり", "長く"});
    CHECK(lines("aé", 0.1).size() == 2); // the accent stays with its letter
}

TEST_CASE("a line that is just full is full, its blanks counted") {
    support::FakeMeasure measure;
    auto const just = measure.width("aaaa", Weight::medium) + measure.width(" ", Weight::medium) +
                      measure.width("bbbb", Weight::medium);
    CHECK(lines("aaaa bbbb", just) == std::vector<std::string>{"aaaa bbbb"});
    CHECK(lines("aaaa bbbb", just - 0.01) == std::vector<std::string>{"aaaa", "bbbb"});
}

TEST_CASE("lines of a note are about equally long, and no more than they have to be") {
    support::FakeMeasure measure;
    CHECK(wrap_evenly("aaaa aaaa aaaa aaaa aaaa", Weight::medium, 12, measure) ==
          std::vector<std::string>{"aaaa aaaa aaaa", "aaaa aaaa"});
    CHECK(wrap_evenly("放松慢慢游放松慢慢游 aa", Weight::medium, 6, measure).size() == 2);
}

TEST_CASE("pieces stay whole where there is room") {
    support::FakeMeasure measure;
    auto const flowed = flow_pieces(
        {{"aaaa", Weight::medium}, {"bbbb", Weight::semibold}, {"cccc", Weight::medium}}, 7.5, measure);
    REQUIRE(flowed.size() == 2);
    CHECK(flowed[0].size() == 4); // two pieces, a point between and one at the end
    CHECK(flowed[1].front().piece.words == "cccc");
    for (auto const& line : flowed) {
        CHECK(line.back().at + line.back().width <= 7.5);
    }
}

TEST_CASE("a piece needs room for the point behind it, the last one does not") {
    support::FakeMeasure measure;
    // 2.48 for four letters, 0.3 for a blank; a blank and a point take 0.3 and the point's own width.
    auto const joint = measure.width(" ·", Weight::medium);
    auto const two = 2.48 + joint + 0.3 + 2.48;
    auto const on_the_first = [&](double width) {
        std::vector<Piece> const pieces(3, {"aaaa", Weight::medium});
        return flow_pieces(pieces, width + 0.001, measure).front().size();
    };
    CHECK(on_the_first(two) == 2); // one and its point: a second one's point would stand over the edge
    CHECK(on_the_first(two + joint) == 4);
    CHECK(flow_pieces({{"aaaa", Weight::medium}, {"aaaa", Weight::medium}}, two + 0.001, measure).size() ==
          1);
}
