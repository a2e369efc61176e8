#include "calc/totals.hpp"
#include "cards/card.hpp"
#include "cards/sheet.hpp"
#include "report/card_views.hpp"
#include "support/card_checks.hpp"
#include "support/generate.hpp"
#include "support/read_plan.hpp"

#include <catch2/catch.hpp>

#include <set>

using namespace lengthwise;

namespace {

/// How many cards were laid out, and how many were refused for want of room.
struct Count {
    int sessions = 0;
    int laid = 0;
    int several = 0;
    std::set<std::string> refused; ///< sizes
    int refusals = 0;
};

void check(report::Card const& card, cards::CardSize const& size, bool hole, Count& count) {
    support::FakeMeasure measure;
    auto const on_sheet = cards::size_on(size, cards::a4, cards::usual_margin);
    auto const laid = cards::lay_out(card, {on_sheet, 700, hole, false}, measure);
    INFO(size.name << (hole ? " with a hole" : ""));
    if (!laid.problem.empty()) {
        count.refused.insert(std::string{size.name});
        ++count.refusals;
        return;
    }
    for (auto const& front : laid.fronts) {
        REQUIRE(support::fault_of(front, 700, hole) == "");
    }
    REQUIRE(support::lost_on(laid, card) == "");
    ++count.laid;
    count.several += laid.fronts.size() > 1 ? 1 : 0;
}

Count check_sessions(int wanted, std::uint64_t seed) {
    Count count;
    for (; count.sessions < wanted; ++seed) {
        auto const text = test::generate({.seed = seed}).text;
        auto const read = support::read_plan(text);
        INFO("seed " << seed << "\n" << text);
        REQUIRE(read.error() == "");
        report::CardViews views{read.plan()};
        for (plan::Index i = 0; i < read.plan().sessions.size(); ++i) {
            auto const lanes = calc::numbers(calc::lanes_of(read.plan(), read.plan().sessions[i]));
            auto const card = views.card(i, lanes.empty() ? 0 : lanes.back());
            ++count.sessions;
            for (auto const& size : cards::card_sizes()) {
                check(card, size, i % 2 == 0, count);
            }
        }
    }
    return count;
}

/// No size from a quarter on may be too small for a session; on the small ones figures may be too wide.
void check(Count const& count) {
    for (auto const* size : {"whole", "half", "quarter", "a5", "a6", "4x6in"}) {
        CHECK(count.refused.count(size) == 0);
    }
    CHECK(count.refusals * 100 < count.laid);
    CHECK(count.several > 0);
}

} // namespace

TEST_CASE("on cards of all sizes texts stand inside, apart and large enough, and nothing is lost") {
    check(check_sessions(150, 1));
}

TEST_CASE("the same of 20 000 sessions", "[long]") {
    check(check_sessions(20'000, 1000));
}

TEST_CASE("a margin that is too small is found") {
    auto const read = support::read_plan(test::generate({.seed = 3}).text);
    report::CardViews views{read.plan()};
    support::FakeMeasure measure;
    auto const right = cards::size_on(*cards::find_card_size("quarter"), cards::a4, 6);
    cards::Size const wider{right.width + 2, right.height + 2};
    int found = 0;
    for (plan::Index i = 0; i < read.plan().sessions.size(); ++i) {
        auto laid = cards::lay_out(views.card(i, 0), {wider, 700, false, false}, measure);
        for (auto& front : laid.fronts) {
            REQUIRE(support::fault_of(front, 700, false) == "");
            front.size = right; // as if the edge at the right and the foot were 3 mm
            found += support::fault_of(front, 700, false).empty() ? 0 : 1;
        }
        CHECK(found >= static_cast<int>(laid.fronts.size()));
    }
    CHECK(found > 0);
}
