#include "report/card_views.hpp"
#include "support/read_plan.hpp"

#include <catch2/catch.hpp>

using namespace lengthwise;
using namespace lengthwise::report;

namespace {

using Strings = std::vector<std::string>;

struct Made {
    support::ReadPlan read;
    Card card;
};

Made card(std::string const& text, int lane = 0, BackKind back = BackKind::none) {
    Made made{support::read_plan(text), {}};
    REQUIRE(made.read.error() == "");
    made.card = CardViews{made.read.plan()}.card(0, lane, back);
    return made;
}

CardRow row(std::string const& line) {
    auto const made =
        card("pool 25m\nrest 20-40s\nsession \"One\"\n  main\n    " + line + "\n    100 crawl\n");
    REQUIRE_FALSE(made.card.sections.front().rows.empty());
    return made.card.sections.front().rows.front();
}

} // namespace

TEST_CASE("a line in words, class by class") {
    auto const plain = row("4 x 50 crawl steady with board rest 30s \"long arms\"");
    CHECK(plain.count == "4");
    CHECK(plain.amount == Strings{"50"});
    CHECK(plain.what == Strings{"crawl", "steady", "with board"});
    CHECK(plain.recovery == "rest 30s");
    CHECK(plain.notes == Strings{"long arms"});
    CHECK(plain.lengths == "8");
    CHECK(row("100 back at 95%").what == Strings{"back", "at 95%"});
    CHECK(row("2 x 50 hold 0:52").what == Strings{"hold 0:52"});
    CHECK(row("3min tread").amount == Strings{"3min"});
    CHECK(row("3min tread").lengths.empty());
    CHECK(row("100, 200, 100 crawl").amount == Strings{"100", "200", "100"});
    CHECK(row("400 crawl broken at 100 for 15s").how == Strings{"broken at 100 for 15s"});
    CHECK(row("8 x 25 fly on 0:50, every 4th easy, first hard").how == Strings{"every 4th easy, first hard"});
    CHECK(row("6 x 50 pull descend 1-3").how == Strings{"descend 1–3"});
    CHECK(row("50 crawl build").what == Strings{"crawl", "build"});
    CHECK(row("if time: 4 x 25 crawl").lengths == "+4");
    CHECK(row("6 x 100 crawl on 2:30").hand == "hand 00 30");
}

TEST_CASE("no hand stands where a rep takes longer than its send-off") {
    // steady at 2:30 per 100: 50 m in 1:20, and twice that for 100
    auto const timed = [](std::string const& line) {
        auto const made = card("pool 25m\nthreshold 2:30 per 100m\nsession \"One\"\n  main\n    " + line +
                               "\n    100 crawl\n");
        return made.card.sections.front().rows.front();
    };
    CHECK(timed("4 x 50 on 1:30").hand == "hand 00 30");
    CHECK(timed("4 x 50 on 1:15").hand.empty());
    CHECK(timed("4 x 50 on 1:15").recovery == "on 1:15");
    CHECK(timed("50, 100, 50 on 1:30").hand.empty()); // one late start is enough
    CHECK(timed("3 x (4 x 50 on 1:30 + 100) rest 1min").rows.front().hand == "hand 00 30");
    CHECK(timed("3 x (4 x 50 on 1:15 + 100) rest 1min").rows.front().hand.empty());
    CHECK(timed("3 x (2 x 50 rest 10s) on 3:10").hand == "hand 00 10 20");
    CHECK(timed("3 x (2 x 50 rest 10s) on 2:45").hand.empty());
    CHECK(timed("4 x 50 on 1:30, last kick").hand.empty());
}

TEST_CASE("each lane's card has the hand that its pace allows") {
    std::string const text =
        "pool 25m\nthreshold 2:30 per 100m\nswimmer \"Odo\" threshold 1:40 per 100m lane 1\n"
        "session \"One\"\n  main\n    4 x 50 on 1:15\n    lane 1-2: 100 crawl\n";
    CHECK(card(text, 1).card.sections.front().rows.front().hand == "hand 00 15 30 45");
    CHECK(card(text, 2).card.sections.front().rows.front().hand.empty());
}

TEST_CASE("a split says its parts; equal halves once, others below") {
    auto const halves = row("4 x 50 as 25 drill \"fist\" / 25 crawl");
    CHECK(halves.what == Strings{"fist / crawl"});
    CHECK(halves.halves == "25 / 25");
    CHECK(halves.split.empty());
    CHECK(halves.plain_what == "drill / crawl");
    CHECK(halves.parts == "25 fist / 25 crawl");
    CHECK(row("100 as 25 drill \"fist\" / 75 crawl").split == "as 25 / 75");
    CHECK(row("200 as 50 back / 50 crawl").split == "as 50 / 50"); // twice
}

TEST_CASE("what a section holds is not said again") {
    auto const made =
        card("pool 25m\nrest 20-40s\nsession \"One\"\n  warm-up choice easy\n    100\n    2 x 50 hard\n"
             "  main rest 10s\n    4 x 50 crawl\n    50 back rest 20s\n  cool-down easy\n    100 crawl\n");
    auto const& sections = made.card.sections;
    CHECK(sections[0].holds == Strings{"choice", "easy", "rest 20–40s"});
    CHECK(sections[0].rows[0].what.empty());
    CHECK(sections[0].rows[1].what == Strings{"hard"});
    CHECK(sections[1].holds == Strings{"rest 10s"});
    CHECK(sections[1].rows[0].recovery.empty());
    CHECK(sections[1].rows[1].recovery == "rest 20s");
    CHECK(sections[2].holds == Strings{"easy"}); // nothing follows its rep, so no rest does
}

TEST_CASE("a group holds its rows; one rep in rounds is a count") {
    auto const group = row("3 x (100 crawl rest 25s + 50 back) rest 40s");
    CHECK(group.kind == CardRow::Kind::group);
    CHECK(group.count == "3");
    CHECK(group.recovery == "rest 40s");
    CHECK(group.lengths == "18");
    REQUIRE(group.rows.size() == 2);
    CHECK(group.rows[0].lengths == "4");
    auto const one = row("3 x (50 crawl)");
    CHECK(one.kind == CardRow::Kind::set);
    CHECK(one.count == "3");
    CHECK(one.lengths == "6");
}

TEST_CASE("a note line belongs to what it precedes, the last one to itself") {
    auto const made = card(
        "pool 25m\nsession \"One\"\n  main\n    \"before\"\n    100 crawl \"behind\"\n    \"at the end\"\n");
    auto const& rows = made.card.sections.front().rows;
    REQUIRE(rows.size() == 2);
    CHECK(rows[0].notes == Strings{"before", "behind"});
    CHECK(rows[1].kind == CardRow::Kind::note);
    CHECK(rows[1].notes == Strings{"at the end"});
}

TEST_CASE("head and foot: day, facts, people, sums") {
    std::string const plan =
        "race sprint on 2027-05-30\nswimmer \"Ada\" threshold 1:40 per 100m lane 1\n"
        "swimmer \"Bo\" threshold 1:40 per 100m lane 1\npool 25m\nthreshold 1:40 per 100m\n"
        "before longest 600m\nweek 1 from 2027-05-03\n  session Tue 07:00 for 45min \"Far\"\n"
        "    main\n      750 crawl steady\n      lane 1: 2 x 50 crawl on 1:30\n"
        "      if time: 50 crawl\n";
    auto const made = card(plan, 1);
    CHECK(made.card.title == "Far");
    CHECK(made.card.whose == "lane 1");
    CHECK(made.card.when.front() == "Tue 4 May, 07:00 · pool 25 m");
    CHECK(made.card.facts.front() == "longest today 750, before 600, race 750");
    CHECK(made.card.people == "Ada, Bo · 1:40 per 100 m");
    CHECK(made.card.total == "850 m");
    CHECK(made.card.lengths == "34");
    REQUIRE(made.card.minutes.size() == 2);
    CHECK(made.card.minutes.front().find(" of 45 min") != std::string::npos);
    REQUIRE(made.card.strip.has_value());
    CHECK(made.card.strip->lengths == 30);
    CHECK(made.card.sections.front().rows.front().longest);
    CHECK(made.card.sections.front().rows.front().clock == "07:00");
}

TEST_CASE("facts stand only on a day that is worth them") {
    auto const made = card("pool 25m\nbefore longest 600m\nrace sprint on 2027-05-30\nsession \"Near\"\n  "
                           "main\n    100 crawl\n");
    CHECK(made.card.facts.empty());
    CHECK_FALSE(made.card.strip.has_value());
}

TEST_CASE("a session without a name is called by its day") {
    auto const made =
        card("pool 25m\nweek 1 from 2027-05-03\n  session Tue 07:00\n    main\n      100 crawl\n");
    CHECK(made.card.title == "Tue 4 May, 07:00");
    CHECK(made.card.when == Wordings{"pool 25 m"});
}

// At a hold of 10:00 for 600 m every 100 takes 1:40, whoever swims.
TEST_CASE("passing times of the longest rep, each 100 and the end") {
    auto const made = card("pool 25m\nswimmer \"Ada\" threshold 1:40 per 100m\nsession \"Far\"\n  main\n"
                           "    650 crawl hold 10:50\n",
                           0, BackKind::pace);
    REQUIRE(made.card.back.has_value());
    auto const& back = *made.card.back;
    CHECK(back.title == "650 m at the walls");
    CHECK(back.columns == Strings{"m", "Ada"});
    REQUIRE(back.lines.size() == 7);
    CHECK(back.lines[0].cells == Strings{"100", "1:40"});
    CHECK(back.lines[5].cells == Strings{"600", "10:00"});
    CHECK(back.lines[6].cells == Strings{"650", "10:50"});
}

TEST_CASE("the week in one lane") {
    auto const made =
        card("race \"Pond\" sprint on 2027-05-30\npool 25m\nweek 1 from 2027-05-03\n  session Tue \"A\"\n"
             "    main\n      400 crawl\n  session Thu \"B\"\n    main\n      lane 1: 200 crawl\n"
             "      lane 2: 100 crawl\n",
             0, BackKind::overview);
    auto const& back = *made.card.back;
    CHECK(back.title == "Week 1");
    REQUIRE(back.lines.size() == 3);
    CHECK(back.lines[0].cells == Strings{"400", "16", "400", "-"});
    CHECK(back.lines[1].cells == Strings{"200", "8", "200", "-"});
    CHECK(back.lines[2].cells == Strings{"", "", "750"});
}
