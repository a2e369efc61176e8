#include "calc/timeline.hpp"
#include "calc/totals.hpp"
#include "calc/work_by.hpp"
#include "support/closed_form.hpp"
#include "support/generate.hpp"
#include "support/read_plan.hpp"
#include "support/stopwatch.hpp"

#include <catch2/catch.hpp>

#include <map>
#include <vector>

/// Times in closed form against sessions walked rep by rep, to the millisecond. A failure names its seed.
namespace lengthwise {
namespace {

using support::three;

void check_times(calc::Times const& times, support::WatchedSection const& watched) {
    REQUIRE(times.known() == watched.known);
    REQUIRE(times.distance().has_value() == watched.measured);
    if (watched.known) {
        REQUIRE(three(times.time) == watched.time);
        REQUIRE(three(times.swimming) == watched.swimming);
    }
    if (watched.measured) {
        REQUIRE(times.estimated.units() == watched.estimated);
    }
}

void check_lines(std::vector<calc::LineTimes> const& lines,
                 std::vector<support::WatchedLine> const& watched) {
    REQUIRE(lines.size() == watched.size());
    for (std::size_t i = 0; i < lines.size(); ++i) {
        CAPTURE(i);
        REQUIRE(lines[i].item == watched[i].item);
        REQUIRE(three(lines[i].start) == watched[i].start);
        REQUIRE(three(lines[i].end) == watched[i].end);
        auto const& next = i + 1 < watched.size() ? watched[i + 1].start : watched[i].end;
        REQUIRE(three(lines[i].leave) == next);
    }
}

/// Times with a pace known somewhere and with none; closed forms that were compared are counted.
struct Counts {
    int known = 0;
    int unknown = 0;
};

void check_session(plan::Plan const& plan, calc::Clock& clock, plan::Index index, int lane, Counts& counts) {
    CAPTURE(index, lane);
    auto const& session = plan.sessions[index];
    auto const swum = support::watch(plan, session, lane, false);
    auto const if_time = support::watch(plan, session, lane, true);
    auto const sections = clock.sections(index, lane);
    REQUIRE(sections.size() == swum.sections.size());
    for (std::size_t i = 0; i < sections.size(); ++i) {
        CAPTURE(i);
        check_times(sections[i].swum, swum.sections[i]);
        check_times(sections[i].if_time, if_time.sections[i]);
    }
    check_lines(clock.lines(index, lane), swum.lines);
    ++(clock.session(index, lane).known() ? counts.known : counts.unknown);
    REQUIRE(clock.passes_limit(index) == std::nullopt);
}

void check_plan(std::uint64_t seed, Counts& counts) {
    CAPTURE(seed);
    test::Wanted wanted;
    wanted.seed = seed;
    auto const read = support::read_plan(test::generate(wanted).text);
    REQUIRE(read.error() == "");
    auto const& plan = read.plan();
    calc::Clock clock{plan};
    for (plan::Index i = 0; i < plan.sessions.size(); ++i) {
        for (int const lane : support::lanes_to_try(plan)) {
            check_session(plan, clock, i, lane, counts);
        }
    }
}

} // namespace

TEST_CASE("times of generated plans are those of their reps one after the other") {
    Counts counts;
    for (std::uint64_t seed = 1; seed <= 2'000; ++seed) {
        check_plan(seed, counts);
    }
    CHECK(counts.known > 1'000);
    CHECK(counts.unknown > 100);
}

TEST_CASE("times of many generated plans are those of their reps one after the other", "[long]") {
    Counts counts;
    for (std::uint64_t seed = 10'000; seed < 22'000; ++seed) {
        check_plan(seed, counts);
    }
}

} // namespace lengthwise
