#include "report/choose.hpp"
#include "support/read_plan.hpp"

#include <catch2/catch.hpp>

/// `--week`, `--session`, `--lane`.
namespace lengthwise::report {
namespace {

support::ReadPlan two_weeks() {
    auto read = support::read_plan("pool 25m\n"
                                   "week 1 from 2027-06-28\n"
                                   "session Mon 06:30 \"Glide\"\nmain\nlane 1: 100\nlane 3: 50\n"
                                   "session Thu\nmain\n100\n"
                                   "week 3\n"
                                   "session Mon \"Thu\"\nmain\n100\n"
                                   "session 2027-07-15\nmain\n100\n"
                                   "session\nmain\n100\n");
    REQUIRE(read.error() == "");
    return read;
}

std::vector<plan::Index> found(std::string const& session, std::optional<std::uint32_t> week = {}) {
    return sessions_like(two_weeks().plan(), {week, session, std::nullopt});
}

using Indices = std::vector<plan::Index>;

std::string problem(Wish const& wish) {
    return pick_scope(two_weeks().plan(), wish).problem;
}

} // namespace

TEST_CASE("a session is found by its day, in short or in full and in any case") {
    CHECK(found("Mon") == Indices{0, 2});
    CHECK(found("monday") == Indices{0, 2});
    CHECK(found("MON", 3) == Indices{2});
    CHECK(found("Sun").empty());
}

TEST_CASE("a session that was dated has a day too") {
    CHECK(found("Thursday", 3) == Indices{3});
    CHECK(found("2027-07-15") == Indices{3});
    CHECK(found("2027-06-28") == Indices{0});
}

TEST_CASE("a session is found by its name, byte by byte, and a name wins over a day") {
    CHECK(found("Glide") == Indices{0});
    CHECK(found("glide").empty());
    CHECK(found("Thu") == Indices{2});
}

TEST_CASE("a session without day and name is found by its place") {
    CHECK(found("5") == Indices{4});
    CHECK(found("5", 1).empty());
    CHECK(found("0").empty());
    CHECK(found("6").empty());
    CHECK(found("99999999999999999999").empty());
    CHECK(found("").empty());
}

TEST_CASE("nothing asked is the whole plan, a week is a week, a session one of them") {
    auto const read = two_weeks();
    CHECK(pick_scope(read.plan(), {}).scope.kind == Scope::Kind::plan);
    auto const week = pick_scope(read.plan(), {3, std::nullopt, std::nullopt});
    CHECK(week.scope.kind == Scope::Kind::week);
    CHECK(week.scope.index == 1);
    auto const session = pick_scope(read.plan(), {3, "Mon", std::nullopt});
    CHECK(session.scope.kind == Scope::Kind::session);
    CHECK(session.scope.index == 2);
}

TEST_CASE("a day that several weeks have lists them") {
    CHECK(problem({std::nullopt, "Mon", std::nullopt}) ==
          "2 sessions fit \"Mon\"; choose one with --week and --session\n"
          "  1  week 1  Mon 28 Jun 06:30  Glide\n"
          "  3  week 3  Mon 12 Jul  Thu");
}

TEST_CASE("what is not there says what is") {
    CHECK(problem({2, std::nullopt, std::nullopt}) == "no week 2; the plan has weeks 1, 3");
    auto const one = support::read_plan("week 4\nsession\nmain\n100\n");
    CHECK(pick_scope(one.plan(), {2, std::nullopt, std::nullopt}).problem ==
          "no week 2; the plan has week 4");
    CHECK(problem({1, "Sun", std::nullopt}) == "no session \"Sun\" in week 1; try one of\n"
                                               "  1  week 1  Mon 28 Jun 06:30  Glide\n"
                                               "  2  week 1  Thu 1 Jul");
    CHECK(problem({std::nullopt, std::nullopt, 2}) == "no lane 2; the plan has lanes 1, 3");
    CHECK(problem({std::nullopt, std::nullopt, 0}) == "no lane 0; the plan has lanes 1, 3");
    CHECK(problem({std::nullopt, std::nullopt, 1000}) == "no lane 1000; the plan has lanes 1, 3");
    CHECK(problem({std::nullopt, "\033[2J", std::nullopt}).find('\033') == std::string::npos);
}

TEST_CASE("a lane of the plan may be asked for in a session that does not name it") {
    CHECK(problem({3, "Mon", 3}).empty());
    auto const plain = support::read_plan("session\nmain\n100\n");
    CHECK(pick_scope(plain.plan(), {std::nullopt, std::nullopt, 1}).problem ==
          "no lane 1; no line has a lane label");
}

TEST_CASE("one session: the only one, the one asked for, else that of today") {
    auto const read = two_weeks();
    auto const one = [&](Wish const& wish, std::string_view today = "") {
        return pick_session(read.plan(), wish, parse_date(today));
    };
    CHECK(one({std::nullopt, "Glide", std::nullopt}).scope.index == 0);
    CHECK(one({}, "2027-07-01").scope.index == 1);
    CHECK(one({std::nullopt, "Glide", std::nullopt}, "2027-07-01").scope.index == 0);
    CHECK(
        one({}, "2027-07-02")
            .problem.starts_with("5 sessions, none on Fri 2 July 2027; choose one with --week and --session\n"
                                 "  1  week 1"));
    CHECK(one({}).problem.starts_with("5 sessions; choose one with --week and --session\n  1  week 1"));
    CHECK_FALSE(one({}).found());
    auto const single = support::read_plan("session\nmain\n100\n");
    CHECK(pick_session(single.plan(), {}, std::nullopt).scope.kind == Scope::Kind::session);
    auto const none = support::read_plan("pool 25m\n");
    CHECK(pick_session(none.plan(), {}, std::nullopt).problem == "no session");
}

TEST_CASE("a long list is cut and counted") {
    std::string text;
    for (int i = 0; i < 30; ++i) {
        text += "session\nmain\n100\n";
    }
    auto const read = support::read_plan(text);
    auto const list = pick_session(read.plan(), {}, std::nullopt).problem;
    CHECK(list.find("\n  20\n  and 10 more") != std::string::npos);
    CHECK(list.find("\n  21") == std::string::npos);
}

TEST_CASE("labels of lanes, weeks and sessions") {
    calc::LaneSet lanes;
    lanes.set(2);
    CHECK(lanes_label(lanes) == "lane 2");
    lanes.set(3);
    CHECK(lanes_label(lanes) == "lanes 2, 3");
    lanes.set(4).set(9);
    CHECK(lanes_label(lanes) == "lanes 2–4, 9");
    CHECK(lanes_label(lanes, true) == "lanes 2-4, 9");
    auto const read = two_weeks();
    CHECK(week_label(read.plan().weeks[1]) == "week 3");
    CHECK(week_label({}) == "no week");
    CHECK(session_label(read.plan(), 0) == "Glide");
    CHECK(session_label(read.plan(), 1) == "Thu 1 Jul");
    CHECK(session_label(read.plan(), 4) == "session 5");
}

} // namespace lengthwise::report
