#include "units/spell.hpp"

#include <catch2/catch.hpp>

#include <limits>

using namespace lengthwise;
using namespace std::chrono;

namespace {

Distance metres(std::int64_t whole, std::int64_t numerator = 0, std::int64_t denominator = 1) {
    return Distance::units((whole * denominator + numerator) * Distance::per_metre / denominator);
}

Distance yards(std::int64_t whole, std::int64_t numerator = 0, std::int64_t denominator = 1) {
    return Distance::units((whole * denominator + numerator) * Distance::per_yard / denominator);
}

constexpr auto seconds_of = Duration::seconds;

} // namespace

TEST_CASE("whole distances have no point", "[units][spell]") {
    CHECK(spell::number(metres(0), Unit::metre) == "0");
    CHECK(spell::number(metres(200), Unit::metre) == "200");
    CHECK(spell::number(yards(25), Unit::yard) == "25");
    CHECK(spell::distance(metres(1500), Unit::metre) == "1500 m");
    CHECK(spell::distance(yards(25), Unit::yard) == "25 yd");
}

TEST_CASE("thirds and sixths are fractions, what ends is decimal", "[units][spell]") {
    CHECK(spell::number(metres(33, 1, 3), Unit::metre) == "33⅓");
    CHECK(spell::number(metres(266, 2, 3), Unit::metre) == "266⅔");
    CHECK(spell::number(metres(16, 1, 6), Unit::metre) == "16⅙");
    CHECK(spell::number(metres(16, 5, 6), Unit::metre) == "16⅚");
    CHECK(spell::number(metres(0, 1, 3), Unit::metre) == "⅓");
    CHECK(spell::number(metres(12, 1, 2), Unit::metre) == "12.5");
    CHECK(spell::number(metres(12, 1, 4), Unit::metre) == "12.25");
    CHECK(spell::number(yards(36, 2, 3), Unit::yard) == "36⅔");
    CHECK(spell::number(yards(25), Unit::metre) == "22.86");
    CHECK(spell::distance(metres(33, 1, 3), Unit::metre) == "33⅓ m");
}

TEST_CASE("a distance that two decimals do not hold has one, half up", "[units][spell]") {
    CHECK(spell::number(metres(10, 1, 12), Unit::metre) == "10.1");
    CHECK(spell::number(metres(10, 7, 24), Unit::metre) == "10.3");
    CHECK(spell::number(metres(12, 1, 8), Unit::metre) == "12.1");
    CHECK(spell::number(metres(25), Unit::yard) == "27.3");   // 27.3403
    CHECK(spell::number(metres(100), Unit::yard) == "109.4"); // 109.3613
    CHECK(spell::number(yards(45), Unit::metre) == "41.1");   // 41.148
    CHECK(spell::number(yards(175), Unit::metre) == "160.02");
}

TEST_CASE("what is no whole number does not look like one: up to four decimals", "[units][spell]") {
    CHECK(spell::number(metres(823), Unit::yard) == "900.0437");
    CHECK(spell::number(metres(1143, -1, 24), Unit::metre) == "1142.9583");
    // 1/30 000 m is 0.0000333 m, half a ten-thousandth is 1.5 units.
    CHECK(spell::number(Distance::units(1), Unit::metre) == "0");
    CHECK(spell::number(Distance::units(2), Unit::metre) == "0.0001");
    CHECK(spell::number(Distance::units(29'998), Unit::metre) == "0.9999");
    CHECK(spell::number(Distance::units(29'999), Unit::metre) == "1");
    // 0.00005 yd would be 1.3716 units: 1 lies below, 2 above.
    CHECK(spell::number(Distance::units(1), Unit::yard) == "0");
    CHECK(spell::number(Distance::units(2), Unit::yard) == "0.0001");
}

TEST_CASE("without signs a fraction is written out", "[units][spell]") {
    CHECK(spell::number(metres(266, 2, 3), Unit::metre, true) == "266 2/3");
    CHECK(spell::number(metres(0, 2, 3), Unit::metre, true) == "2/3");
    CHECK(spell::distance(yards(33, 1, 3), Unit::yard, true) == "33 1/3 yd");
    CHECK(spell::number(metres(12, 1, 2), Unit::metre, true) == "12.5");
}

TEST_CASE("a figure hangs its fraction outside the column", "[units][spell]") {
    auto const split = [](Distance d, bool ascii = false) {
        auto const [whole, hang] = spell::figure(d, Unit::metre, ascii);
        return whole + "|" + hang;
    };
    CHECK(split(metres(1400)) == "1400|");
    CHECK(split(metres(5833, 1, 3)) == "5833|⅓");
    CHECK(split(metres(5833, 1, 3), true) == "5833| 1/3");
    CHECK(split(metres(22, 43, 50)) == "22|.86");
    CHECK(split(metres(0, 1, 3)) == "|⅓");
    CHECK(split(Distance::units(59'999)) == "2|");
}

TEST_CASE("distances below 0 and at the ends of the range are spelled whole", "[units][spell]") {
    CHECK(spell::number(metres(-150), Unit::metre) == "-150");
    CHECK(spell::number(metres(-33, -1, 3), Unit::metre) == "-33⅓");
    CHECK(spell::number(metres(0, -1, 3), Unit::metre, true) == "-1/3");
    CHECK(spell::number(Distance::units(-1), Unit::metre) == "0");
    auto const most = Distance::units(std::numeric_limits<std::int64_t>::max());
    auto const least = Distance::units(std::numeric_limits<std::int64_t>::min());
    CHECK(spell::number(most, Unit::metre) == "307445734561825.9");
    CHECK(spell::number(least, Unit::metre) == "-307445734561825.9");
}

TEST_CASE("JSON gets metres to four decimals and no fraction signs", "[units][spell]") {
    CHECK(spell::json_metres(metres(1500)) == "1500");
    CHECK(spell::json_metres(metres(266, 2, 3)) == "266.6667");
    CHECK(spell::json_metres(metres(33, 1, 3)) == "33.3333");
    CHECK(spell::json_metres(yards(25)) == "22.86");
    CHECK(spell::json_metres(yards(1)) == "0.9144");
    CHECK(spell::json_metres(Distance::units(29'999)) == "1");
    CHECK(spell::json_metres({}) == "0");
}

TEST_CASE("JSON gets seconds to the millisecond", "[units][spell]") {
    CHECK(spell::json_seconds({}) == "0");
    CHECK(spell::json_seconds(seconds_of(90)) == "90");
    CHECK(spell::json_seconds(Duration::ms(90'500)) == "90.5");
    CHECK(spell::json_seconds(Duration::ms(1)) == "0.001");
    CHECK(spell::json_seconds(Duration::ms(-1'250)) == "-1.25");
}

TEST_CASE("a clock shows minutes and seconds, hours where there are some", "[units][spell]") {
    CHECK(spell::clock({}) == "0:00");
    CHECK(spell::clock(seconds_of(50)) == "0:50");
    CHECK(spell::clock(seconds_of(90)) == "1:30");
    CHECK(spell::clock(Duration::ms(725'500)) == "12:05.5");
    CHECK(spell::clock(Duration::ms(59'999)) == "0:59.999");
    CHECK(spell::clock(Duration::ms(3'599'999)) == "59:59.999");
    CHECK(spell::clock(seconds_of(3600)) == "1:00:00");
    CHECK(spell::clock(seconds_of(3723)) == "1:02:03");
    CHECK(spell::clock(Duration::hours(100)) == "100:00:00");
    CHECK(spell::clock(seconds_of(-30)) == "-0:30");
}

TEST_CASE("a duration takes its shortest words", "[units][spell]") {
    CHECK(spell::duration({}) == "0s");
    CHECK(spell::duration(seconds_of(20)) == "20s");
    CHECK(spell::duration(seconds_of(59)) == "59s");
    CHECK(spell::duration(seconds_of(60)) == "1min");
    CHECK(spell::duration(seconds_of(90)) == "1:30");
    CHECK(spell::duration(seconds_of(2700)) == "45min");
    CHECK(spell::duration(seconds_of(3600)) == "1h");
    CHECK(spell::duration(seconds_of(5400)) == "90min");
    CHECK(spell::duration(Duration::ms(12'500)) == "0:12.5");
    CHECK(spell::duration(seconds_of(3661)) == "1:01:01");
    CHECK(spell::duration(seconds_of(-20)) == "-20s");
}

TEST_CASE("a slot and a break are a number with its unit", "[units][spell]") {
    CHECK(spell::with_unit({}) == "0s");
    CHECK(spell::with_unit(seconds_of(90)) == "90s");
    CHECK(spell::with_unit(seconds_of(2700)) == "45min");
    CHECK(spell::with_unit(seconds_of(7200)) == "2h");
    CHECK(spell::with_unit(Duration::ms(500)) == "0.5s");
}

TEST_CASE("a range says its unit once where both ends have the same", "[units][spell]") {
    CHECK(spell::range({seconds_of(20), seconds_of(40)}) == "20–40s");
    CHECK(spell::range({seconds_of(0), seconds_of(40)}) == "0–40s");
    CHECK(spell::range({seconds_of(30), seconds_of(60)}) == "30s–1min");
    CHECK(spell::range({seconds_of(60), seconds_of(120)}) == "1–2min");
    CHECK(spell::range({seconds_of(60), seconds_of(90)}) == "1min–1:30");
    CHECK(spell::range({seconds_of(70), seconds_of(90)}) == "1:10–1:30");
    CHECK(spell::range({seconds_of(20), seconds_of(20)}) == "20s");
    CHECK(spell::range({seconds_of(20), seconds_of(40)}, true) == "20-40s");
}

TEST_CASE("running text has a blank before the unit", "[units][spell]") {
    CHECK(spell::spaced(seconds_of(2700)) == "45 min");
    CHECK(spell::spaced(seconds_of(90)) == "1:30");
    CHECK(spell::spaced(Range<Duration>{seconds_of(20), seconds_of(40)}) == "20–40 s");
    CHECK(spell::spaced(Range<Duration>{seconds_of(30), seconds_of(60)}, true) == "30 s-1 min");
}

TEST_CASE("times of day have two digits each", "[units][spell]") {
    CHECK(spell::time_of_day({0}) == "00:00");
    CHECK(spell::time_of_day({425}) == "07:05");
    CHECK(spell::time_of_day({1439}) == "23:59");
}

TEST_CASE("dates are spelled in English whatever the locale", "[units][spell]") {
    auto const april = sys_days{2027y / April / 29};
    CHECK(spell::iso(april) == "2027-04-29");
    CHECK(spell::day(april) == "Thu 29 April 2027");
    CHECK(spell::short_day(april) == "Thu 29 Apr");
    CHECK(spell::day_of_month(april) == "29 Apr");
    CHECK(spell::short_day(sys_days{2027y / May / 4}) == "Tue 4 May");
    CHECK(spell::iso(sys_days{1y / January / 1}) == "0001-01-01");
    CHECK(spell::day(sys_days{9999y / December / 31}) == "Fri 31 December 9999");
}

TEST_CASE("every day of a calendar cycle reads back as it was spelled", "[units][spell]") {
    // The Gregorian calendar repeats after 400 years, 146 097 days.
    int agreed = 0;
    for (auto day = sys_days{2000y / January / 1}; day < sys_days{2400y / January / 1}; day += days{1}) {
        agreed += parse_date(spell::iso(day)) == day ? 1 : 0;
    }
    CHECK(agreed == 146'097);
}
