#include "compose/long_day.hpp"
#include "compose/main_sets.hpp"
#include "compose/set_book.hpp"
#include "compose/text_lines.hpp"

#include <catch2/catch.hpp>

using namespace lengthwise;
using namespace lengthwise::compose;

namespace {

Place place(Laps rep, Laps laps, int stage = 1) {
    Place place;
    place.pool = Pool::of(Distance::metres(25), Unit::metre);
    place.threshold = Duration::seconds(115);
    place.rep = rep;
    place.race_rep = 30;
    place.laps = laps;
    place.stage = stage;
    place.week = 2;
    place.build = 2;
    place.build_weeks = 8;
    return place;
}

std::string written(Set set, Laps laps, Place const& at, int visit = 1) {
    std::string text;
    if (auto const lines = lines_of(set, laps, at, visit)) {
        for (auto const& line : *lines) {
            text += (text.empty() ? "" : "; ") + spelled(line, at.pool);
        }
    }
    return text;
}

std::string written(MainSet const& main, Pool const& pool) {
    std::string text;
    for (auto const& line : main.lines) {
        text += (text.empty() ? "" : "; ") + spelled(line, pool);
    }
    return text;
}

} // namespace

TEST_CASE("sets as they are written", "[compose]") {
    auto const at = place(10, 24);
    CHECK(written(Set::build, 10, at) == "10 x 50 crawl build rest 30s");
    CHECK(written(Set::rounds, 12, at) == "4 x (100 crawl steady rest 30s + 50 crawl hard) rest 40s");
    CHECK(written(Set::alternate, 10, at) == "10 x 50 crawl rest 30s, odds easy, evens hard");
    CHECK(written(Set::ladder, 9, at) == "50, 100, 150, 100, 50 crawl steady rest 30s");
    CHECK(written(Set::pieces, 10, at) == "500 crawl steady broken at 250 for 20s");
    CHECK(written(Set::pieces, 14, at) ==
          "500 crawl steady broken at 250 for 20s rest 30s; 4 x 50 crawl build rest 30s");
    CHECK(written(Set::pull, 12, at) == "3 x (100 crawl pull with buoy + 100 crawl steady) rest 30s");
    CHECK(written(Set::descend, 8, at) == "4 x 100 crawl descend 1-4 rest 30s");
    CHECK(written(Set::start, 9, at) == "3 x 150 crawl as 50 hard / 100 steady rest 40s");
    CHECK(written(Set::change, 9, at) == "3 x 150 crawl as 50 easy / 50 steady / 50 hard rest 30s");
    CHECK(written(Set::threshold, 12, at) == "6 x 100 crawl threshold on 2:20");
    CHECK(written(Set::negative, 12, at) == "3 x 200 crawl steady negative split rest 30s");
    CHECK(written(Set::sight, 12, at) == "6 x 100 crawl steady rest 30s \"look up twice a length\"");
    CHECK(written(Set::count, 6, at) == "6 x 50 crawl steady rest 30s \"count strokes, keep the number\"");
    CHECK(written(Set::race, 15, at) ==
          "3 x 250 crawl steady rest 20s \"the pace you can hold all the way\"");
}

TEST_CASE("a set comes back harder", "[compose]") {
    auto const at = place(10, 24);
    CHECK(written(Set::alternate, 10, at, 2) == "10 x 50 crawl rest 25s, odds steady, evens hard");
    CHECK(written(Set::threshold, 12, at, 2) == "6 x 100 crawl threshold on 2:15");
    CHECK(written(Set::threshold, 12, at, 3) == "6 x 100 crawl threshold on 2:10");
    CHECK(written(Set::ladder, 10, at, 2) == "200, 150, 100, 50 crawl steady rest 25s");
    CHECK(written(Set::change, 9, at, 2) == "3 x 150 crawl as 50 hard / 50 easy / 50 steady rest 25s");
}

TEST_CASE("beginners, first weeks and easy weeks have nothing hard", "[compose]") {
    CHECK(written(Set::alternate, 10, place(3, 24, 0)) == "10 x 50 crawl rest 30s, odds easy, evens steady");
    CHECK(written(Set::start, 9, place(3, 24, 0)).empty());
    auto first = place(10, 24);
    first.opening = true;
    CHECK(written(Set::rounds, 6, first) == "2 x (100 crawl steady rest 30s + 50 crawl build) rest 40s");
    auto easy = place(10, 24);
    easy.kind = WeekKind::recovery;
    CHECK(written(Set::change, 9, easy).empty());
}

TEST_CASE("no set has a rep over the week's longest, or needs what is not there", "[compose]") {
    CHECK(written(Set::ladder, 12, place(2, 24)).empty());
    CHECK(written(Set::negative, 12, place(1, 24)).empty());
    auto bare = place(10, 24);
    bare.kit = {.board = false, .buoy = false};
    CHECK(written(Set::pull, 12, bare).empty());
    bare.threshold = {};
    CHECK(written(Set::threshold, 12, bare) ==
          "6 x 100 crawl steady rest 30s \"look at the clock: same time each\"");
}

TEST_CASE("the long rep comes while fresh", "[compose]") {
    auto at = place(8, 20);
    at.day = DayKind::long_day;
    CHECK(written(main_of_long_day(at, 12), at.pool) ==
          "2 x 50 crawl build rest 30s; 400 crawl easy rest 1min \"breathe out long, count laps in fours\"; "
          "2 x 50 crawl steady rest 30s");
    at.build = 1;
    CHECK(written(main_of_long_day(at, 12), at.pool) ==
          "400 crawl easy rest 1min \"first quarter slower than you want\"; "
          "4 x 50 crawl rest 30s, odds easy, evens steady");
    at.kind = WeekKind::taper;
    CHECK(written(main_of_long_day(at, 8), at.pool) == "400 crawl steady \"race rhythm, calm start\"");
}

TEST_CASE("neighbouring weeks have unlike sets", "[compose]") {
    SetBook book;
    std::string before;
    for (auto week = 1; week <= 12; ++week) {
        auto at = place(12, 24);
        at.week = week;
        at.build = week;
        at.era = 1;
        auto const now = written(book.next(at, 12), at.pool);
        CHECK(now != before);
        before = now;
    }
}
