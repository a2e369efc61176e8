#include "report/deck_text.hpp"
#include "report/deck_view.hpp"
#include "report/width.hpp"
#include "support/expand.hpp"
#include "support/generate.hpp"
#include "support/read_plan.hpp"
#include "tailor/pool.hpp"

#include <catch2/catch.hpp>

#include <array>
#include <optional>
#include <string_view>

using namespace lengthwise;

namespace {

void check_width(std::string_view text) {
    for (std::size_t at = 0; at < text.size();) {
        auto const end = text.find('\n', at);
        REQUIRE(end != std::string_view::npos);
        REQUIRE(report::cells(text.substr(at, end - at)) <= 80);
        at = end + 1;
    }
}

/// What the lane swims, added up rep by rep.
calc::Totals unrolled(plan::Plan const& plan, plan::Session const& session, int lane, bool optional) {
    support::Adder adder{plan};
    support::expand(plan, session, {lane, optional},
                    [&](support::ExpandedRep const& rep) { adder.add(rep); });
    return adder.totals();
}

/// Rows of a lane add up to what its reps add up to, and each runs on from the row before.
void check_sums(report::Deck const& deck, plan::Plan const& plan, plan::Session const& session) {
    for (std::size_t place = 0; place < deck.lanes.size(); ++place) {
        calc::Totals rows;
        calc::Totals optional;
        Distance last;
        for (auto const& section : deck.sections) {
            for (auto const& row : section.rows) {
                auto& sum = row.kind == report::DeckRow::Kind::optional ? optional : rows;
                if (row.swum[place]) {
                    sum.lengths += row.lengths;
                    sum.timed += row.timed;
                }
                REQUIRE(row.so_far[place] >= last);
                last = row.so_far[place];
            }
        }
        auto const reps = unrolled(plan, session, deck.lanes[place].lane, false);
        REQUIRE(deck.lanes[place].swum == reps);
        REQUIRE(last == reps.distance);
        REQUIRE(rows.lengths == reps.lengths);
        REQUIRE(rows.timed == reps.timed);
        auto const more = unrolled(plan, session, deck.lanes[place].lane, true);
        REQUIRE(deck.lanes[place].if_time == more);
        REQUIRE(optional.lengths == more.lengths);
    }
}

std::array<Pool, 3> const elsewhere{Pool::of(Distance::yards(25), Unit::yard),
                                    Pool::of(Distance::metres(50), Unit::metre),
                                    Pool::of(Distance::units(1'000'000), Unit::metre)};

/// Nobody, as many as asked for, or those the plan names.
std::optional<report::DeckQueue> queue(std::uint64_t seed) {
    auto const some = seed % 4 == 1 ? std::optional{static_cast<int>(2 + seed % 9)} : std::nullopt;
    return seed % 2 == 0 ? std::nullopt : std::optional{report::DeckQueue{Duration::seconds(7), some}};
}

/// In each lane no row leaves before the one above it.
void check_clock(report::Deck const& deck) {
    for (std::size_t place = 0; place < deck.lanes.size(); ++place) {
        Duration last;
        bool known = true;
        for (auto const& section : deck.sections) {
            for (auto const& row : section.rows) {
                if (row.kind != report::DeckRow::Kind::line || !row.swum[place]) {
                    REQUIRE_FALSE(row.start[place]);
                    continue;
                }
                known = known && row.start[place];
                REQUIRE(known == row.start[place].has_value());
                REQUIRE(row.start[place].value_or(last) >= last);
                last = row.start[place].value_or(last);
            }
        }
        auto const& takes = deck.clock.shown[place].takes;
        REQUIRE((!takes || takes->expected >= last));
    }
}

void check_seed(std::uint64_t seed) {
    auto const made = test::generate({.seed = seed});
    auto const read = support::read_plan(made.text);
    INFO("seed " << seed << "\n" << made.text);
    REQUIRE(read.error() == "");
    auto const& plan = read.plan();
    for (plan::Index i = 0; i < plan.sessions.size(); ++i) {
        report::DeckOptions const options{.session = i, .ascii = seed % 3 == 0, .queue = queue(seed)};
        report::DeckStyle const style{.ascii = options.ascii};
        auto const deck = report::deck_view(plan, options);
        check_sums(deck, plan, plan.sessions[i]);
        check_clock(deck);
        check_width(report::deck_text(deck, style, report::Paint{}));

        auto const tailored = tailor::fit(plan, i, {.pool = elsewhere[(seed + i) % elsewhere.size()]});
        auto const moved = report::deck_view(plan, options, tailored);
        check_sums(moved, tailored.plan, tailored.session());
        check_clock(moved);
        check_width(report::deck_text(moved, style, report::Paint{}));
    }
}

} // namespace

TEST_CASE("decks of generated plans add up and keep to 80 columns", "[deck]") {
    for (std::uint64_t seed = 0; seed < 400; ++seed) {
        check_seed(seed);
    }
}

TEST_CASE("decks of 20 000 generated plans add up and keep to 80 columns", "[deck][long]") {
    for (std::uint64_t seed = 400; seed < 20'400; ++seed) {
        check_seed(seed);
    }
}
