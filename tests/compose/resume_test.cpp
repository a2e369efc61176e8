#include "check/register.hpp"
#include "cli/put_weeks.hpp"
#include "compose/author.hpp"
#include "compose/ramp.hpp"
#include "compose/resume.hpp"
#include "compose/text.hpp"

#include "grammar/write.hpp"
#include "support/plain_ramp.hpp"
#include "support/read_plan.hpp"

#include <catch2/catch.hpp>
#include <fmt/core.h>

#include <algorithm>

using namespace lengthwise;
using namespace lengthwise::compose;

namespace {

constexpr std::string_view head = "race \"Gull Island\" sprint on 2027-06-06\n"
                                  "pool 25m\n"
                                  "threshold 2:00 per 100m\n"
                                  "rest 20-30s\n"
                                  "limit rep-step 30%\n"
                                  "before longest 200m week 1000m\n";

std::string session(std::string_view start, int metres, int longest) {
    return fmt::format("  session {}\n    warm-up\n      {}\n    main\n      {}\n    cool-down\n      50\n",
                       start, metres - longest - 50, longest);
}

std::string week(int number, std::string_view from, std::string const& sessions) {
    return fmt::format("week {}{}\n{}", number, from, sessions);
}

std::string const usual_week =
    session("Tue 07:00 for 45min", 600, 150) + session("Fri 19:00 for 45min", 700, 250);

Request asked(std::string const& text, std::uint32_t after = 1, Instead const& instead = {}) {
    auto const read = support::read_plan(text);
    REQUIRE(read.error() == "");
    auto found = request_behind(read.plan(), after, instead);
    auto const* const obstacle = std::get_if<Obstacle>(&found);
    INFO((obstacle == nullptr ? "" : obstacle->message));
    REQUIRE(obstacle == nullptr);
    return std::get<Request>(found);
}

std::string obstacle(std::string const& text, std::uint32_t after = 1, Instead const& instead = {}) {
    auto const read = support::read_plan(text);
    REQUIRE(read.error() == "");
    auto const found = request_behind(read.plan(), after, instead);
    REQUIRE(std::holds_alternative<Obstacle>(found));
    return std::get<Obstacle>(found).message + " = " + std::get<Obstacle>(found).hint;
}

std::string two_weeks(std::string const& second, std::string_view from = " from 2027-04-26") {
    return std::string{head} + week(1, from, usual_week) + week(2, "", second);
}

} // namespace

TEST_CASE("resume: the wish is what the plan has", "[compose]") {
    auto const request = asked(two_weeks(usual_week));
    CHECK(request.race.name == "Gull Island");
    CHECK(request.race.kind == RaceKind::sprint);
    CHECK(request.race.on == parse_date("2027-06-06"));
    CHECK(request.from == parse_date("2027-05-03"));
    CHECK(request.first_week == 2);
    CHECK(request.weeks_swum == 1);
    CHECK_FALSE(request.race_swum);
    CHECK(request.days == std::vector<std::uint8_t>{1, 4});
    CHECK(time_on(request, *parse_date("2027-05-04")) == TimeOfDay{7 * 60});
    CHECK(time_on(request, *parse_date("2027-05-07")) == TimeOfDay{19 * 60});
    CHECK(request.slot == Duration::minutes(45));
    CHECK(request.pool == Pool::of(Distance::metres(25), Unit::metre));
    CHECK(request.threshold == Duration::minutes(2));
    CHECK(request.session == Distance::metres(650));
    CHECK(limit(request, "rep-step") == 30);
}

TEST_CASE("resume: what is said comes before what the plan has", "[compose]") {
    plan::Threshold slower;
    slower.time = Duration::seconds(130);
    Instead const instead{.from = parse_date("2027-05-19"),
                          .days = std::vector<std::uint8_t>{2},
                          .at = TimeOfDay{8 * 60},
                          .slot = Duration::minutes(30),
                          .pool = Pool::of(Distance::yards(25), Unit::yard),
                          .threshold = slower};
    auto const request = asked(two_weeks(usual_week), 1, instead);
    CHECK(request.from == parse_date("2027-05-19"));
    CHECK(request.first_week == 4); // two weeks and two days later than the next one
    CHECK(request.days == std::vector<std::uint8_t>{2});
    CHECK(time_on(request, *parse_date("2027-05-19")) == TimeOfDay{8 * 60});
    CHECK(request.slot == Duration::minutes(30));
    CHECK(request.pool.unit == Unit::yard);
    CHECK(request.threshold == Duration::seconds(130));
}

TEST_CASE("resume: the days are those of the fullest week to come", "[compose]") {
    auto const one = session("Fri for 45min", 700, 250);
    CHECK(asked(two_weeks(one) + week(3, "", usual_week)).days == std::vector<std::uint8_t>{1, 4});
    CHECK(asked(two_weeks(one)).days == std::vector<std::uint8_t>{4});
    // Nothing stands behind the last week: then it is the pattern itself.
    CHECK(asked(two_weeks(one), 2).days == std::vector<std::uint8_t>{4});
}

TEST_CASE("resume: a threshold that is about right is reckoned a tenth slower", "[compose]") {
    auto text = two_weeks(usual_week);
    text.replace(text.find("threshold"), 9, "threshold about");
    CHECK(asked(text).threshold == Duration::seconds(132));
}

TEST_CASE("resume: what cannot be gone on with says what helps", "[compose]") {
    auto const plan = two_weeks(usual_week);
    auto without = [&](std::string_view line) {
        auto text = plan;
        return text.erase(text.find(line), line.size());
    };
    CHECK(obstacle(plan, 3) ==
          "there is no week 3, the plan has weeks 1 and 2 = --after takes the last week that stays as it is");
    CHECK(obstacle(std::string{head} + "week 7\n" + usual_week, 3)
              .starts_with("there is no week 3, the plan has week 7 ="));
    CHECK(obstacle(std::string{head} + usual_week)
              .starts_with("there is no week 1, the plan has no week with a number ="));
    CHECK(obstacle(without("race \"Gull Island\" sprint on 2027-06-06\n"))
              .starts_with("the plan names no race to go on to = "));
    CHECK(obstacle(two_weeks(usual_week, "")) ==
          "week 1 has no date = --from 2027-05-17, or in the plan: week 1 from 2027-05-10");
    CHECK(obstacle(plan, 1, {.from = parse_date("2027-05-02")}) ==
          "Sun 2 May 2027 is not behind week 1 = --from 2027-05-03 or later");
    CHECK(obstacle(std::string{head} + week(997, " from 2027-04-26", usual_week), 997) ==
          "the last week would be week 1002, numbers go up to 999 = give the weeks lower numbers");
    CHECK(obstacle(plan + "      lane 1: 100\n") ==
          "the plan has lanes, compose writes for one = a file for each lane goes on by itself");
    CHECK(obstacle(two_weeks(session("for 45min", 600, 100))) ==
          "a session of week 2 has no day = --days Tue,Fri");
    CHECK(obstacle(two_weeks(usual_week + session("Fri for 45min", 600, 100))) ==
          "week 2 has two sessions on Fri, compose plans one a day = --days Tue,Fri");
    CHECK(obstacle(two_weeks(usual_week) + week(3, "", session("Wed for 45min", 600, 100))) ==
          "the days differ from week to week: Tue,Wed,Fri = which of them? --days Tue,Fri");
    CHECK(obstacle(two_weeks(usual_week) + week(3, "", session("Tue 08:00 for 45min", 600, 100))) ==
          "sessions on Tue begin at 07:00 and 08:00 = which? --at 07:00");
    CHECK(obstacle(two_weeks(session("Tue", 600, 100))) ==
          "not every session has its slot = the time booked: --slot 45min");
    CHECK(obstacle(two_weeks(usual_week) + week(3, "", session("Tue 07:00 for 40min", 600, 100))) ==
          "the slots differ = the shortest holds all: --slot 40min");
    CHECK(obstacle(two_weeks("  pool 50m\n" + usual_week) + week(3, "", usual_week)) ==
          "the pools differ = which one? --pool 25m");
    CHECK(obstacle(without("pool 25m\n")) == "the plan names no pool with a length = --pool 25m");
    CHECK(obstacle(two_weeks("  threshold 1:50\n" + usual_week) + week(3, "", usual_week)) ==
          "the threshold differs from session to session = which one? --threshold 2:05");
    CHECK(obstacle(plan, 1, {.pool = Pool::of(Distance::metres(50), Unit::metre)}) ==
          "\"threshold 2:00 per 100m\" is not for 100 m in this pool = what is it there? --threshold "
          "2:05");
}

TEST_CASE("resume: today is at most the highest so far", "[compose]") {
    auto const plan = support::read_plan(two_weeks(usual_week));
    REQUIRE(plan.error() == "");
    auto const highest = highest_up_to(plan.plan(), 1);
    CHECK(highest.longest == Distance::metres(400)); // the warm-up's
    CHECK(highest.week == Distance::metres(1300));
    auto request = asked(two_weeks(usual_week));
    request.longest = Distance::metres(1000);
    request.session = Distance::metres(2000);
    hold_to(request, highest);
    CHECK(request.longest == Distance::metres(400));
    CHECK(request.session == Distance::metres(650));
    request.longest = Distance::metres(100);
    request.session = Distance::metres(200);
    hold_to(request, highest);
    CHECK(request.longest == Distance::metres(100));
    CHECK(request.session == Distance::metres(200));
    hold_to(request, {});
    CHECK(request.longest == Distance::metres(100));
}

TEST_CASE("resume: the new weeks say what the head has otherwise", "[compose]") {
    auto const settings = [](std::string const& text, Instead const& instead = {}) {
        auto const read = support::read_plan(text);
        REQUIRE(read.error() == "");
        auto const request = asked(text, 1, instead);
        std::string lines;
        for (auto const& line : head_behind(read.plan(), request, support::plain_ramp(request)).settings) {
            lines += line;
        }
        return lines;
    };
    auto const changed = [](std::string_view line, std::string_view to) {
        auto text = two_weeks(usual_week);
        return text.replace(text.find(line), line.size(), to);
    };
    CHECK(settings(two_weeks(usual_week)) == "");
    CHECK(settings(changed("rest 20-30s\n", "")) == "rest 20-30s\n");
    CHECK(settings(changed("rest 20-30s", "rest 1min")) == "rest 20-30s\n");
    CHECK(settings(changed("threshold 2:00", "threshold about 2:00")) == "");
    CHECK(settings(two_weeks("  threshold 1:50\n" + usual_week)) == "threshold 1:50 per 100m\n");
    plan::Threshold slower;
    slower.time = Duration::seconds(130);
    CHECK(settings(two_weeks(usual_week), {.pool = Pool::of(Distance::metres(20), Unit::metre),
                                           .threshold = slower}) == "pool 20m\nthreshold 2:10 per 100m\n");
}

namespace {

/// A plan, and the same gone on with behind one of its weeks from less than it had there.
struct Resumed {
    std::string before;
    std::string kept; ///< of it, that stays
    std::string after;
};

std::optional<Resumed> resumed(std::mt19937& random) {
    auto const request = support::random_request(random);
    auto const ramp = refusals(request).empty() ? ramp_of(request) : std::nullopt;
    if (!ramp) {
        return std::nullopt;
    }
    auto const weeks = sessions_of(request, *ramp);
    auto const text = plan_text(request, *ramp, weeks);
    auto const read = support::read_plan(text);
    auto const after = weeks[random() % weeks.size()].number;
    auto const number = static_cast<std::uint32_t>(after);
    auto const found = request_behind(read.plan(), number, {});
    if (std::holds_alternative<Obstacle>(found)) {
        return std::nullopt;
    }
    auto wish = std::get<Request>(found);
    wish.longest = wish.pool.length * static_cast<std::int64_t>(1 + random() % 40);
    wish.session = wish.pool.length * static_cast<std::int64_t>(4 + random() % 100);
    hold_to(wish, highest_up_to(read.plan(), number));
    auto const again = refusals(wish).empty() ? ramp_of(wish) : std::nullopt;
    if (!again) {
        return std::nullopt;
    }
    auto const& root = read.bundle->root();
    auto const rest = cli::behind_week(root, number);
    auto const said = head_behind(read.plan(), wish, *again);
    return Resumed{text, text.substr(0, rest.span.begin - root.source.base()),
                   cli::with_weeks(root, rest, weeks_text(wish, *again, sessions_of(wish, *again), said))};
}

} // namespace

TEST_CASE("resume: what was swum stays byte for byte, and nothing is to mend behind it", "[compose]") {
    std::mt19937 random{4004};
    auto met = 0;
    for (auto i = 0; i < 1500; ++i) {
        auto const found = resumed(random);
        if (!found) {
            continue;
        }
        ++met;
        INFO(i << '\n' << found->after);
        REQUIRE(found->before.starts_with(found->kept));
        REQUIRE(found->after.starts_with(found->kept));
        auto const read = support::read_plan(found->after);
        REQUIRE(read.error() == "");
        auto const findings = check::check(read.plan());
        for (auto const& finding : findings.kept()) {
            CHECK(finding.message == "");
        }
        CHECK(grammar::write(read.bundle->root().tree) == found->after);
    }
    CHECK(met >= 100);
}
