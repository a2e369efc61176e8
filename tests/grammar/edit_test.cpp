#include "grammar/edit.hpp"

#include <catch2/catch.hpp>

using namespace lengthwise;
using grammar::apply;
using grammar::Edit;

TEST_CASE("no edits leave the text as it is", "[grammar][edit]") {
    CHECK(apply(Source{"a.swim", "pool 25m\r\n"}, {}) == "pool 25m\r\n");
    CHECK(apply(Source{"a.swim", ""}, {}).empty());
}

TEST_CASE("edits replace, insert and delete, in any order of mention", "[grammar][edit]") {
    Source const source{"a.swim", "pool 25m\nrest 20s\n"};
    CHECK(apply(source, {{{5, 8}, "33 1/3 m"}}) == "pool 33 1/3 m\nrest 20s\n");
    CHECK(apply(source, {{{9, 9}, "threshold 2:05\n"}}) == "pool 25m\nthreshold 2:05\nrest 20s\n");
    CHECK(apply(source, {{{0, 9}, ""}}) == "rest 20s\n");
    CHECK(apply(source, {{{14, 17}, "30s"}, {{5, 8}, "50m"}}) == "pool 50m\nrest 30s\n");
    CHECK(apply(source, {{{18, 18}, "week 1\n"}}) == "pool 25m\nrest 20s\nweek 1\n");
}

TEST_CASE("edits of one place are made in the order given", "[grammar][edit]") {
    Source const source{"a.swim", "ab"};
    CHECK(apply(source, {{{1, 1}, "1"}, {{1, 1}, "2"}, {{1, 1}, "3"}}) == "a123b");
    CHECK(apply(source, {{{1, 1}, "1"}, {{1, 2}, "B"}}) == "a1B");
    CHECK(apply(source, {{{1, 2}, "B"}, {{1, 1}, "1"}}) == "aB1");
    CHECK(apply(source, {{{0, 1}, "A"}, {{1, 2}, "B"}}) == "AB");
}

TEST_CASE("offsets count from the source's base", "[grammar][edit]") {
    Source const source{"b.swim", "rest 20s", 1000};
    CHECK(apply(source, {{{1005, 1008}, "30s"}}) == "rest 30s");
}
