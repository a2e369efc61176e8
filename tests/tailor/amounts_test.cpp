#include "tailor/amounts.hpp"

#include <catch2/catch.hpp>

#include <numeric>
#include <random>

using namespace lengthwise;
using tailor::Fit;

namespace {

constexpr auto third = Distance::units(1'000'000); // 33 1/3 m
Pool const m25 = Pool::of(Distance::metres(25), Unit::metre);
Pool const m50 = Pool::of(Distance::metres(50), Unit::metre);
Pool const m33 = Pool::of(third, Unit::metre);
Pool const yd25 = Pool::of(Distance::yards(25), Unit::yard);
Pool const unsaid;

Fit between(Pool const& from, Pool const& to) {
    return {from, to, 100, Distance::metres(750)};
}
Fit share(Pool const& pool, std::uint32_t percent) {
    return {pool, pool, percent, Distance::metres(750)};
}
std::int64_t m(Distance distance) {
    REQUIRE(distance.units() % Distance::per_metre == 0);
    return distance.units() / Distance::per_metre;
}
std::int64_t yd(Distance distance) {
    REQUIRE(distance.units() % Distance::per_yard == 0);
    return distance.units() / Distance::per_yard;
}
std::vector<Distance> metres(std::vector<std::int64_t> const& figures) {
    std::vector<Distance> all;
    for (auto const figure : figures) {
        all.push_back(Distance::metres(figure));
    }
    return all;
}
std::vector<std::int64_t> in_yards(std::vector<Distance> const& amounts) {
    std::vector<std::int64_t> figures;
    for (auto const amount : amounts) {
        figures.push_back(yd(amount));
    }
    return figures;
}

} // namespace

TEST_CASE("a rep takes the nearest lap of the other pool", "[tailor]") {
    auto const fit = between(m25, yd25);
    CHECK(yd(tailor::rep(Distance::metres(50), fit)) == 50);
    CHECK(yd(tailor::rep(Distance::metres(100), fit)) == 100);              // 109.4 yd
    CHECK(yd(tailor::rep(Distance::metres(200), fit)) == 200);              // 218.7 yd
    CHECK(yd(tailor::rep(Distance::metres(300), fit)) == 350);              // 328.1 yd
    CHECK(yd(tailor::rep(Distance::metres(400), fit)) == 450);              // 437.4 yd
    CHECK(m(tailor::rep(Distance::yards(450), between(yd25, m25))) == 400); // 411.5 m
}

TEST_CASE("a lap is one length in pools of 40 m or more", "[tailor]") {
    CHECK(m(tailor::rep(Distance::metres(150), between(m25, m50))) == 150);
    CHECK(m(tailor::rep(Distance::metres(150), between(m50, m25))) == 150);
    CHECK(tailor::rep(Distance::metres(150), between(m25, m33)) == third * 4); // 2.25 laps of 66 2/3
}

TEST_CASE("a rep is one lap at least, the smaller of two as near", "[tailor]") {
    CHECK(m(tailor::rep(Distance::metres(10), between(unsaid, m25))) == 50);
    CHECK(tailor::rep(Distance::metres(100), between(m25, m33)) == third * 2); // 1.5 laps
    CHECK(tailor::rep(Distance::metres(101), between(unsaid, m33)) == third * 4);
}

TEST_CASE("a rep that ends at the far wall takes the nearest length", "[tailor]") {
    CHECK(yd(tailor::rep(Distance::metres(25), between(m25, yd25))) == 25);
    CHECK(yd(tailor::rep(Distance::metres(75), between(m25, yd25))) == 75); // 82.0 yd
    CHECK(m(tailor::rep(Distance::metres(25), between(m25, m50))) == 50);
    CHECK(tailor::rep(Distance::metres(75), between(m25, m33)) == third * 2);
    CHECK(m(tailor::rep(Distance::metres(110), between(m25, m50))) == 100); // no wall of its own
}

TEST_CASE("reps of race distance and above are rounded up", "[tailor]") {
    CHECK(yd(tailor::rep(Distance::metres(750), between(m25, yd25))) == 850); // 820.2 yd
    CHECK(yd(tailor::rep(Distance::metres(800), between(m25, yd25))) == 900); // 874.9 yd
    CHECK(yd(tailor::rep(Distance::metres(700), between(m25, yd25))) == 750); // 765.5 yd, below the race
    CHECK(m(tailor::rep(Distance::metres(750), between(m25, m50))) == 750);
    CHECK(tailor::rep(Distance::metres(750), between(m25, m33)) == third * 24);
    CHECK(m(tailor::rep(Distance::metres(750), share(m25, 75))) == 600); // 562.5 m
    CHECK(m(tailor::rep(Distance::metres(700), share(m25, 75))) == 500); // 525 m
}

TEST_CASE("a share of a rep is whole laps too", "[tailor]") {
    CHECK(m(tailor::rep(Distance::metres(200), share(m25, 80))) == 150);
    CHECK(m(tailor::rep(Distance::metres(100), share(m25, 80))) == 100); // 1.6 laps
    CHECK(m(tailor::rep(Distance::metres(25), share(m25, 80))) == 25);
    CHECK(m(tailor::rep(Distance::metres(100), share(unsaid, 33))) == 33);
    Fit const both{m25, yd25, 80, Distance{}};
    CHECK(yd(tailor::rep(Distance::metres(500), both)) == 450); // 437.4 yd
}

TEST_CASE("pieces stay whole laps in proportion, and no more than before", "[tailor]") {
    auto const fit = between(m25, yd25);
    auto const metre = [](std::int64_t n) { return Distance::metres(n); };
    CHECK(yd(*tailor::piece(metre(250), metre(750), Distance::yards(850), fit)) == 300); // 283.3 yd
    CHECK(yd(*tailor::piece(metre(75), metre(300), Distance::yards(350), fit)) ==
          100); // 87.5: 5 pieces of 75
    CHECK(yd(*tailor::piece(metre(25), metre(50), Distance::yards(50), fit)) == 25);
    CHECK_FALSE(tailor::piece(metre(25), metre(50), metre(50), between(m25, m50)));
    CHECK(m(*tailor::piece(metre(75), metre(100), metre(100), between(m25, m50))) == 50);
    CHECK(m(*tailor::piece(metre(100'000 - 25), metre(100'000), metre(99'950), share(m25, 99))) == 99'925);
}

TEST_CASE("parts stay in proportion, and the last takes the remainder", "[tailor]") {
    auto const parts_of = [](std::vector<std::int64_t> const& written, std::int64_t from, std::int64_t to) {
        auto const dealt =
            tailor::parts(metres(written), Distance::metres(from), Distance::yards(to), between(m25, yd25));
        REQUIRE(dealt);
        return in_yards(*dealt);
    };
    using Figures = std::vector<std::int64_t>;
    CHECK(parts_of({25, 25}, 50, 50) == Figures{25, 25});
    CHECK(parts_of({25, 25}, 200, 200) == Figures{25, 25}); // still four times
    CHECK(parts_of({250, 250, 250}, 750, 850) == Figures{275, 275, 300});
    CHECK(parts_of({10, 15}, 25, 25) == Figures{10, 15});
    CHECK(parts_of({15, 35}, 300, 350) == Figures{15, 35}); // now seven times
    CHECK(parts_of({1, 299}, 300, 350) == Figures{1, 349});
    CHECK(parts_of({100, 200}, 300, 350) == Figures{125, 225}); // 116.7 yd
    // Four times what makes 42 lengths are 10.5 each; 7 and 14 are as near, and go into 42.
    CHECK(parts_of({25, 50}, 300, 1050) == Figures{50, 125});
}

TEST_CASE("parts that were lengths are lengths again", "[tailor]") {
    auto const dealt = tailor::parts(metres({25, 25}), Distance::metres(200), third * 6, between(m25, m33));
    REQUIRE(dealt);
    CHECK(*dealt == std::vector{third, third});
}

TEST_CASE("parts inside a length keep the proportion to a twenty-fourth", "[tailor]") {
    auto const dealt = tailor::parts(metres({20, 30}), Distance::metres(50), third * 2, between(m25, m33));
    REQUIRE(dealt);
    CHECK(*dealt == std::vector{Distance::units(800'000), Distance::units(1'200'000)}); // 26 2/3, 40
}

TEST_CASE("a split is given up only where the rep has no room for its parts", "[tailor]") {
    std::vector<Distance> const crumbs(600, Distance::units(1250));
    CHECK(tailor::parts(crumbs, Distance::metres(25), Distance::metres(25), between(m25, m25)));
    CHECK_FALSE(tailor::parts(crumbs, Distance::metres(25), Distance::metres(5), between(m25, m25)));
}

TEST_CASE("whatever is made to fit is whole lengths, pieces that fit, parts that add up", "[tailor]") {
    std::mt19937 chance{20271};
    auto const any = [&](int low, int high) { return std::uniform_int_distribution{low, high}(chance); };
    std::vector<Pool> const pools{m25,
                                  m50,
                                  m33,
                                  yd25,
                                  Pool::of(Distance::units(1'005'840), Unit::yard),
                                  Pool::of(Distance::units(378'000), Unit::metre), // 12.6 m
                                  Pool::of(Distance::units(1143 * 601), Unit::yard)};
    for (int turn = 0; turn < 20'000; ++turn) {
        auto const& from = pools[std::size_t(any(0, 6))];
        Fit const fit{from, pools[std::size_t(any(0, 6))], std::uint32_t(any(20, 150)),
                      Distance::metres(any(0, 1) * 750)};
        auto const lengths = any(2, 60);
        auto const written = from.length * lengths;
        auto const now = tailor::rep(written, fit);
        REQUIRE(Distance::divides(fit.to.length, now));
        REQUIRE(now >= fit.to.length);
        if (!fit.race.zero() && written >= fit.race) {
            REQUIRE(now.units() * 100 >= written.units() * std::int64_t{fit.percent});
        }

        auto const broken = from.length * any(1, lengths - 1);
        if (auto const piece = tailor::piece(broken, written, now, fit)) {
            REQUIRE(Distance::divides(fit.to.length, *piece));
            REQUIRE(*piece < now);
            REQUIRE(Distance::ceiling(now, *piece) <=
                    std::max(Distance::ceiling(written, broken), std::int64_t{2}));
        } else {
            REQUIRE(now == fit.to.length);
        }

        auto const times = any(1, lengths);
        if (lengths % times == 0 && lengths / times > 1) {
            auto const first = from.length * any(1, lengths / times - 1);
            auto const dealt =
                tailor::parts({first, from.length * (lengths / times) - first}, written, now, fit);
            REQUIRE(dealt);
            REQUIRE(dealt->size() == 2);
            auto const sum = std::accumulate(dealt->begin(), dealt->end(), Distance{});
            REQUIRE(Distance::divides(sum, now));
            REQUIRE(std::min(dealt->front(), dealt->back()) > Distance{});
        }
    }
}
