#include "report/plan_ics.hpp"

#include "export_samples.hpp"
#include "report/ics.hpp"
#include "report/width.hpp"
#include "support/generate.hpp"

#include <catch2/catch.hpp>

#include <libical/ical.h>

#include <memory>
#include <set>

/// Read back by libical, which shares no code with this program. Debian: libical-dev.
namespace lengthwise::report {
namespace {

struct Free {
    void operator()(icalcomponent* component) const { icalcomponent_free(component); }
};
using Calendar = std::unique_ptr<icalcomponent, Free>;

std::string ics(std::string_view text, ExportOptions const& options = {}) {
    return ics_begin() +
           test::exported(std::string{text},
                          [&](auto const& plan, auto const& sink) { plan_ics(plan, options, sink); }) +
           ics_end();
}

/// Nothing that libical takes for a mistake, and all that it asks of a calendar.
Calendar read(std::string const& text) {
    INFO(text);
    Calendar calendar{icalparser_parse_string(text.c_str())};
    REQUIRE(calendar);
    CHECK(icalcomponent_isa(calendar.get()) == ICAL_VCALENDAR_COMPONENT);
    icalrestriction_check(calendar.get());
    CHECK(icalcomponent_count_errors(calendar.get()) == 0);
    return calendar;
}

struct Event {
    std::string uid;
    std::string start;
    std::string summary;
    std::string description;
    int minutes = 0;
};

std::string or_empty(char const* text) {
    return text == nullptr ? "" : text;
}

std::vector<Event> events(Calendar const& calendar) {
    std::vector<Event> events;
    for (auto* event = icalcomponent_get_first_component(calendar.get(), ICAL_VEVENT_COMPONENT);
         event != nullptr; event = icalcomponent_get_next_component(calendar.get(), ICAL_VEVENT_COMPONENT)) {
        auto const start = icalcomponent_get_dtstart(event);
        CHECK(start.zone == nullptr); // floating: the clock on the wall
        CHECK(icaltime_is_utc(start) == 0);
        CHECK(icaltime_is_utc(icalcomponent_get_dtstamp(event)) != 0);
        events.push_back({or_empty(icalcomponent_get_uid(event)), icaltime_as_ical_string(start),
                          or_empty(icalcomponent_get_summary(event)),
                          or_empty(icalcomponent_get_description(event)),
                          icaldurationtype_as_int(icalcomponent_get_duration(event)) / 60});
    }
    return events;
}

void lines_are_short(std::string const& text) {
    for (std::size_t begin = 0; begin < text.size();) {
        auto const end = text.find('\n', begin);
        REQUIRE(end != std::string::npos);
        REQUIRE(end > begin);
        CHECK(text[end - 1] == '\r');
        CHECK(end - 1 - begin <= 75);
        CHECK((static_cast<unsigned char>(text[begin]) & 0xC0U) != 0x80U); // not within a character
        begin = end + 1;
    }
}

} // namespace

TEST_CASE("a long line is folded at 75 octets, between characters") {
    for (std::size_t before = 0; before < 80; ++before) {
        Ics lines;
        lines.text("SUMMARY",
                   std::string(before, 'x') + std::string(40, '-') + "é放𝄞é放𝄞é放𝄞" + std::string(160, 'y'));
        auto const text = lines.take();
        lines_are_short(text);
        std::string unfolded = text;
        for (auto at = unfolded.find("\r\n "); at != std::string::npos; at = unfolded.find("\r\n ")) {
            unfolded.erase(at, 3);
        }
        CHECK(unfolded == "SUMMARY:" + std::string(before, 'x') + std::string(40, '-') + "é放𝄞é放𝄞é放𝄞" +
                              std::string(160, 'y') + "\r\n");
    }
}

TEST_CASE("texts are escaped as a calendar wants it") {
    CHECK(Ics{}.text("X", "a,b;c\\n\nd\r").take() == "X:a\\,b\\;c\\\\n\\nd<U+000D>\r\n");
    CHECK(ics_duration(Duration::minutes(45)) == "PT45M");
    CHECK(ics_duration(Duration::seconds(90)) == "PT90S");
    CHECK(ics_moment(*parse_date("2027-06-08"), {19 * 60 + 5}) == "20270608T190500");
}

TEST_CASE("sessions stand at their time for their slot, the race on its day") {
    auto const text = ics(test::heron_ford);
    lines_are_short(text);
    auto const all = events(read(text));
    REQUIRE(all.size() == 4);
    CHECK(all[0].start == "20270608T191500");
    CHECK(all[0].minutes == 45);
    CHECK(all[0].summary == "Two lanes, 1000 m");
    CHECK(all[1].start == "20270610"); // no time of day: all day
    CHECK(all[1].minutes == 24 * 60);
    CHECK(all[2].start == "20270615T191500");
    CHECK(all[2].minutes == 9); // no slot: the slow end, in whole minutes
    CHECK(all[3].start == "20270620");
    CHECK(all[3].summary == "Race: Heron Ford, 750 m");
}

TEST_CASE("without slot and pace an event has no length") {
    auto const all = events(read(ics("pool 25m\nweek 1 from 2027-06-07\nsession Tue 07:00\nmain\n100\n")));
    REQUIRE(all.size() == 1);
    CHECK(all[0].start == "20270608T070000");
    CHECK(all[0].minutes == 0);
    CHECK(all[0].summary == "Swim, 100 m");
}

TEST_CASE("the sets stand in the description") {
    auto const all = events(read(ics("pool 25m\nweek 1 from 2027-06-07\nsession Tue \"A, b; c\"\n"
                                     "main \"x\" easy\n4 x 50, odds hard\npause 1min\nif time: 100\n")));
    REQUIRE(all.size() == 1);
    CHECK(all[0].summary == "A, b; c, 200 m");
    CHECK(all[0].description ==
          "pool 25 m\n200 m · 8 lengths · longest rep 50 m · if time 100 m more\nkit: none\n\n"
          "main \"x\" easy\n1  4 x 50, odds hard\npause 1min\nif time: 100");
}

TEST_CASE("an event keeps its name when its session changes") {
    auto const uids = [](std::string_view text, ExportOptions const& options = {}) {
        std::set<std::string> all;
        for (auto const& event : events(read(ics(text, options)))) {
            all.insert(event.uid);
        }
        return all;
    };
    auto const before = uids(test::heron_ford);
    CHECK(before.size() == 4);
    std::string changed{test::heron_ford};
    changed.replace(changed.find("19:15 for 45min \"Two lanes\""), 28, "20:00 \"Later\"\n");
    changed.replace(changed.find("200, 100 crawl"), 14, "400 crawl     ");
    CHECK(uids(changed) == before);
    CHECK(*uids("plan \"other\"\nweek 1 from 2027-06-07\nsession Tue\nmain\n100\n").begin() !=
          *before.begin());
    // who asks for a lane of his own may have it beside the others
    CHECK(uids(test::heron_ford, {.lane = 2}) != before);
    auto const unnamed = "week 1 from 2027-06-07\nsession Tue\nmain\n100\n";
    CHECK(uids(unnamed, {.source = "a.swim"}) != uids(unnamed, {.source = "b.swim"}));
}

TEST_CASE("sessions without a date are counted and left out") {
    auto const read = support::read_plan("session Tue\nmain\n100\nsession 2027-06-08\nmain\n100\n");
    REQUIRE(read.error() == "");
    auto const count = plan_ics(read.plan(), {}, [](std::string_view) {});
    CHECK(count.sessions == 2);
    CHECK(count.undated == 1);
    CHECK(count.events == 1);
}

TEST_CASE("libical reads a thousand plans") {
    std::size_t all = 0;
    for (std::uint64_t seed = 1; seed <= 1000; ++seed) {
        auto const generated = support::read_plan(test::generate({.seed = seed}).text);
        REQUIRE(generated.error() == "");
        std::string text;
        auto const count = plan_ics(generated.plan(), {}, [&](std::string_view piece) { text += piece; });
        if (count.events > 0) {
            auto const found = events(read(ics_begin() + text + ics_end()));
            CHECK(found.size() == count.events);
            all += found.size();
        }
    }
    CHECK(all > 1000);
}

TEST_CASE("names begin no lines of their own in a calendar") {
    auto const text = ics(test::plan_called(test::nasty));
    lines_are_short(text);
    auto const all = events(read(text));
    REQUIRE(all.size() == 2); // the other session has no date
    CHECK(all[0].summary == visible(test::nasty) + ", 200 m");
    CHECK(all[1].summary == "Race: " + visible(test::nasty) + ", 750 m");
    CHECK(all[0].description.find("END:VCALENDAR<U+0009>") != std::string::npos);
}

} // namespace lengthwise::report
