#include "support/complaints.hpp"

#include <catch2/catch.hpp>

using lengthwise::test::check_files;

TEST_CASE("reading goes on behind an error", "[grammar]") {
    check_files({
        {"session\nmain\n3 x (\n  100 crwal\n  50 @ 1:00\n  25\n) rest 10\n100 esay\n",
         "4:7 syntax-word: no word \"crwal\"; did you mean \"crawl\"?\n"
         "5:6 syntax-character: no sign \"@\" = a send-off is: on 1:00\n"
         "7:8 syntax-time: 10 has no unit = try: rest 10s\n"
         R"(8:5 syntax-word: no word "esay"; did you mean "easy"?)"},
        {"session\nmain\n3 x (100 @ 1:30\n  50 crwal\n) rest 1min\n100 esay\n",
         "3:10 syntax-character: no sign \"@\" = a send-off is: on 1:30\n"
         "4:6 syntax-word: no word \"crwal\"; did you mean \"crawl\"?\n"
         R"(6:5 syntax-word: no word "esay"; did you mean "easy"?)"},
        {"session\nmain\n2 x (100 + 50\nmain\n50\n",
         "3:5 syntax-group: \"(\" without its \")\" before \"main\" = a line that begins with a heading or a "
         "statement ends all parentheses"},
        {"session\nmain\n2 x (100 + (50\nweek 2\n",
         "3:12 syntax-group: \"(\" without its \")\" before \"week\" = a line that begins with a heading or "
         "a statement ends all parentheses [3:5 this one, too]"},
        {"session\nmain\n2 x (100 + 50\n",
         "3:5 syntax-group: \"(\" without its \")\" at the file's end = a line that begins with a heading or "
         "a statement ends all parentheses"},
        {"session\nmain\n2 x (100 + 50\n  mian\n50 crwal\n",
         "3:5 syntax-group: \"(\" without its \")\" before \"mian\" = a line that begins with a heading or a "
         "statement ends all parentheses\n"
         "4:3 syntax-word: no word \"mian\"; did you mean \"main\"?\n"
         R"(5:4 syntax-word: no word "crwal"; did you mean "crawl"?)"},
        {"session\nmain\n2 x (\n  100\n  rest 20s\n  pause 1min\n  \"look up\"\n  lane 1: 50\n  if time: "
         "50\n  threshold 2:00\n) rest 1min\n50 crwal\n",
         "5:3 syntax-group: \"rest\" on a line of its own inside parentheses = put it behind an item, or "
         "behind the closing parenthesis\n"
         "6:3 syntax-group: a pause inside parentheses = put a rest on the item before it: rest 1min\n"
         "7:3 syntax-group: a note on a line of its own inside parentheses = put it behind an item, or above "
         "the parentheses\n"
         "8:3 syntax-group: \"lane\" inside parentheses = labels stand before the whole set: lane 1: 3 x "
         "(100 + 50)\n"
         "9:3 syntax-group: \"if time\" inside parentheses = labels stand before the whole set: lane 1: 3 x "
         "(100 + 50)\n"
         "10:3 syntax-group: \"threshold\" on a line of its own inside parentheses = put it behind an item, "
         "or behind the closing parenthesis\n"
         R"(12:4 syntax-word: no word "crwal"; did you mean "crawl"?)"},
        {"session\nmain\n100)\n50)\n)\nmain\n50)\n", "3:4 syntax-group: \")\" without its \"(\"\n"
                                                     "7:3 syntax-group: \")\" without its \"(\""},
        {"session\nmain\n50 \"a ( b\n50 crwal\n",
         "3:4 syntax-string: the quotes do not close on this line = names and notes end with \" on their own "
         "line\n"
         "3:7 syntax-group: \"(\" without its \")\" at the file's end = a line that begins with a heading or "
         "a statement ends all parentheses\n"
         R"(4:4 syntax-word: no word "crwal"; did you mean "crawl"?)"},
        {"session\nmain\n(50 \"a ( b\n50 crwal\n)\n",
         "3:1 syntax-group: \"(\" without its \")\" at the file's end = a line that begins with a heading or "
         "a statement ends all parentheses\n"
         "3:5 syntax-string: the quotes do not close on this line = names and notes end with \" on their own "
         "line\n"
         R"(4:4 syntax-word: no word "crwal"; did you mean "crawl"?)"},
        {"session\nmain\n(50 \"a ) b\" @ 1\n50 crwal\n)\n",
         "3:13 syntax-character: no sign \"@\" = a send-off is: on 1\n"
         R"(4:4 syntax-word: no word "crwal"; did you mean "crawl"?)"},
        {"week one\n  session Mno 25:00\n    wram-up esay\n      50\nweek two\n  session for 45\n",
         "1:6 syntax-line: \"week\" takes a number = try: week 2 from 2027-04-26\n"
         "2:11 syntax-word: no word \"Mno\"; did you mean \"Mon\"?\n"
         "2:15 syntax-time: 25:00 is no time of day = the clock runs from 00:00 to 23:59\n"
         "3:5 syntax-word: no word \"wram-up\"; did you mean \"warm-up\"?\n"
         "3:13 syntax-word: no word \"esay\"; did you mean \"easy\"?\n"
         "5:6 syntax-line: \"week\" takes a number = try: week 2 from 2027-04-26\n"
         "6:15 syntax-time: 45 has no unit = try: for 45min"},
        {"set \"A\" = 4 x 50 @ 1:00\nset \"B\" = (\n  50 @\n)\nsession\nmain\nuse \"A\"\n",
         "1:18 syntax-character: no sign \"@\" = a send-off is: on 1:00\n"
         R"(3:6 syntax-character: no sign "@" = a send-off is: on 1:30)"},
        {"wek 1\n  sesion Mon\n    mian\n      50\n",
         "1:1 syntax-word: no word \"wek\"; did you mean \"week\"?\n"
         "2:3 syntax-word: no word \"sesion\"; did you mean \"session\"?\n"
         R"(3:5 syntax-word: no word "mian"; did you mean "main"?)"},
        {"plaan \"A\"\nrce sprint on 2027-06-13\nbefor longest 200m\nswimer \"A\"\nste \"A\" = 50\n",
         "1:1 syntax-word: no word \"plaan\"; did you mean \"plan\"?\n"
         "2:1 syntax-word: no word \"rce\"; did you mean \"race\"?\n"
         "3:1 syntax-word: no word \"befor\"; did you mean \"before\"?\n"
         "4:1 syntax-word: no word \"swimer\"; did you mean \"swimmer\"?\n"
         R"(5:1 syntax-word: no word "ste"; did you mean "set"?)"},
        {"session\nmain\nues \"A\"\nlnae 1: 50\nif tiem: 50\npuase 1min\n",
         "3:1 syntax-word: no word \"ues\"; did you mean \"use\"?\n"
         "4:1 syntax-word: no word \"lnae\"; did you mean \"lane\"?\n"
         "5:4 syntax-word: no word \"tiem\"; did you mean \"time\"?\n"
         R"(6:1 syntax-word: no word "puase"; did you mean "pause"?)"},
        {"session\nmain\n50 crwal rpe 11 rest 15 on 0:75 wiht fisn\n",
         "3:4 syntax-word: no word \"crwal\"; did you mean \"crawl\"?\n"
         "3:14 syntax-number: rpe 11: it runs from 1 to 10\n"
         "3:22 syntax-time: 15 has no unit = try: rest 15s\n"
         "3:28 syntax-time: 0:75 has 75 behind a colon, the most is 59 = try: 1:15\n"
         "3:33 syntax-word: no word \"wiht\"; did you mean \"with\"?\n"
         R"(3:38 syntax-word: no word "fisn"; did you mean "fins"?)"},
        {"plan \"A\" 5\npool 25m 5\nrest 5s 5\n",
         "1:10 syntax-line: \"5\" does not stand here = the line ends before it\n"
         "2:10 syntax-line: \"5\" does not stand here = the line ends before it\n"
         R"(3:9 syntax-line: "5" does not stand here = the line ends before it)"},
        {"week1\n  session\n    main easy5\n      50 rest15s\n      (50\nmain2\n",
         "1:1 syntax-word: \"week\" touches what stands behind it = try: week 1\n"
         "3:10 syntax-word: \"easy\" touches what stands behind it = try: easy 5\n"
         "4:10 syntax-word: \"rest\" touches what stands behind it = try: rest 15s\n"
         "5:7 syntax-group: \"(\" without its \")\" before \"main2\" = a line that begins with a heading or "
         "a statement ends all parentheses\n"
         R"(6:1 syntax-word: "main" touches what stands behind it = try: main 2)"},
        {"Dear all\nplan \"A\"\n",
         R"(1:1 syntax-word: no word "Dear" = a line begins with an amount, a heading, or a word such as session or pause; notes stand in "quotes")"},
    });
}
