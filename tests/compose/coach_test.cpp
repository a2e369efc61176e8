#include "compose/author.hpp"
#include "compose/ramp.hpp"
#include "compose/text.hpp"
#include "compose/wishes.hpp"

#include <catch2/catch.hpp>

#include <string>

/// What a coach who reads a whole plan would not put up with.
namespace lengthwise::compose {
namespace {

struct Plan {
    std::vector<Week> weeks;
    std::string text;

    [[nodiscard]] bool says(std::string_view words) const { return text.find(words) != std::string::npos; }
};

Plan composed(Request const& request) {
    REQUIRE(refusals(request).empty());
    auto const ramp = ramp_of(request);
    REQUIRE(ramp);
    auto weeks = sessions_of(request, *ramp);
    auto text = plan_text(request, *ramp, weeks);
    return {std::move(weeks), std::move(text)};
}

constexpr auto first_time = "# The whole race distance in one go, for the first time.\n";
constexpr auto whole = "\"the whole distance: slow first quarter\"";

TEST_CASE("a share of the race is not called the whole of it", "[compose]") {
    auto request = support::wish(1000, 12, 300, 1000);
    auto const all = composed(request);
    CHECK(all.says(first_time));
    CHECK(all.says(whole));
    support::set_limit(request, "race-rep", 75);
    auto const share = composed(request);
    CHECK(share.says("750 in one go"));
    CHECK_FALSE(share.says(first_time));
    CHECK_FALSE(share.says(whole));
}

TEST_CASE("more than the race is asked for: all of it is swum before", "[compose]") {
    auto request = support::wish(400, 14, 200, 800);
    support::set_limit(request, "race-rep", 125);
    auto const plan = composed(request);
    auto const at = plan.text.find(first_time);
    REQUIRE(at != std::string::npos);
    CHECK(plan.text.find("\"Build: longest 400, ", at) < plan.text.find("\"Build: longest 500, ", at));
    CHECK(plan.text.find(first_time, at + 1) == std::string::npos);
}

TEST_CASE("what can be swum today is not swum for the first time", "[compose]") {
    auto const plan = composed(support::wish(400, 4, 450, 900));
    CHECK_FALSE(plan.says(first_time));
    CHECK_FALSE(plan.says(whole));
}

TEST_CASE("two small sessions of an easy week are not alike", "[compose]") {
    auto request = support::wish(1500, 40, 50, 400);
    request.days = support::days(3);
    auto const plan = composed(request);
    auto const& week = plan.weeks.at(2).sessions;
    REQUIRE(week.size() == 3);
    CHECK(week[0].title == "Build each rep");
    CHECK(week[2].title == "Short and smooth");
}

TEST_CASE("after more than a week without water a plan does not pretend", "[compose]") {
    auto request = support::wish(750, 16, 200, 1000);
    auto const close = [&](int week) {
        for (auto const day : {1, 4}) {
            request.closed.push_back(request.from + std::chrono::days{7 * (week - 1) + day});
        }
    };
    close(5);
    CHECK(composed(request).says("# Week 5 is left out: closed days.\n"));
    close(6);
    CHECK(composed(request).says(
        "# Weeks 5 and 6 are left out: closed days. Were they not swum elsewhere, find out what\n"
        "# still goes and begin again from there: lengthwise compose --resume\n"));
    close(7);
    CHECK(composed(request).says("# Weeks 5 to 7 are left out: closed days. "));
}

TEST_CASE("drills of long sessions are not cut alike every week", "[compose]") {
    auto request = support::wish(3800, 30, 1500, 3500);
    request.pool = Pool::of(Distance::metres(50), Unit::metre);
    std::vector<std::vector<int>> cuts;
    for (auto const& week : composed(request).weeks) {
        std::vector<int> counts;
        for (auto const& line : week.sessions.front().section(SectionKind::drill)->lines) {
            counts.push_back(line.count);
        }
        cuts.push_back(counts);
    }
    CHECK(cuts[0] == std::vector{3, 4, 3});
    CHECK(cuts[1] == std::vector{5, 5});
    CHECK(std::ranges::count(cuts, std::vector{3, 4, 1}) > 2); // what it found kept in one go
}

TEST_CASE("who swims far has a few long ones that are long", "[compose]") {
    auto request = support::wish(3800, 23, 1500, 2500);
    request.pool = Pool::of(Distance::metres(50), Unit::metre);
    request.days = support::days(4);
    auto const plan = composed(request);
    CHECK(plan.says("\"A few long ones\""));
    for (auto const& week : plan.weeks) {
        for (auto const& session : week.sessions) {
            if (session.title == "A few long ones") {
                auto const& main = session.section(SectionKind::main)->lines;
                CHECK(main.size() == 1);
                CHECK(longest_rep(main.front()) >= 6);
            }
        }
    }
}

TEST_CASE("a limit is written in the unit that can say it", "[compose]") {
    auto request = support::wish(750, 12, 300, 1000);
    support::set_limit(request, "session-floor", Distance::metres(1000).units());
    CHECK(composed(request).says("limit session-floor 1000m\n"));
    request.pool = Pool::of(Distance::yards(25), Unit::yard);
    CHECK(composed(request).says("limit session-floor 1000m\n"));
    request.limits.front().low = request.limits.front().high = Distance::yards(1001).units();
    CHECK(composed(request).says("limit session-floor 1001yd\n"));
    request.pool = support::pool_25m;
    CHECK(composed(request).says("limit session-floor 1001yd\n"));
}

} // namespace
} // namespace lengthwise::compose
