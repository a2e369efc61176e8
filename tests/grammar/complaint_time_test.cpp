#include "support/complaints.hpp"

#include <catch2/catch.hpp>

using lengthwise::test::check_files;
using lengthwise::test::check_lines;

TEST_CASE("times that the notation does not have", "[grammar]") {
    check_lines({
        {"4 x 50 rest 15", "1:13 syntax-time: 15 has no unit = try: rest 15s"},
        {"4 x 50 rest 9 1/3-60s", "1:13 syntax-time: 9 1/3-60s is no range of times = try: 9-60s"},
        {"4 x 50 rest 15 on 50 hold 95", "1:13 syntax-time: 15 has no unit = try: rest 15s\n"
                                         "1:19 syntax-time: 50 has no unit = try: on 0:50\n"
                                         "1:27 syntax-time: 95 has no unit = try: hold 1:35"},
        {"100 on 130", "1:8 syntax-time: 130 has no unit = try: on 1:30"},
        {"pause 2", "1:7 syntax-time: 2 has no unit = try: pause 2min"},
        {"pause 30", "1:7 syntax-time: 30 has no unit = try: pause 30s"},
        {"50 threshold plus 5", "1:19 syntax-time: 5 has no unit = try: plus 5s"},
        {"50 at 95", "1:7 syntax-time: 95 has no unit = try: at 95%"},
        {"50 at 130", "1:7 syntax-time: 130 has no unit = try: at 1:30 per 100"},
        {"50 hold 52", "1:9 syntax-time: 52 has no unit = try: hold 0:52"},
        {"3 x 50 on 1:10, 65", "1:17 syntax-time: 65 has no unit = try: 1:05"},
        {"750 broken at 250 for 15", "1:23 syntax-time: 15 has no unit = try: for 15s"},
        {"750 broken at 250 for 0:15",
         R"(1:23 syntax-time: 0:15 is a clock; "for" takes a number and its unit = try: for 15s)"},
        {"750 broken at 250 for 2:00",
         R"(1:23 syntax-time: 2:00 is a clock; "for" takes a number and its unit = try: for 2min)"},
        {"4 x 50 on 0:00", "1:11 syntax-time: 0:00 is no time at all"},
        {"0s", "1:1 syntax-time: 0s is no time at all"},
        {"50 hold 0:00", "1:9 syntax-time: 0:00 is no time at all"},
        {"1:60", "1:1 syntax-time: 1:60 has 60 behind a colon, the most is 59 = try: 2:00"},
        {"1:75:00", "1:1 syntax-time: 1:75:00 has 75 behind a colon, the most is 59 = try: 2:15:00"},
        {"1:5", "1:1 syntax-time: 1:5: two digits stand behind a colon = times are 1:30, 0:05 or 1:02:03"},
        {"1:2:3",
         "1:1 syntax-time: 1:2:3: two digits stand behind a colon = times are 1:30, 0:05 or 1:02:03"},
        {":30:30", "1:1 syntax-time: :30:30 has no hours before its first colon = try: 0:30:30"},
        {":5:30",
         "1:1 syntax-time: :5:30: two digits stand behind a colon = times are 1:30, 0:05 or 1:02:03"},
        {"1:30.1234", "1:1 syntax-time: 1:30.1234 is no time = a point stands behind m:ss, with up to three "
                      "digits: 0:52.5"},
        {"1:02:03.5", "1:1 syntax-time: 1:02:03.5 is no time = a point stands behind m:ss, with up to three "
                      "digits: 0:52.5"},
        {"1.5min", "1:1 syntax-time: 1.5min is a time with a point = try: 1:30"},
        {"2.5h", "1:1 syntax-time: 2.5h is a time with a point = try: 150min"},
        {"0.5s", "1:1 syntax-time: 0.5s is a time with a point = try: 0:00.5"},
        {"25h", "1:1 syntax-limit: the time is 25h, the limit is 24h"},
        {"24:00:01", "1:1 syntax-limit: the time is 24:00:01, the limit is 24h"},
        {"4 x 50 rest 1441min", "1:13 syntax-limit: the time is 1441min, the limit is 24h"},
        {"4 x 50 rest 20m",
         "1:13 syntax-time: 20m is a distance, here stands a time = m is metres, try: 20min"},
        {"4 x 50 rest 20yd",
         "1:13 syntax-time: 20yd is a distance, here stands a time = times are 15s, 2min or 1:30"},
        {"4 x 50 rest 40-20s", "1:13 syntax-time: 40-20s runs backward = try: 20-40s"},
        {"4 x 50 rest 1min-30s", "1:13 syntax-time: 1min-30s runs backward = try: 30s-1min"},
        {"4 x 50 rest 20-40", "1:13 syntax-time: 20-40 has no unit at its high end = try: 20-40s"},
        {"4 x 50 rest 20s-40", "1:13 syntax-time: 20s-40 has no unit at its high end = try: 20-40s"},
        {"4 x 50 rest 20m-40m", "1:13 syntax-time: 20m-40m is no range of times = try: 20-40s"},
        {"4 x 50 rest 20-0:40", "1:13 syntax-time: 20-0:40 is half a number, half a clock = try: 0:20-0:40"},
    });
}

TEST_CASE("days and slots that the notation does not have", "[grammar]") {
    check_files({
        {"session Tue 24:00",
         "1:13 syntax-time: 24:00 is no time of day = the clock runs from 00:00 to 23:59"},
        {"session Tue 7:60", "1:13 syntax-time: 7:60 is no time of day = the clock runs from 00:00 to 23:59"},
        {"session Tue 7:5", "1:13 syntax-time: 7:5 is no time of day = the clock runs from 00:00 to 23:59"},
        {"session for 45", "1:13 syntax-time: 45 has no unit = try: for 45min"},
        {"session for 0:45",
         R"(1:13 syntax-time: 0:45 is a clock; "for" takes a number and its unit = try: for 45min)"},
        {"session for 1:30",
         R"(1:13 syntax-time: 1:30 is a clock; "for" takes a number and its unit = try: for 90min)"},
        {"session for 1:30:00",
         R"(1:13 syntax-time: 1:30:00 is a clock; "for" takes a number and its unit = try: for 90min)"},
        {"session for 30s", "1:13 syntax-time: a slot of 30s, the least is 1min = try: for 45min"},
        {"session for 0min", "1:13 syntax-time: a slot of 0min, the least is 1min = try: for 45min"},
        {"session 2027-02-29", "1:9 syntax-date: February 2027 has 28 days"},
        {"session 2027-04-31", "1:9 syntax-date: April has 30 days"},
        {"session 2027-13-01",
         "1:9 syntax-date: there is no month 13 = dates are year-month-day, all in digits: 2027-06-13"},
        {"session 0000-01-01",
         "1:9 syntax-date: there is no year 0000 = dates are year-month-day, all in digits: 2027-06-13"},
        {"session 20.04.2027", "1:9 syntax-date: 20.04.2027 is not written as dates are = dates are "
                               "year-month-day, all in digits: 2027-06-13"},
        {"session 04/20/2027", "1:9 syntax-date: 04/20/2027 is not written as dates are = dates are "
                               "year-month-day, all in digits: 2027-06-13"},
        {"session 2027-4-20", "1:9 syntax-date: 2027-4-20 is not written as dates are = dates are "
                              "year-month-day, all in digits: 2027-06-13"},
        {"session 10000-01-01", "1:9 syntax-date: 10000-01-01 is not written as dates are = dates are "
                                "year-month-day, all in digits: 2027-06-13"},
        {"week 1 from 2027-06-00", "1:13 syntax-date: there is no day 00"},
        {"race sprint on 2028-02-30", "1:16 syntax-date: February 2028 has 29 days"},
        {"threshold 205", "1:11 syntax-time: 205 has no unit = try: threshold 2:05"},
        {"threshold 2", "1:11 syntax-time: 2 has no unit = try: threshold 2:00"},
        {"threshold 100m",
         "1:11 syntax-time: 100m is a distance, here stands a time = times are 15s, 2min or 1:30"},
        {"rest 20", "1:6 syntax-time: 20 has no unit = try: rest 20s"},
        {"rest 20-40", "1:6 syntax-time: 20-40 has no unit at its high end = try: 20-40s"},
        {"pool 1:00", "1:6 syntax-number: 1:00 is a time, here stands a distance = distances are 200, 25m, "
                      "25yd or 4 lengths"},
        {"limit slot 5-3min", "1:12 syntax-time: 5-3min runs backward = try: 3-5min"},
    });
}
