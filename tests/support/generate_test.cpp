#include "support/generate.hpp"

#include "support/course.hpp"
#include "support/dump.hpp"
#include "support/read_plan.hpp"

#include <catch2/catch.hpp>

#include <set>
#include <string>

using namespace lengthwise;
using grammar::Kind;

namespace {

void collect(grammar::Tree const& tree, std::set<Kind>& kinds) {
    for (auto const& node : tree.nodes) {
        kinds.insert(node.kind);
    }
}

} // namespace

TEST_CASE("generate: the same wish makes the same text, another seed another") {
    CHECK(test::generate({.seed = 7}).text == test::generate({.seed = 7}).text);
    CHECK(test::generate({.seed = 7}).text != test::generate({.seed = 8}).text);
    CHECK(test::generate({.seed = 7, .untidy = true}).text != test::generate({.seed = 7}).text);
}

TEST_CASE("generate: plans have every construct of the notation sooner or later, and no error") {
    std::set<Kind> seen;
    for (std::uint64_t seed = 0; seed < 400; ++seed) {
        auto const made = test::generate({.seed = seed, .untidy = seed % 2 == 1, .include = seed % 4 < 2});
        auto const read = support::read_plan(made.text, {{"/library.swim", made.library}});
        INFO("seed " << seed << "\n" << made.text << "\nlibrary:\n" << made.library);
        REQUIRE(read.error() == "");
        for (auto const& file : read.bundle->files) {
            collect(file.tree, seen);
        }
    }
    for (int kind = 0; kind <= static_cast<int>(Kind::selector_number); ++kind) {
        if (static_cast<Kind>(kind) != Kind::bad) {
            INFO(test::kind_name(static_cast<Kind>(kind)));
            CHECK(seen.count(static_cast<Kind>(kind)) == 1);
        }
    }
}

TEST_CASE("generate: sizes and shares are kept to") {
    auto const made = test::generate({.seed = 3, .weeks = 0, .sessions = 0, .sets = 0});
    CHECK(made.text.find("session\n") == std::string::npos);
    CHECK(made.text.find("set \"") == std::string::npos);
}

TEST_CASE("generate: bare numbers that stand for lengths are found by trying") {
    auto const third = Pool::of(Distance::units(1'000'000), Unit::metre);
    for (auto const& [number, lengths] : std::vector<std::pair<int, int>>{
             {33, 1}, {34, 0}, {66, 2}, {67, 2}, {100, 3}, {133, 4}, {134, 0}, {166, 5}, {167, 5}}) {
        CHECK(test::lengths_by_trying(third, number) == lengths);
    }
}
