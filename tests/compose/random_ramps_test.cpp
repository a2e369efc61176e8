#include "compose/ramp.hpp"
#include "compose/random_wish.hpp"
#include "compose/session_time.hpp"
#include "compose/ways_out.hpp"
#include "compose/wishes.hpp"

#include "calc/growth.hpp"

#include <catch2/catch.hpp>

#include <algorithm>
#include <chrono>
#include <random>
#include <string>
#include <vector>

using namespace lengthwise;
using compose::DayKind;
using compose::Ramp;
using compose::RampWeek;
using compose::Request;
using compose::WeekKind;

namespace {

// --- what every ramp keeps to, said again without its own code -----------------------------

void check_days(Request const& request, Ramp const& ramp, RampWeek const& week) {
    auto laps = 0;
    auto long_days = 0;
    for (auto const& day : week.days) {
        laps += day.laps;
        CHECK(day.laps >= 4);
        CHECK(day.date < request.race.on);
        CHECK(std::ranges::count(request.closed, day.date) == 0);
        if (day.kind == DayKind::long_day) {
            ++long_days;
            CHECK(day.laps >= std::max(week.rep + 3, (4 * week.rep + 2) / 3));
            CHECK(day.laps * static_cast<int>(week.days.size()) >= week.laps);
        }
        if (request.threshold) {
            auto const kind = day.kind == DayKind::long_day ? day.kind : DayKind::pace;
            auto const time =
                compose::SessionTimes{ramp.pool, *request.threshold}.of(kind, day.laps, week.rep);
            CHECK(time <= compose::usable_slot(request));
        }
    }
    CHECK(laps == week.laps);
    CHECK(long_days == (week.days.empty() ? 0 : 1));
    CHECK(std::ranges::is_sorted(week.days, {}, &compose::Day::date));
}

/// As the rules of growth judge it: each week against the highest before it.
void check_growth(Request const& request, Ramp const& ramp) {
    auto const length = request.pool.length;
    auto longest = ramp.today_longest * length;
    auto highest = ramp.today_week * length;
    Distance built;
    for (auto const& week : ramp.weeks) {
        auto const each = static_cast<std::int64_t>(week.days.size()) * ramp.lap;
        auto const rep = week.rep * ramp.lap;
        auto const laps = week.laps * ramp.lap;
        CHECK(rep <= calc::next_rep(longest, ramp.lap, compose::limit(request, "rep-step")));
        CHECK(laps <= calc::next_week(highest, each, compose::limit_or(request, "week-growth", 10)));
        if (week.kind == WeekKind::build) {
            CHECK(laps >= built);
            built = laps;
        } else if (!week.days.empty()) {
            CHECK(laps <= std::max(highest, 4 * each));
        }
        longest = std::max(longest, rep);
        highest = std::max(highest, laps);
    }
}

/// Easy weeks have their share, and their rep is no longer than they may have; as docs/compose.md says it.
void check_easy(Request const& request, Ramp const& ramp) {
    auto const u = ramp.lengths_a_lap;
    auto const first = std::ranges::find(ramp.weeks, WeekKind::build, &RampWeek::kind);
    auto rep = std::min(ramp.today_longest / u, first->rep);
    auto week_lengths = std::min(ramp.today_week, first->laps * u);
    auto const two_hundred = static_cast<int>(Distance::metres(200).units() / ramp.lap.units());
    for (auto const& week : ramp.weeks) {
        if (week.kind == WeekKind::build) {
            rep = week.rep;
            week_lengths = week.laps * u;
        } else if (week.kind != WeekKind::empty) {
            auto const j = static_cast<int>(week.days.size());
            auto const taper = week.kind == WeekKind::taper;
            CHECK((week.percent == 70 || (taper && week.percent <= 60)));
            CHECK(week.laps == std::max(week_lengths * week.percent * j / (100 * ramp.sessions * u), 4 * j));
            auto const most = taper ? ramp.race_rep / 2 : std::max(rep * 7 / 10, std::min(rep, two_hundred));
            CHECK(week.rep <= std::max(most, 1));
            CHECK(week.rep >= 1);
        }
    }
    CHECK(ramp.lap == request.pool.length * u);
}

void check_race_rep(Request const& request, Ramp const& ramp) {
    auto const build = std::find_if(ramp.weeks.rbegin(), ramp.weeks.rend(),
                                    [](auto const& week) { return week.kind == WeekKind::build; });
    REQUIRE(build != ramp.weeks.rend());
    CHECK(build->rep * ramp.lap >=
          calc::race_rep(request.race.distance, compose::limit_or(request, "race-rep", 100)));
    auto const floor = Distance::units(compose::limit_or(request, "session-floor", 0));
    auto const longest = std::ranges::max(build->days, {}, &compose::Day::laps);
    CHECK(longest.laps * ramp.lap >= floor);
}

void check_taper(Request const& request, Ramp const& ramp) {
    auto const& last = ramp.weeks.back();
    if (last.kind != WeekKind::taper) {
        return; // closed
    }
    Distance highest;
    for (auto const& week : ramp.weeks) {
        highest = &week == &last ? highest : std::max(highest, week.laps * ramp.lap);
    }
    auto const each = static_cast<std::int64_t>(last.days.size()) * ramp.lap;
    CHECK(last.laps * ramp.lap <= calc::eased_week(highest, each, compose::limit_or(request, "taper", 60)));
    CHECK(last.rep <= std::max(1, ramp.race_rep / 2));
    CHECK(last.days.back().last);
}

/// One step less of what a way out names is not enough, what it names is.
void check_way(Request const& request, compose::WayOut const& way) {
    auto changed = request;
    auto less = request;
    auto const length = request.pool.length;
    if (way.race_on) {
        changed.race.on = *way.race_on;
        less.race.on = *way.race_on - std::chrono::days{1};
    }
    if (way.longest) {
        changed.longest = *way.longest;
        less.longest = *way.longest - length;
    }
    if (way.session) {
        changed.session = *way.session;
        less.session = *way.session - length;
    }
    if (way.slot) {
        changed.slot = *way.slot;
        less.slot = *way.slot - Duration::minutes(1);
    }
    auto const relimit = [&](std::string_view rule, std::int64_t percent, Request& of) {
        std::erase_if(of.limits, [&](auto const& limit) { return plan::rules[limit.rule].name == rule; });
        support::set_limit(of, rule, percent);
    };
    if (way.rep_step) {
        relimit("rep-step", *way.rep_step, changed);
        relimit("rep-step", *way.rep_step - 1, less);
    }
    if (way.week_growth) {
        relimit("week-growth", *way.week_growth, changed);
        relimit("week-growth", *way.week_growth - 1, less);
    }
    CHECK(compose::ramp_of(changed));
    CHECK_FALSE(compose::ramp_of(less));
}

} // namespace

TEST_CASE("ramp: random wishes keep the limits, or have a way out") {
    std::mt19937 random{750};
    auto met = 0;
    auto not_met = 0;
    for (auto i = 0; i < 1500; ++i) {
        auto const request = support::random_wish(random);
        INFO(support::said(request));
        REQUIRE(compose::refusals(request).empty());
        if (auto const ramp = compose::ramp_of(request)) {
            ++met;
            for (auto const& week : ramp->weeks) {
                check_days(request, *ramp, week);
            }
            check_growth(request, *ramp);
            check_easy(request, *ramp);
            check_race_rep(request, *ramp);
            check_taper(request, *ramp);
        } else if (i % 10 == 0) {
            ++not_met;
            auto const ways = compose::ways_out(request);
            CHECK_FALSE(ways.clashes.empty());
            CHECK((ways.together.has_value() != !ways.single.empty()));
            for (auto const& way : ways.single) {
                check_way(request, way);
            }
            if (ways.together) {
                check_way(request, *ways.together);
            }
        }
    }
    CHECK(met >= 300);
    CHECK(not_met >= 30);
}

TEST_CASE("ramp: how long it takes", "[long]") {
    std::mt19937 random{3800};
    std::vector<double> all;
    std::string slowest;
    while (all.size() < 10'000) {
        auto const request = support::random_wish(random);
        auto const start = std::chrono::steady_clock::now();
        auto const ramp = compose::ramp_of(request);
        std::chrono::duration<double, std::milli> const took = std::chrono::steady_clock::now() - start;
        if (ramp) {
            if (all.empty() || took.count() > *std::ranges::max_element(all)) {
                slowest = support::said(request);
            }
            all.push_back(took.count());
        }
    }
    std::ranges::sort(all);
    auto const at = [&](std::size_t percent) { return all[(all.size() - 1) * percent / 100]; };
    WARN("milliseconds: median " << at(50) << ", 90 % " << at(90) << ", 99 % " << at(99) << ", worst "
                                 << at(100) << ": " << slowest);
    CHECK(at(100) < 20 * 10); // 20 ms in an optimised build on a quiet machine
}
