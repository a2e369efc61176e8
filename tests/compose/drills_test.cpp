#include "compose/drill_book.hpp"

#include <catch2/catch.hpp>

#include <algorithm>
#include <set>
#include <string>

using namespace lengthwise;
using namespace lengthwise::compose;

namespace {

Place build_week(int week, int build, int of) {
    Place place;
    place.pool = Pool::of(Distance::metres(25), Unit::metre);
    place.week = week;
    place.build = build;
    place.build_weeks = of;
    place.opening = week == 1;
    place.stage = 1;
    return place;
}

} // namespace

TEST_CASE("a drill stands below what it needs, and its cue fits a card", "[compose]") {
    std::set<std::string_view> names;
    for (auto const& drill : drills()) {
        INFO(drill.name);
        CHECK(names.insert(drill.name).second);
        CHECK(drill.cue.size() <= 74);
        if (!drill.needs.empty()) {
            auto const& before = drill_named(drill.needs);
            CHECK(before.stage <= drill.stage);
        }
    }
}

TEST_CASE("every focus begins with a drill for everybody that needs no other", "[compose]") {
    for (auto const focus :
         {Focus::body, Focus::breath, Focus::kick, Focus::catch_, Focus::timing, Focus::wall, Focus::sight}) {
        auto const first = std::ranges::find(drills(), focus, &Drill::focus);
        REQUIRE(first != drills().end());
        CHECK(first->stage == 0);
        CHECK(first->needs.empty());
    }
}

TEST_CASE("no cue asks for a held breath", "[compose]") {
    for (auto const& drill : drills()) {
        auto const cue = std::string{drill.cue};
        CHECK(cue.find("hold your breath") == std::string::npos);
        CHECK(cue.find("without breathing") == std::string::npos);
        CHECK(cue.find("fewer breaths") == std::string::npos);
    }
}

TEST_CASE("the last build week looks where it swims, and the week after it as well", "[compose]") {
    DrillBook book;
    CHECK(book.open_week(build_week(1, 1, 2)).focus == Focus::body);
    auto const last = book.open_week(build_week(2, 2, 2));
    CHECK(last.focus == Focus::sight);
    CHECK(last.fresh == "eyes up");
    CHECK(last.known == "push and glide");
    auto taper = build_week(3, 2, 2);
    taper.kind = WeekKind::taper;
    taper.taper = 1;
    CHECK(book.open_week(taper).fresh == "eyes up");
}

TEST_CASE("nothing is new in an easy week", "[compose]") {
    DrillBook book;
    std::set<std::string_view> known;
    for (auto week = 1; week <= 12; ++week) {
        auto place = build_week(week, week - week / 4, 12);
        place.stage = week / 5;
        if (week % 4 == 0) {
            place.kind = WeekKind::recovery;
        }
        auto const drills = book.open_week(place);
        for (auto const drill : {drills.known, drills.fresh, drills.third}) {
            CHECK((place.kind == WeekKind::build || known.contains(drill)));
        }
        known.insert({drills.known, drills.fresh});
    }
}

TEST_CASE("a cue is said in two sessions", "[compose]") {
    DrillBook book;
    CHECK(book.cue("fist") == "Press back with the forearm, then open the hand");
    CHECK(book.cue("fist"));
    CHECK_FALSE(book.cue("fist"));
}
