#include "fuzz/closed_form.hpp"
#include "fuzz/promise.hpp"
#include "support/closed_form.hpp"
#include "support/slow_reserve.hpp"
#include "support/stopwatch.hpp"

#include <algorithm>
#include <cmath>

namespace lengthwise::fuzz {
namespace {

using support::three;

void are_equal(calc::Times const& times, support::WatchedSection const& watched) {
    promise(times.known() == watched.known, "a section's time is known where each of its reps' is");
    promise(times.distance().has_value() == watched.measured, "how far timed reps go is known where each is");
    if (watched.known) {
        promise(three(times.time) == watched.time, "a section takes what its reps take one after the other");
        promise(three(times.swimming) == watched.swimming,
                "a section is swum as long as its reps one by one");
    }
    if (watched.measured) {
        promise(times.estimated.units() == watched.estimated, "timed reps go as far as one after the other");
    }
}

void are_equal(std::vector<calc::LineTimes> const& lines, std::vector<support::WatchedLine> const& watched) {
    promise(lines.size() == watched.size(), "a lane has a time for each of its lines");
    for (std::size_t i = 0; i < lines.size(); ++i) {
        auto const& next = i + 1 < watched.size() ? watched[i + 1].start : watched[i].end;
        promise(lines[i].item == watched[i].item, "lines are timed in their order");
        promise(three(lines[i].start) == watched[i].start, "a line starts when the reps before it are over");
        promise(three(lines[i].end) == watched[i].end, "a line ends when its reps are over");
        promise(three(lines[i].leave) == next, "a line is left when the next one starts");
    }
}

bool same_place(calc::RunsOut const& fast, support::SlowRunsOut const& slow) {
    return fast.line == slow.line && fast.item == slow.item && fast.rep.number == slow.number &&
           std::ranges::equal(fast.rounds, slow.rounds, {}, &calc::Nth::number);
}

} // namespace

void times_are_right(plan::Plan const& plan, calc::Clock& clock, plan::Index session, int lane) {
    auto const swum = support::watch(plan, plan.sessions[session], lane, false);
    auto const if_time = support::watch(plan, plan.sessions[session], lane, true);
    auto const sections = clock.sections(session, lane);
    promise(sections.size() == swum.sections.size(), "each section has its times");
    for (std::size_t i = 0; i < sections.size(); ++i) {
        are_equal(sections[i].swum, swum.sections[i]);
        are_equal(sections[i].if_time, if_time.sections[i]);
    }
    are_equal(clock.lines(session, lane), swum.lines);
}

void reserve_is_right(plan::Plan const& plan, calc::Clock& clock, calc::Reserve& reserve, plan::Index session,
                      int lane) {
    auto const slow = support::slow_reserve(plan, plan.sessions[session], lane, support::by_formula);
    auto const fast = reserve.over(session, lane);
    if (clock.lines(session, lane).empty() || !slow) {
        return;
    }
    promise(fast.has_value(), "the reserve is known where the pace is");
    promise(std::ranges::equal(fast->runs_out, slow->runs_out, same_place),
            "the reserve runs out where it does piece by piece");
    promise(std::abs(fast->used - slow->used) <= 0.001 * slow->used + 1e-9,
            "as much of the reserve is used up as piece by piece");
}

} // namespace lengthwise::fuzz
