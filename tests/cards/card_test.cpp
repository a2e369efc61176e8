#include "cards/back.hpp"
#include "cards/card.hpp"
#include "report/card_views.hpp"
#include "support/card_checks.hpp"
#include "support/read_plan.hpp"

#include <catch2/catch.hpp>

#include <algorithm>

using namespace lengthwise;
using namespace lengthwise::cards;

namespace {

Size const quarter{99, 142.5};

Laid laid(std::string const& plan, Wanted const& wanted, int lane = 0) {
    static support::FakeMeasure measure;
    auto const read = support::read_plan(plan);
    REQUIRE(read.error() == "");
    report::CardViews views{read.plan()};
    return lay_out(views.card(0, lane), wanted, measure);
}

std::vector<Text> texts(Picture const& picture) {
    std::vector<Text> found;
    for (auto const& mark : picture.marks) {
        if (auto const* const text = std::get_if<Text>(&mark)) {
            found.push_back(*text);
        }
    }
    return found;
}

Text text(Picture const& picture, std::string_view words) {
    auto const all = texts(picture);
    auto const found = std::find_if(all.begin(), all.end(), [&](Text const& t) { return t.words == words; });
    INFO(words);
    REQUIRE(found != all.end());
    return *found;
}

bool has(Picture const& picture, std::string_view words) {
    auto const all = texts(picture);
    return std::any_of(all.begin(), all.end(), [&](Text const& t) { return t.words == words; });
}

std::string const one_item = "pool 25m\nsession \"Short\"\n  main\n    100 crawl\n";

std::string many(int lines) {
    std::string plan = "pool 25m\nthreshold 1:55 per 100m\nsession Tue 07:00 \"Long\"\n  main\n";
    for (int i = 0; i < lines; ++i) {
        plan += "    4 x 50 crawl steady rest 20s\n";
    }
    return plan;
}

} // namespace

TEST_CASE("figures line up: counts at the right, distances at the left of ×, lengths at the edge") {
    auto const card =
        laid("pool 25m\nsession \"One\"\n  main\n    12 x 50 crawl\n    4 x 100 back\n    400 breast\n",
             {quarter, 700, false, false});
    REQUIRE(card.fronts.size() == 1);
    auto const& front = card.fronts.front();
    CHECK(text(front, "12").right() == Approx(text(front, "4").right()));
    CHECK(text(front, "50").left() == Approx(text(front, "400").left()));
    CHECK(text(front, "100").left() == Approx(text(front, "400").left()));
    CHECK(text(front, "crawl").left() == Approx(text(front, "breast").left()));
    CHECK(text(front, "24").right() == Approx(94)); // 12 x 2 lengths, 5 mm from the edge
    CHECK(text(front, "1400 m").left() == Approx(5));
    CHECK(text(front, "56").right() == Approx(94)); // all lengths under their column
}

TEST_CASE("type is as large as has room, within what reads well") {
    auto const few = laid(one_item, {quarter, 700, false, false});
    CHECK(few.scale.capital == Approx(height_of_arc(700, 31)));
    auto const full = laid(many(11), {quarter, 700, false, false});
    CHECK(full.scale.capital < few.scale.capital);
    CHECK(full.scale.capital >= height_of_arc(700, 22) * 0.9999);
}

TEST_CASE("what is read from further off is larger") {
    auto const far = laid(many(8), {quarter, 1500, false, false});
    CHECK(laid(many(8), {quarter, 700, false, false}).fronts.size() == 1);
    CHECK(far.fronts.size() > 1);
    CHECK(far.scale.capital >= height_of_arc(1500, 22) * 0.9999);
}

TEST_CASE("what does not fit goes on on a second card, which says from where") {
    auto const two = laid(many(24), {quarter, 700, false, false});
    REQUIRE(two.fronts.size() == 2);
    CHECK(has(two.fronts[0], "1/2"));
    CHECK(has(two.fronts[0], "on to 2/2"));
    CHECK(has(two.fronts[1], "main"));
    auto const parts = texts(two.fronts[1]);
    CHECK(std::any_of(parts.begin(), parts.end(),
                      [](Text const& t) { return t.words.starts_with("from 1/2: "); }));
    CHECK(has(two.fronts[1], "4800 m")); // 24 x 200: the whole, not this card's own
}

TEST_CASE("a card that nothing fits on is refused") {
    CHECK_FALSE(laid(one_item, {{74, 105}, 3000, false, false}).problem.empty());
}

TEST_CASE("sums that have no room beside each other are refused") {
    auto const* const plan = "pool 25yd\nsession \"Mixed\"\n  main\n    4000 x 237.13m\n";
    CHECK(laid(plan, {quarter, 1500, false, false}).problem == "is too wide for");
    auto const nearer = laid(plan, {quarter, 700, false, false});
    REQUIRE(nearer.fronts.size() == 1);
    CHECK(support::fault_of(nearer.fronts.front(), 700, support::Hole::none) == "");
}

TEST_CASE("leave times stand before each line where no line breaks for them") {
    auto const half = laid(many(3), {{142.5, 198}, 700, false, false});
    CHECK(text(half.fronts.front(), "07:00").left() == Approx(5));
    auto const untimed = laid(one_item, {{142.5, 198}, 700, false, false});
    CHECK_FALSE(has(untimed.fronts.front(), "07:00"));
}

TEST_CASE("a group has a bar from its count to its last line") {
    auto const card = laid("pool 25m\nsession \"One\"\n  main\n    3 x (100 crawl + 50 back) rest 40s\n",
                           {quarter, 700, false, false});
    auto const& front = card.fronts.front();
    auto const head = text(front, "3 ×");
    auto const end = text(front, "rest 40s");
    int bars = 0;
    for (auto const& mark : front.marks) {
        auto const* const line = std::get_if<Line>(&mark);
        if (line != nullptr && line->from.x == line->to.x && line->width > 1) {
            ++bars;
            CHECK(line->from.y > head.at.y);
            CHECK(line->to.y > end.at.y - 1);
            CHECK(line->from.x < end.left());
        }
    }
    CHECK(bars == 1);
    CHECK(text(front, "18").weight == Weight::semibold); // 3 x (4 + 2) lengths
    CHECK(text(front, "4").weight == Weight::medium);    // those of one round
}

TEST_CASE("the hole is at the right in front and at the left behind, and no text is in it") {
    support::FakeMeasure measure;
    auto const read =
        support::read_plan("pool 25m\nthreshold 1:55 per 100m\nswimmer \"Ada\" threshold 1:50 per 100m\n"
                           "session \"A name that is long enough for two lines\"\n  main\n    400 crawl\n");
    report::CardViews views{read.plan()};
    auto const card = views.card(0, 0, report::BackKind::pace);
    auto const front = lay_out(card, {quarter, 700, true, true}, measure);
    auto const backs = backs_of(card, front.strip, quarter, 700, true, measure);
    REQUIRE(backs.size() == 1);
    auto const ring = [](Picture const& picture) {
        auto const found = std::find_if(picture.marks.begin(), picture.marks.end(),
                                        [](Mark const& mark) { return std::holds_alternative<Ring>(mark); });
        REQUIRE(found != picture.marks.end());
        return std::get<Ring>(*found).centre;
    };
    CHECK(ring(front.fronts.front()).x == Approx(99 - ring(backs.front()).x));
    CHECK(support::fault_of(front.fronts.front(), 700, support::Hole::right) == "");
    for (auto const& t : texts(backs.front())) {
        CHECK((t.at.y - 0.727 * t.em >= 14 || t.left() >= 14));
    }
    CHECK(has(backs.front(), "400 m at the walls"));
    CHECK(has(backs.front(), "Ada"));
    CHECK(has(backs.front(), "swum"));
}
