#include "compose/calendar.hpp"

#include <catch2/catch.hpp>

#include <string>

using namespace lengthwise;
using compose::Calendar;
using compose::WeekKind;

namespace {

using std::chrono::days;

Date const monday = *parse_date("2027-04-26");

/// A race of 750 m so many days behind Monday, 26 April; training Tuesday and Friday.
compose::Request request(int race_day) {
    compose::Request request;
    request.race.distance = Distance::metres(750);
    request.race.on = monday + days{race_day};
    request.from = monday;
    request.days = {1, 4};
    request.pool = Pool::of(Distance::metres(25), Unit::metre);
    return request;
}

/// A letter a week: b build, r recovery, e eased, - empty, t taper, T with the race.
std::string letters(Calendar const& calendar) {
    std::string text;
    for (auto const& week : calendar.weeks) {
        text += week.kind == WeekKind::taper && week.holds_race
                    ? 'T'
                    : std::string_view{"bre-t"}[static_cast<std::size_t>(week.kind)];
    }
    return text;
}

std::string letters(compose::Request const& request) {
    return letters(compose::calendar_of(request));
}

std::string block_letters(std::size_t weeks) {
    std::string text;
    for (auto const kind : compose::blocks(weeks)) {
        text += kind == WeekKind::build ? 'b' : 'r';
    }
    return text;
}

constexpr int sunday = 6;

} // namespace

TEST_CASE("calendar: blocks of two or three, the longer ones last") {
    CHECK(block_letters(0).empty());
    CHECK(block_letters(1) == "b");
    CHECK(block_letters(3) == "bbb");
    CHECK(block_letters(4) == "bbrb"); // alone: two and one
    CHECK(block_letters(5) == "bbrbb");
    CHECK(block_letters(6) == "bbrbbb");
    CHECK(block_letters(7) == "bbbrbbb");
    CHECK(block_letters(8) == "bbrbbrbb");
    CHECK(block_letters(11) == "bbbrbbbrbbb");
    CHECK(block_letters(12) == "bbrbbrbbrbbb");
    for (std::size_t weeks = 5; weeks <= 104; ++weeks) {
        auto const text = 'r' + block_letters(weeks) + 'r';
        CHECK(text.size() == weeks + 2);
        CHECK(text.find("rr") == std::string::npos);
        CHECK(text.find("rbr") == std::string::npos);
        CHECK(text.find("bbbb") == std::string::npos);
    }
}

TEST_CASE("calendar: race day late in its week, or early") {
    auto const late = compose::calendar_of(request(11 * 7 + sunday));
    CHECK(letters(late) == "bbbrbbbrbbbT");
    CHECK(late.counted == 12);
    CHECK(late.build_weeks == 9);
    CHECK(late.weeks.back().days.size() == 2);

    // A Friday race leaves Tuesday, and its week counts; a Thursday race does not.
    CHECK(letters(request(2 * 7 + 4)) == "bbT");
    CHECK(compose::calendar_of(request(2 * 7 + 4)).counted == 3);
    auto const early = compose::calendar_of(request(2 * 7 + 3));
    CHECK(letters(early) == "btT");
    CHECK(early.counted == 2);
    CHECK(early.weeks.back().days == std::vector<Date>{monday + days{15}});
    // A Tuesday race: no session before it.
    CHECK(letters(request(2 * 7 + 1)) == "bt");
}

TEST_CASE("calendar: a race of 1000 m has one week of taper, however many weeks there are") {
    auto wish = request(11 * 7 + sunday);
    wish.race.distance = Distance::metres(1000);
    CHECK(compose::calendar_of(wish).taper == 1);
    wish.race.distance = Distance::metres(1000) + Distance::units(1);
    CHECK(compose::calendar_of(wish).taper == 2);
}

TEST_CASE("calendar: two weeks of taper for a longer race in more than six weeks") {
    auto longer = request(9 * 7 + sunday);
    longer.race.distance = Distance::metres(1500);
    auto const ten = compose::calendar_of(longer);
    CHECK(letters(ten) == "bbrbbrbbtT");
    CHECK(ten.weeks[8].percent == 60);
    CHECK(ten.weeks[9].percent == 40);
    longer.race.on = monday + days{5 * 7 + sunday};
    CHECK(letters(longer) == "bbrbbT");
    longer.race.on = monday + days{9 * 7 + 2}; // its Tuesday comes on top, with the last share
    auto const on_top = compose::calendar_of(longer);
    CHECK(letters(on_top) == "bbbrbbb" + std::string{"ttT"});
    CHECK(on_top.weeks[9].percent == 40);
}

TEST_CASE("calendar: closed days") {
    auto wish = request(11 * 7 + sunday);
    wish.closed = {monday + days{2 * 7 + 1}};
    CHECK(letters(wish) == "bbebbrbbrbbT");
    wish.closed.push_back(monday + days{2 * 7 + 4});
    CHECK(letters(wish) == "bb-bbrbbrbbT");
    wish.closed.push_back(monday + days{3}); // a Thursday: nothing lost
    CHECK(letters(wish) == "bb-bbrbbrbbT");
    wish.closed = {monday + days{11 * 7 + 1}};
    auto const taper = compose::calendar_of(wish);
    CHECK(letters(taper) == "bbbrbbbrbbbT");
    CHECK(taper.weeks.back().days.size() == 1);
}

TEST_CASE("calendar: a lower limit of taper, and no week left to build") {
    auto wish = request(2 * 7 + sunday);
    wish.limits = {{.rule = *plan::find_rule("taper"), .low = 45, .high = 45, .span = {}}};
    CHECK(compose::calendar_of(wish).weeks.back().percent == 45);
    CHECK(compose::calendar_of(request(sunday)).build_weeks == 0);
    CHECK(compose::calendar_of(request(1)).weeks.empty());
    wish.closed = {monday + days{1}, monday + days{8}};
    CHECK(letters(wish) == "eeT");
    CHECK(compose::calendar_of(wish).build_weeks == 0);
}
