#include "bench/random.hpp"
#include "calc/exact.hpp"

#include <boost/multiprecision/cpp_int.hpp>
#include <catch2/catch.hpp>

#include <limits>

namespace lengthwise::calc {
namespace {

using boost::multiprecision::cpp_int;
using boost::multiprecision::cpp_rational;

constexpr auto lowest = std::numeric_limits<std::int64_t>::min();
constexpr auto highest = std::numeric_limits<std::int64_t>::max();

/// The same value twice: reckoned by Exact, and by a library of numbers without bounds.
struct Pair {
    Exact ours;
    cpp_rational theirs;
};

Pair pair(std::int64_t numerator, std::int64_t denominator) {
    return {Exact{numerator, denominator}, cpp_rational{numerator} / denominator};
}

cpp_int floor(cpp_rational const& q) {
    cpp_int const down = numerator(q) / denominator(q);
    return cpp_rational{down} > q ? cpp_int{down - 1} : down;
}

std::int64_t clamped(cpp_int const& z) {
    return z < lowest ? lowest : z > highest ? highest : static_cast<std::int64_t>(z);
}

void check(Pair const& pair) {
    CAPTURE(pair.theirs.str());
    REQUIRE(pair.ours.floor() == clamped(floor(pair.theirs)));
    REQUIRE(pair.ours.rounded() == clamped(floor(pair.theirs + cpp_rational{1, 2})));
    REQUIRE(pair.ours.reduced() == pair.ours);
    REQUIRE(pair.ours.approximate() == Approx(pair.theirs.convert_to<double>()));
}

} // namespace

TEST_CASE("fractions are rounded down and half up, below 0 too") {
    CHECK(Exact{7, 2}.floor() == 3);
    CHECK(Exact{7, 2}.rounded() == 4);
    CHECK(Exact{-7, 2}.floor() == -4);
    CHECK(Exact{-7, 2}.rounded() == -3);
    CHECK(Exact{7, -2} == Exact{-7, 2});
    CHECK(Exact{10, 3}.rounded() == 3);
    CHECK(Exact{0, 5}.rounded() == 0);
    CHECK(Exact{12}.floor() == 12);
}

TEST_CASE("what passes 64 bits sticks at their end") {
    auto const large = Exact{highest} * Exact{highest} * Exact{highest};
    CHECK(large.rounded() == highest);
    CHECK((Exact{-1} * large).floor() == lowest);
    CHECK((large / large).rounded() == 1);
}

TEST_CASE("fractions of every size reckon like numbers without bounds") {
    bench::Random random{20'27};
    std::vector<Pair> values{pair(0, 1), pair(1, 1), pair(1, 3)};
    auto const figure = [&] {
        auto const bits = random.between(1, 62);
        std::int64_t value = 1;
        for (int i = 0; i < bits; ++i) {
            value = value * 2 + random.below(2);
        }
        return random.chance(30) ? -value : value;
    };
    for (int i = 0; i < 10'000; ++i) {
        if (values.size() > 40 || random.chance(20)) {
            values.push_back(pair(figure(), figure()));
        }
        auto const& a = values[static_cast<std::size_t>(random.below(static_cast<int>(values.size())))];
        auto const& b = values[static_cast<std::size_t>(random.below(static_cast<int>(values.size())))];
        REQUIRE((a.ours < b.ours) == (a.theirs < b.theirs));
        REQUIRE((a.ours == b.ours) == (a.theirs == b.theirs));
        Pair result;
        switch (random.below(4)) {
        case 0:
            result = {a.ours + b.ours, a.theirs + b.theirs};
            break;
        case 1:
            result = {a.ours - b.ours, a.theirs - b.theirs};
            break;
        case 2:
            result = {a.ours * b.ours, a.theirs * b.theirs};
            break;
        default:
            if (b.theirs == 0) {
                continue;
            }
            result = {a.ours / b.ours, a.theirs / b.theirs};
            break;
        }
        check(result);
        if (values.size() > 40) {
            values.erase(values.begin(), values.begin() + 20);
        }
        if (msb(denominator(result.theirs)) < 1'000) { // products of products grow without end
            values.push_back(result);
        }
    }
}

} // namespace lengthwise::calc
