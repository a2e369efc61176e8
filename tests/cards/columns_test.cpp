#include "cards/columns.hpp"
#include "support/card_checks.hpp"

#include <catch2/catch.hpp>

#include <utility>

using namespace lengthwise;
using namespace lengthwise::cards;
using report::CardRow;

namespace {

Setting const quarter{{99, 142.5}, {4.48}, levels[0], false, false, false};

Columns columns(std::vector<CardRow> rows) {
    report::Card card;
    card.sections.emplace_back();
    card.sections.back().rows = std::move(rows);
    support::FakeMeasure measure;
    return columns_of(card, quarter, measure);
}

CardRow row(std::string amount, bool optional = false) {
    CardRow row;
    row.optional = optional;
    row.count = "4";
    row.amount = {std::move(amount)};
    return row;
}

CardRow group(std::vector<CardRow> rows) {
    CardRow group;
    group.kind = CardRow::Kind::group;
    group.rows = std::move(rows);
    return group;
}

} // namespace

TEST_CASE("a bar stands beside each group around a row, and beside what is optional") {
    auto const lane = bar_lane * quarter.scale.capital;
    auto const none = columns({row("50")});
    CHECK(none.lane == 0);

    auto const bars = [&](std::vector<CardRow> rows) {
        auto const some = columns(std::move(rows));
        CHECK(some.lane == Approx(lane));
        return (some.count_right - none.count_right) / lane;
    };
    CHECK(bars({row("50", true)}) == Approx(1));
    CHECK(bars({group({row("50")})}) == Approx(1));
    CHECK(bars({group({row("50", true)}), row("50")}) == Approx(2));
}

TEST_CASE("an amount wider than three tenths of the card does not push the others' words") {
    auto const usual = columns({row("50"), row("750")});
    CHECK(columns({row("50"), row("750"), row("100 lengths of 33 1/3 m")}).words == Approx(usual.words));
    CHECK(columns({row("50"), row("750"), row("1500")}).words > usual.words);
}
