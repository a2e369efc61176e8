#include "units/date.hpp"

#include <catch2/catch.hpp>

using namespace lengthwise;
using namespace std::chrono;

TEST_CASE("an ISO date is a day of the calendar", "[units]") {
    CHECK(parse_date("2027-06-13") == sys_days{2027y / June / 13});
    CHECK(parse_date("0001-01-01") == sys_days{1y / January / 1});
    CHECK(parse_date("9999-12-31") == sys_days{9999y / December / 31});
    CHECK(parse_date("1970-01-01") == sys_days{});
}

TEST_CASE("leap days follow the Gregorian rule", "[units]") {
    CHECK(parse_date("2024-02-29"));
    CHECK(parse_date("2000-02-29"));
    CHECK_FALSE(parse_date("2025-02-29"));
    CHECK_FALSE(parse_date("1900-02-29"));
    CHECK_FALSE(parse_date("2100-02-29"));
}

TEST_CASE("days that do not exist and other forms are no dates", "[units]") {
    auto const* const text = GENERATE(
        "", "2027", "2027-06", "2027-6-13", "2027-06-1", "27-06-13", "2027-00-13", "2027-13-01", "2027-06-00",
        "2027-06-31", "2024-02-30", "0000-01-01", "10000-01-01", "+2027-06-13", "-027-06-13", "2027/06/13",
        "13-06-2027", "20270613", "2027-W24-7", "2027-164", " 2027-06-13", "2027-06-13 ", "2027-06-13T00:00",
        "2027-06-1a", "2o27-06-13", "2027--6-13", "2027-+6-13", "٢٠٢٧-06");
    CAPTURE(text);
    CHECK_FALSE(parse_date(text));
}

TEST_CASE("a NUL byte is no digit", "[units]") {
    CHECK_FALSE(parse_date(std::string_view{"2027-06-1\0", 10}));
}

TEST_CASE("the calendar runs from year 1 to 9999", "[units]") {
    auto const first = sys_days{1y / January / 1};
    auto const last = sys_days{9999y / December / 31};
    CHECK(within_calendar(first));
    CHECK_FALSE(within_calendar(first - days{1}));
    CHECK(within_calendar(last));
    CHECK_FALSE(within_calendar(last + days{1}));
}
