#include "support/found.hpp"

#include <catch2/catch.hpp>

#include <string>

using lengthwise::support::first_hint;
using lengthwise::support::found;
using Found = std::vector<std::string>;

namespace {

Found medley(std::string const& pool, std::string const& lines) {
    return found("medley", "pool " + pool + "\nsession Tue\nmain\n" + lines);
}

} // namespace

TEST_CASE("medley: four lengths or a multiple") {
    CHECK(medley("25m", "100 medley\n200 medley\n").empty());
    CHECK(medley("25m", "75 medley\n").size() == 1);
    CHECK(medley("25m", "125 medley\n").size() == 1);
    CHECK(medley("25m", "4 x 50 medley\n") == Found{"4: note: medley over 2 lengths leaves open which stroke "
                                                    "is swum where, it takes four or a multiple"});
    CHECK(medley("50m", "100 medley\n").size() == 1);
    CHECK(medley("50m", "200 medley\n").empty());
}

TEST_CASE("medley: a split says how, a part has to be whole itself") {
    CHECK(medley("25m", "50 as 25 fly / 25 back\n").empty());
    CHECK(medley("25m", "200 as 100 medley / 100 crawl\n").empty());
    CHECK(medley("25m", "100 as 50 medley / 50 crawl\n").size() == 1);
}

TEST_CASE("medley: the stroke in force counts, from wherever it comes") {
    CHECK(medley("25m", "2 x (50 + 100) medley\n").size() == 1);
    CHECK(medley("25m", "4 x 50 crawl, evens medley\n").size() == 1);
    CHECK(medley("25m", "2 x (50 crawl + 100) medley\n").empty());
}

TEST_CASE("medley: allowed") {
    CHECK(found("medley", "pool 25m\nsession Tue\nallow medley \"any order\"\nmain\n50 medley\n").empty());
}
