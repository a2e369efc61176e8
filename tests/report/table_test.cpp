#include "report/table.hpp"

#include <catch2/catch.hpp>

namespace lengthwise::report {
namespace {

Paint const plain{false};

} // namespace

TEST_CASE("words stand left, figures right, and a fraction hangs outside") {
    Table table{{{"", false}, {"m"}, {"lengths"}}};
    table.row({{"drill"}, {"266", "⅔"}, {"8"}});
    table.row({{"main"}, {"1400"}, {"42"}});
    CHECK(table.text(plain) == "          m   lengths\n"
                               "drill   266⅔        8\n"
                               "main   1400        42\n");
    CHECK(table.width() == 21);
}

TEST_CASE("a column that no row fills vanishes with its head") {
    Table table{{{"", false}, {"from", false}, {"m"}}};
    table.row({{"week 1"}, {}, {"100"}});
    table.gap();
    table.row({{"total"}});
    CHECK(table.text(plain) == "          m\nweek 1  100\n\ntotal\n");
}

TEST_CASE("a head over several columns stands at their right edge and makes room for itself") {
    Table table{{{"", false}, {"m"}, {"lengths", true, "lane 1", 2}, {"m", true, "lanes 2, 3, 5"}}};
    table.row({{"main"}, {"100"}, {"4"}, {"50"}});
    CHECK(table.text(plain) == "            lane 1  lanes 2, 3, 5\n"
                               "        m  lengths              m\n"
                               "main  100        4             50\n");
}

TEST_CASE("heads are dim and rows have their ink, line by line") {
    Table table{{{"", false}, {"m"}}};
    table.row({{"total"}, {"100"}}, Ink::bold);
    CHECK(table.text(Paint{true}) == "\033[2m         m\033[0m\n\033[1mtotal  100\033[0m\n");
}

TEST_CASE("a table that is too wide cuts the words of one column") {
    auto const table = [](std::size_t width, std::size_t least) {
        Table wide{{{"", false}, {"m"}}};
        wide.row({{"Longer reps of the season"}, {"100"}});
        wide.row({{"Short"}, {"100"}});
        wide.fit(0, width, false, least);
        return wide.text(plain);
    };
    CHECK(table(30, 8) ==
          "                             m\nLonger reps of the season  100\nShort                      100\n");
    CHECK(table(20, 8) == "                   m\nLonger reps of…  100\nShort            100\n");
    CHECK(table(2, 8) == "            m\nLonger…   100\nShort     100\n");
    CHECK(table(2, 40) == table(30, 8));
}

} // namespace lengthwise::report
