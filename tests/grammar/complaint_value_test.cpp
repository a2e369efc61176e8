#include "support/complaints.hpp"

#include <catch2/catch.hpp>

using lengthwise::test::check_lines;

TEST_CASE("values that the notation does not have", "[grammar]") {
    check_lines({
        {"0 x 100", "1:1 syntax-number: 0 times is nothing to swim = counts are 1 to 9999"},
        {"10000 x 100", "1:1 syntax-limit: the count is 10000, the limit is 9999"},
        {"4 x 0", "1:5 syntax-number: 0 is no distance at all"},
        {"0m", "1:1 syntax-number: 0m is no distance at all"},
        {"12345678", "1:1 syntax-limit: the number is 12345678, the limit is 7000000"},
        {"1.2.3", "1:1 syntax-number: 1.2.3 has two points"},
        {"12.345m", "1:1 syntax-number: 12.345 has 3 digits behind its point, the most is 2 = write 12345 "
                    "without a point, thirds as 33 1/3"},
        {"1.500", "1:1 syntax-number: 1.500 has 3 digits behind its point, the most is 2 = write 1500 "
                  "without a point, thirds as 33 1/3"},
        {"12.5yd", "1:1 syntax-number: 12.5yd: only metres have a point = yards take fractions, such as 12 "
                   "1/2 yd; lengths are whole"},
        {"2.5 lengths", "1:1 syntax-number: 2.5 lengths: only metres have a point = yards take fractions, "
                        "such as 12 1/2 yd; lengths are whole"},
        {"33 1/9 m", "1:4 syntax-number: 1/9 has 9 below the line = there stand 2, 3, 4, 6, 8, 12 or 24"},
        {"33 1/99999999999999999999999 m",
         "1:4 syntax-number: 1/99999999999999999999999 has 99999999999999999999999 below the line = there "
         "stand 2, 3, 4, 6, 8, 12 or 24"},
        {"33 4/3 m", "1:4 syntax-number: 4/3 is no part of one = the upper number is 1 to 2"},
        {"33 0/3 m", "1:4 syntax-number: 0/3 is no part of one = the upper number is 1 to 2"},
        {"33 1/3 lengths", "1:4 syntax-number: only metres and yards have fractions = such as 33 1/3 m"},
        {"100y", R"(1:1 syntax-number: no unit "y" = try: 100yd)"},
        {"100mm",
         R"(1:1 syntax-number: no unit "mm" = distances take m, yd or lengths; times take s, min or h)"},
        {"1km",
         R"(1:1 syntax-number: no unit "km" = distances take m, yd or lengths; times take s, min or h)"},
        {"100 m2", R"(1:5 syntax-word: "m" touches what stands behind it = try: m 2)"},
        {"50crawl", R"(1:1 syntax-number: "crawl" touches the number before it = try: 50 crawl)"},
        {"1e9",
         R"(1:1 syntax-number: no unit "e" = distances take m, yd or lengths; times take s, min or h)"},
        {"lane 0: 100", "1:6 syntax-number: lane 0: lanes are 1 to 100"},
        {"lane 101: 100", "1:6 syntax-number: lane 101: lanes are 1 to 100"},
        {"lane 2-101: 100", "1:8 syntax-number: lane 101: lanes are 1 to 100"},
        {"lane 3-1: 100",
         "1:6 syntax-number: lane 3-1 runs backward = the lower lane first, such as lane 1-3"},
        {"lane 1: lane 2: 100",
         R"(1:9 syntax-line: a second label "lane 2:" = a line has one lane label and one "if time:"; lanes in a row are lane 1-3:)"},
        {"if time: if time: 100",
         R"(1:10 syntax-line: a second label "if time:" = a line has one lane label and one "if time:"; lanes in a row are lane 1-3:)"},
        {"50 rpe 0", "1:8 syntax-number: rpe 0: it runs from 1 to 10"},
        {"50 rpe 11", "1:8 syntax-number: rpe 11: it runs from 1 to 10"},
        {"4 x 50 rest 0 breaths", "1:13 syntax-number: 0 breaths: at least 1, at most 9999"},
        {"4 x 50, first 0 easy", "1:15 syntax-number: 0: reps are counted from 1 to 9999"},
        {"4 x 50, every 0th easy", "1:15 syntax-number: 0th: reps are counted from 1 to 9999"},
        {"8 x 25 descend 2-4", "1:16 syntax-number: descend 2-4 does not begin with 1 = the first of each "
                               "cycle is 1, such as descend 1-4"},
        {"8 x 25 descend 1-1", "1:16 syntax-number: descend 1-1: a cycle has 2 to 9999 reps"},
        {"(100 + 50) as 25 / 25",
         R"(1:12 syntax-line: "as" stands only behind one amount = put it on an item of its own, or inside the parentheses)"},
        {"100, 200 broken at 50 for 10s",
         R"(1:10 syntax-line: "broken" stands only behind one amount = put it on an item of its own, or inside the parentheses)"},
        {R"(use "fours" as 25 / 25)",
         R"(1:13 syntax-line: "as" stands only behind one amount = put it on an item of its own, or inside the parentheses)"},
        {"4 x 50 on 100m",
         "1:11 syntax-time: 100m is a distance, here stands a time = times are 15s, 2min or 1:30"},
        {R"(main "fist)",
         R"(1:6 syntax-string: the quotes do not close on this line = names and notes end with " on their own line)"},
        {R"(50 "a\nb")",
         R"(1:6 syntax-string: a backslash that escapes nothing = in quotes write \" for a quote, \\ for a backslash)"},
        {R"(50 "fist”)",
         R"(1:4 syntax-string: the quotes do not close on this line = the closing quote is a curly one; type ")"},
        {"4 x 50 as 1:30 / 30m at 10s per 1:00", "1:33 syntax-number: 1:00 is a time, here stands a distance "
                                                 "= distances are 200, 25m, 25yd or 4 lengths"},
        {"4 x 50 rpe 7.5", R"(1:12 syntax-line: "rpe" takes a number from 1 to 10 = try: rpe 6)"},
        {"0 x 0 rpe 11 rest 15 on 50",
         "1:1 syntax-number: 0 times is nothing to swim = counts are 1 to 9999\n"
         "1:5 syntax-number: 0 is no distance at all\n"
         "1:11 syntax-number: rpe 11: it runs from 1 to 10\n"
         "1:19 syntax-time: 15 has no unit = try: rest 15s\n"
         "1:25 syntax-time: 50 has no unit = try: on 0:50"},
        {"4 x 50 rest 5breaths",
         R"(1:13 syntax-number: "breaths" touches the number before it = try: 5 breaths)"},
    });
}
