#include "cards/sheet.hpp"
#include "report/card_views.hpp"
#include "support/card_checks.hpp"
#include "support/generate.hpp"
#include "support/read_plan.hpp"

#include <catch2/catch.hpp>

using namespace lengthwise;
using support::Hole;

namespace {

/// On the smallest cards figures may be too wide; from a quarter on every session has room.
void check(support::CardCount const& count) {
    CHECK(count.fault == "");
    for (auto const* size : {"whole", "half", "quarter", "a5", "a6", "4x6in"}) {
        CHECK(count.refused.count(size) == 0);
    }
    CHECK(count.refusals * 100 < count.laid);
    CHECK(count.several > 0);
    CHECK(count.backs > 0);
}

} // namespace

TEST_CASE("on cards of all sizes texts stand inside, apart and large enough, and nothing is lost") {
    support::FakeMeasure measure;
    check(support::check_cards(150, 1, measure));
}

TEST_CASE("the same of 20 000 sessions", "[long]") {
    support::FakeMeasure measure;
    check(support::check_cards(20'000, 1000, measure));
}

TEST_CASE("a margin that is too small is found") {
    auto const read = support::read_plan(test::generate({.seed = 3}).text);
    report::CardViews views{read.plan()};
    support::FakeMeasure measure;
    auto const right = cards::size_on(*cards::find_card_size("quarter"), cards::a4, 6);
    cards::Size const wider{right.width + 2, right.height + 2};
    int cards = 0;
    for (plan::Index i = 0; i < read.plan().sessions.size(); ++i) {
        auto laid = cards::lay_out(views.card(i, 0), {wider, 700, false, false}, measure);
        for (auto& front : laid.fronts) {
            ++cards;
            REQUIRE(support::fault_of(front, 700, Hole::none) == "");
            front.size = right; // as if the layout had kept 3 mm at the right and the foot
            CHECK(support::fault_of(front, 700, Hole::none) != "");
        }
    }
    CHECK(cards > 0);
}
