#include "cli/swims.hpp"

#include "units/spell.hpp"

#include <catch2/catch.hpp>

#include <string>

/// Swims from the command line.
namespace lengthwise::cli {
namespace {

std::string course_of(Pool const& pool) {
    return pool.kind == Pool::Kind::open_water ? " open"
           : pool.has_length()                 ? ' ' + spell::distance(pool.length, pool.unit, true)
                                               : "";
}

/// "200 m 3:32 25 m, …", or what cannot be read.
std::string read(std::vector<std::string> const& words, Course const& course = {}) {
    auto const result = read_swims(words, course);
    if (auto const* const unread = std::get_if<Unread>(&result)) {
        return unread->problem;
    }
    std::string text;
    for (auto const& swim : std::get<std::vector<calc::Swim>>(result)) {
        text += text.empty() ? "" : ", ";
        text += spell::distance(swim.distance, swim.unit, true) + ' ' + spell::clock(swim.time) +
                course_of(swim.course);
    }
    return text;
}

Course const in_25m{"25m", Pool::of(Distance::metres(25), Unit::metre)};
Course const in_25yd{"25yd", Pool::of(Distance::yards(25), Unit::yard)};

TEST_CASE("a distance and a time are a swim") {
    CHECK(read({"200m", "3:32"}) == "200 m 3:32");
    CHECK(read({"200m", "3:32.4", "400m", "7:22"}) == "200 m 3:32.4, 400 m 7:22");
    CHECK(read({"200m 3:32, 400m 7:22"}) == "200 m 3:32, 400 m 7:22");
    CHECK(read({" 200 ", "m", "3:32 "}) == "200 m 3:32");
    CHECK(read({"200 metres", "in", "212 s"}) == "200 m 3:32");
    CHECK(read({"3800m", "1:20:00"}) == "3800 m 1:20:00");
}

TEST_CASE("a bare number has the unit of the pool, without one metres") {
    CHECK(read({"200", "3:32"}) == "200 m 3:32");
    CHECK(read({"200", "3:32"}, in_25yd) == "200 yd 3:32 25 yd");
    CHECK(read({"200", "3:32", "in", "25yd"}, in_25m) == "200 yd 3:32 25 yd");
    CHECK(read({"200m", "3:32"}, in_25yd) == "200 m 3:32 25 yd");
}

TEST_CASE("lengths are those of the pool") {
    CHECK(read({"36", "lengths", "in", "31", "min"}, in_25m) == "900 m 31:00 25 m");
    CHECK(read({"36 lengths in 31min in 25yd"}) == "900 yd 31:00 25 yd");
    CHECK(read({"36 lengths", "31min"}) == "36 lengths of which pool? try: --pool 25m");
    CHECK(read({"36 lengths 31min in open water"}) == "36 lengths of which pool? try: --pool 25m");
}

TEST_CASE("thirds") {
    CHECK(read({"33", "1/3", "m", "0:40"}) == "33 1/3 m 0:40");
    CHECK(read({"33 1/3m 0:40"}) == "33 1/3 m 0:40");
    CHECK(read({"400m", "8:20", "in", "33", "1/3", "m", "200m", "4:00"}) ==
          "400 m 8:20 33 1/3 m, 200 m 4:00");
    CHECK(read({"133", "2:20", "in 33 1/3m"}) == "133 1/3 m 2:20 33 1/3 m"); // four lengths
}

TEST_CASE("behind the time stands the pool") {
    CHECK(read({"200m", "3:32", "in", "50m", "400m", "7:22", "in", "25m"}) ==
          "200 m 3:32 50 m, 400 m 7:22 25 m");
    CHECK(read({"200m", "3:32", "in", "50m", "400m", "7:22"}, in_25m) == "200 m 3:32 50 m, 400 m 7:22 25 m");
    CHECK(read({"200m in 3:32 in 50"}) == "200 m 3:32 50 m");
    CHECK(read({"1500m", "27:00", "in", "open", "water", "200m", "3:32"}) == "1500 m 27:00 open, 200 m 3:32");
}

TEST_CASE("what cannot be read is said in its words") {
    CHECK(read({}) == "which swims? try: lengthwise pace 200m 3:32 400m 7:22");
    CHECK(read({"", " "}) == "which swims? try: lengthwise pace 200m 3:32 400m 7:22");
    CHECK(read({"200m"}) == "200m took how long? try: 200m 3:32");
    CHECK(read({"200m", "400m", "7:22"}) == "200m took how long? try: 200m 3:32");
    CHECK(read({"200m", "3.32"}) == "3.32 is no time; try 3:32");
    CHECK(read({"200m", "7"}) == "7 has no unit: 7s, 7min or 7:00?");
    CHECK(read({"200m", "soon"}) == "soon is no time; try 3:32, 212s or 31min");
    CHECK(read({"200m", "0:00"}) == "0:00 is no time; try 3:32, 212s or 31min");
    CHECK(read({"0m", "3:32"}) == "0m is no distance; a swim is a distance and a time, 200m 3:32");
    CHECK(read({"far", "3:32"}) == "far is no distance; a swim is a distance and a time, 200m 3:32");
    CHECK(read({"plan.swim"}) == "pace takes swims; to write into the plan: --into plan.swim");
    CHECK(read({"200m", "3:32", "in"}) == "in which pool? try: in 25m");
    CHECK(read({"200m", "3:32", "in", "2000m"}) ==
          "no pool is 2000m long; try: in 25m, in 25yd or in open water");
    CHECK(read({"200m", "3:32", "in", "4", "lengths"}) ==
          "no pool is 4 lengths long; try: in 25m, in 25yd or in open water");
    CHECK(read({"200m#", "3:32"}) == "200m# is no distance; a swim is a distance and a time, 200m 3:32");
    CHECK(read({"200m\x1B[1m", "3:32"}) ==
          "200m<U+001B>[1m is no distance; a swim is a distance and a time, 200m 3:32");
}

TEST_CASE("a hundred swims are read, not more") {
    std::vector<std::string> words;
    for (int i = 1; i <= 100; ++i) {
        words.push_back(std::to_string(i * 25) + "m");
        words.push_back("1:00");
    }
    CHECK(std::holds_alternative<std::vector<calc::Swim>>(read_swims(words, {})));
    words.insert(words.end(), {"5m", "1:00"});
    CHECK(read(words) == "more than 100 swims; the last few are enough");
}

std::string distances(std::string const& list, Course const& course = {}) {
    auto const result = read_distances(list, course);
    if (auto const* const unread = std::get_if<Unread>(&result)) {
        return unread->problem;
    }
    std::string text;
    for (auto const distance : std::get<std::vector<Distance>>(result)) {
        text += (text.empty() ? "" : ", ") + spell::distance(distance, Unit::metre, true);
    }
    return text;
}

TEST_CASE("distances to predict stand in a list") {
    CHECK(distances("750m") == "750 m");
    CHECK(distances("750m, 1500") == "750 m, 1500 m");
    CHECK(distances("500", in_25yd) == "457.2 m");
    CHECK(distances("30 lengths", in_25m) == "750 m");
    CHECK(distances("sprint,standard") == "750 m, 1500 m");
    CHECK(distances("") == "--predict takes distances, 750m,1500m or sprint, not \"\"");
    CHECK(distances("750m,") == "--predict takes distances, 750m,1500m or sprint, not \"\"");
    CHECK(distances("750m,soon") == "--predict takes distances, 750m,1500m or sprint, not \"soon\"");
    CHECK(distances("3:32") == "--predict takes distances, 750m,1500m or sprint, not \"3:32\"");
}

} // namespace
} // namespace lengthwise::cli
