#include "support/complaints.hpp"

#include <catch2/catch.hpp>

using lengthwise::test::check_lines;

TEST_CASE("what is often written and never read gets its own hint", "[grammar]") {
    check_lines({
        {"4 50", "1:3 syntax-number: two numbers and nothing between them = try: 4 x 50, or a ladder: 4, 50"},
        {"4 50 crawl",
         "1:3 syntax-number: two numbers and nothing between them = try: 4 x 50, or a ladder: 4, 50"},
        {"100 1:30", "1:5 syntax-line: 1:30 stands behind 100 without a word = as a send-off: 100 on 1:30"},
        {"100m 1:30",
         "1:6 syntax-line: 1:30 stands behind 100m without a word = as a send-off: 100m on 1:30"},
        {"1min 30s kick",
         "1:6 syntax-time: a time is one number with one unit = try: 1:30 or 90s, 1:05:00 or 65min"},
        {"100 @ 1:30", R"(1:5 syntax-character: no sign "@" = a send-off is: on 1:30)"},
        {"4x100 @ 1:30", R"(1:7 syntax-character: no sign "@" = a send-off is: on 1:30)"},
        {"4 x 100 @1:30", R"(1:9 syntax-character: no sign "@" = a send-off is: on 1:30)"},
        {"6-8 x 50",
         R"(1:1 syntax-number: 6-8 leaves open how many = try: 6 x 50, and a line with "if time:" for the rest)"},
        {"50-100-150", R"(1:1 syntax-number: a ladder has commas, not "-" = try: 50, 100, 150)"},
        {"50 - 100", R"(1:1 syntax-number: a ladder has commas, not "-" = try: 50, 100)"},
        {"2 x 4 x 50", R"(1:7 syntax-number: a second "x" = try: 2 x (4 x 50))"},
        {"x 100", R"(1:1 syntax-number: "x" without a number before it = how many? try: 4 x 100)"},
        {"4 x", R"(1:4 syntax-line: 4 x what? = an amount, "(" or use: 4 x 50)"},
        {"4 x easy", R"(1:5 syntax-line: 4 x what? = an amount, "(" or use: 4 x 50)"},
        {"4 x 100, 200", "1:8 syntax-line: a count before a ladder = try: 4 x (100, 200)"},
        {"4 x 100 easy, 200", "1:13 syntax-line: a ladder's amounts stand together, before its words = try: "
                              "(4 x 100 easy + 200), or two lines"},
        {"100 easy, 200", "1:9 syntax-line: a ladder's amounts stand together, before its words = try: (100 "
                          "easy + 200), or two lines"},
        {"(100 easy, 200 + 50)", "1:10 syntax-line: a ladder's amounts stand together, before its words = "
                                 "try: (100 easy + 200), or two lines"},
        {"1,500", "1:1 syntax-comma: 1,500 can be read in two ways = is it 1500, or the ladder 1, 500?"},
        {"2,5", "1:1 syntax-comma: 2,5 can be read in two ways = is it 2.5, or the ladder 2, 5?"},
        {"4 x 50 on 2:10,odds easy", "1:15 syntax-comma: a comma without a blank behind it = try: , odds"},
        {"100, 200,", "1:9 syntax-comma: the line ends with a comma = an item ends at its line's end; write "
                      "the rest of it here"},
        {"100, 200, # and so on", "1:9 syntax-comma: the line ends with a comma = an item ends at its line's "
                                  "end; write the rest of it here"},
        {"4 x 50 with fins,", "1:17 syntax-comma: the line ends with a comma = an item ends at its line's "
                              "end; write the rest of it here"},
        {"100 easy + 50",
         R"(1:10 syntax-group: "+" joins items only inside parentheses = try: (100 easy + 50 back), or two lines)"},
        {"100 crawl)", "1:10 syntax-group: \")\" without its \"(\""},
        {"100 crawl))", "1:10 syntax-group: \")\" without its \"(\""},
        {"()",
         "1:2 syntax-group: nothing stands before this \")\" = parentheses hold items: (100 easy + 50 back)"},
        {"2 x (100 +)", "1:11 syntax-group: nothing stands before this \")\" = parentheses hold items: (100 "
                        "easy + 50 back)"},
        {"lane 1: pause 1min", "1:9 syntax-place: a pause is for everybody = for one lane put a rest on that "
                               "lane's item: rest 1min"},
        {"if time: pause 1min",
         "1:10 syntax-place: a pause is for everybody = put a rest on the item: rest 1min"},
        {"lane 1 4 x 50", "1:8 syntax-line: a label ends with a colon = try: lane 1: 4 x 50"},
        {"lane 1:100", "1:6 syntax-line: a label ends with a colon and a blank = try: lane 1: 4 x 50"},
        {"if time:100", "1:8 syntax-line: a label ends with a colon and a blank = try: lane 1: 4 x 50"},
        {"200 as 25 kick/25 crawl",
         R"(1:15 syntax-line: blanks stand around the "/" of a split = try: as 25 kick / 25 crawl)"},
        {"200 / 25",
         R"(1:5 syntax-line: "/" parts a split, and there is no "as" = try: 50 as 25 kick / 25 crawl)"},
        {"4 x 50, odds easy rest 15s",
         R"(1:19 syntax-line: "rest" stands before the selector = try: 4 x 50 rest 15s, odds easy, evens hard)"},
        {"4 x 50, odds easy on 1:10",
         R"(1:19 syntax-line: "on" stands before the selector = try: 4 x 50 on 1:10, odds easy, evens hard)"},
        {"4 x 50, odds easy descend",
         R"(1:19 syntax-line: "descend" stands before the selector = an item's own words come before odds, evens, every, first, next and last)"},
        {"4 x 50, odds", R"(1:9 syntax-line: "odds" does not say what changes = such as: odds easy)"},
        {"4 x 50, first 2",
         R"(1:9 syntax-line: "first 2" does not say what changes = such as: first 2 easy)"},
        {"4 x 50, every 2nd",
         R"(1:9 syntax-line: "every 2nd" does not say what changes = such as: every 2nd easy)"},
        {"4 x 50 fins", R"(1:8 syntax-line: "fins" without "with" = try: with fins)"},
        {"4 x 50 pull buoy", R"(1:8 syntax-line: "buoy" without "with" = try: pull with buoy)"},
        {"crawl 200", "1:1 syntax-line: how many metres? the amount comes first = try: 200 crawl"},
        {"easy", "1:1 syntax-line: how many metres? the amount comes first = try: 200 easy"},
        {"drill 4 x 50",
         R"(1:7 syntax-line: "4" does not stand here = items stand on lines of their own, below the heading)"},
        {"at 1:10",
         R"(1:1 syntax-line: "at" does not begin a line = an item ends at its line's end; write this behind the item above)"},
        {"4 x 50 at 1:10",
         R"(1:8 syntax-time: "at 1:10" has three meanings = on 1:10 (send-off), at 1:10 per 100 (pace), hold 1:10 (time of the rep))"},
        {"4 x 50 at 1:10 rest 10s",
         R"(1:8 syntax-time: "at 1:10" has three meanings = on 1:10 (send-off), at 1:10 per 100 (pace), hold 1:10 (time of the rep))"},
        {"4 * 50", R"(1:3 syntax-character: no sign "*" = times is x: 4 x 50)"},
        {"-4 x 100", R"(1:1 syntax-number: a "-" before the amount = amounts and counts are above 0)"},
        {"4 x -100", R"(1:5 syntax-line: 4 x what? = an amount, "(" or use: 4 x 50)"},
    });
}
