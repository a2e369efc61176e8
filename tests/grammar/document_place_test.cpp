#include "support/complaints.hpp"

#include <catch2/catch.hpp>

using lengthwise::test::check_files;

TEST_CASE("lines that stand where they do not belong", "[grammar]") {
    check_files({
        {"pool 25m\nplan \"A\"\n",
         R"(2:1 syntax-place: "plan" stands once, first in the file = move it above this line [1:1 the first line])"},
        {"plan \"A\"\nplan \"B\"\n",
         R"(2:1 syntax-place: "plan" stands once, first in the file = move it above this line [1:1 the first line])"},
        {"week 1\nrace sprint on 2027-06-13\n",
         R"(2:1 syntax-place: "race" stands before the first week or session = move it above this line [1:1 the first])"},
        {"session\n  main\n    50\nset \"A\" = 50\n  main\n    50\n",
         R"(4:1 syntax-place: "set" stands before the first week or session = move it above this line [1:1 the first])"},
        {"session\n  main\n    50\n    pool 50m\n    50\n",
         R"(4:5 syntax-place: "pool" stands before the first heading, with the session's settings = move it above this line [2:3 the first heading])"},
        {"session\n  main\n    rest 20s\n    50\n",
         R"(3:5 syntax-place: "rest" on a line of its own = between two lines: pause 1min; else behind an item)"},
        {"session\n  main\n    threshold 2:00\n    50\n",
         R"(3:5 syntax-place: "threshold" on a line of its own = as a setting it stands before the first heading; as an effort behind an amount)"},
        {"session\n  main\nsession\nfactor kick 140%\n", ""},
        {"main\n  50\n  50\nmain\n",
         R"(1:1 syntax-place: "main" belongs to a session = write a line above it, such as: session Tue 07:00)"},
        {"50\n50\npause 1min\n\"note\"\n", "1:1 syntax-place: no heading above this line = write two lines "
                                           "above it, such as: session Tue 07:00, then: main"},
        {"week 1\n50\nweek 2\n50\n", "2:1 syntax-place: no heading above this line = write two lines above "
                                     "it, such as: session Tue 07:00, then: main\n"
                                     "4:1 syntax-place: no heading above this line = write two lines above "
                                     "it, such as: session Tue 07:00, then: main"},
        {"week 1\n  session\nmain\n    \"before all\"\n", ""},
        {"pool 25m\nmain\n  50\npool 50m\n",
         R"(2:1 syntax-place: "main" belongs to a session = write a line above it, such as: session Tue 07:00)"},
        {"session\n  \"for the session\"\n  main\n    \"for the main part\"\n", ""},
        {"50\nplan \"A\"\npool 25m\nrace sprint on 2027-06-13\nsession\n  main\n    50\n    pool 50m\n",
         "1:1 syntax-place: no heading above this line = write two lines above it, such as: session Tue "
         "07:00, then: main\n"
         R"(8:5 syntax-place: "pool" stands before the first heading, with the session's settings = move it above this line [6:3 the first heading])"},
    });
}
