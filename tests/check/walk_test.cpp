#include "check/walk.hpp"
#include "support/found.hpp"
#include "support/read_plan.hpp"

#include <catch2/catch.hpp>

#include <string>

using namespace lengthwise;

namespace {

constexpr int sessions = 50;
constexpr int lines = 40;

/// A long set that every session uses.
std::string shared_set() {
    std::string text = "pool 25m\nset \"A\" = (\n";
    for (int i = 0; i < lines; ++i) {
        text += "100 crawl\n";
    }
    text += ")\n";
    for (int i = 0; i < sessions; ++i) {
        text += "session\nmain\nuse \"A\"\n";
    }
    return text;
}

} // namespace

TEST_CASE("a walk goes into a set once a session, or once for all that are seen alike") {
    auto const read = support::read_plan(shared_set());
    REQUIRE(read.error() == "");
    auto const& plan = read.plan();
    check::Walk walk{plan};
    int met = 0;
    auto const count = [&met](check::Met const&) { ++met; };
    for (auto const& session : plan.sessions) {
        walk.through(session, count);
    }
    CHECK(met == sessions * (1 + 1 + lines)); // the use, the group, its lines

    met = 0;
    for (auto const& session : plan.sessions) {
        walk.once(session, {7, 0}, count);
    }
    CHECK(met == sessions + 1 + lines);

    met = 0; // another view, then both again in turn
    for (auto const& session : plan.sessions) {
        walk.once(session, {met % 2 == 0 ? 8 : 7, 0}, count);
    }
    CHECK(met == sessions + 1 + lines);
}

TEST_CASE("what one lane's lines share with another's is judged for both") {
    auto const text = std::string{"pool 25m\nset \"long\" = 600 crawl\n"
                                  "swimmer \"Ottoline\" threshold 1:40 per 100m lane 2\n"
                                  "swimmer \"Percy\" threshold 2:10 per 100m lane 2\n"
                                  "session Tue\nmain\nlane 1: use \"long\"\nlane 2: use \"long\"\n"};
    CHECK(support::found("lanes", text).size() == 1);
}

TEST_CASE("a set of drills makes a drill of every section that uses it") {
    std::string const head = "pool 25m\nset \"fists\" = 4 x 50 drill \"fist\"\nsession Tue\n";
    auto const named = [&head](std::string const& sections) {
        return support::found("second-look", head + sections);
    };
    CHECK(named("drill \"One\"\nuse \"fists\"\ndrill \"Two\"\nuse \"fists\"\n").empty());
    CHECK(named("drill \"One\"\nuse \"fists\"\ndrill \"Two\"\n100 crawl\n").size() == 1);
    CHECK(named("drill \"One\"\n2 x (50 crawl rest 20s + 50 back rest 20s), last drill\n").empty());
}
