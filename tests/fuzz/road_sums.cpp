#include "calc/breakdown.hpp"
#include "calc/lane_times.hpp"
#include "calc/longest.hpp"
#include "calc/reserve.hpp"
#include "calc/timeline.hpp"
#include "calc/totals.hpp"
#include "calc/work_by.hpp"
#include "fuzz/promise.hpp"
#include "fuzz/road.hpp"

#include <cmath>

namespace lengthwise::fuzz {
namespace {

constexpr std::size_t most_lanes = 3; ///< looked at one by one

/// Nobody's lane, the first ones that are named, and one that nobody names.
std::vector<int> lanes_of(calc::LaneSet const& named) {
    auto lanes = calc::numbers(named);
    lanes.resize(std::min(lanes.size(), most_lanes));
    lanes.push_back(0);
    lanes.push_back(100);
    return lanes;
}

void not_below_zero(calc::Totals const& totals) {
    promise(totals.distance.units() >= 0 && totals.lengths >= 0 && totals.reps >= 0 && totals.timed.ms() >= 0,
            "no sum is below nothing");
    promise(totals.treading_reps <= totals.timed_reps && totals.timed_reps <= totals.reps,
            "timed reps are reps, treading ones timed");
    promise(totals.longest <= totals.distance, "the longest rep is part of the distance");
}

/// What a lane swims holds all that everybody swims.
void lanes_hold_all(calc::Sums const& sums, int lane) {
    auto const everyone = sums.swum(0);
    auto const own = sums.swum(lane);
    not_below_zero(own);
    not_below_zero(sums.if_time(lane));
    promise(own.distance >= everyone.distance && own.reps >= everyone.reps &&
                own.lengths >= everyone.lengths && own.longest >= everyone.longest,
            "a lane swims what everybody swims");
}

void parts_add_up(plan::Plan const& plan, calc::Reckoner& reckoner, calc::Sums const& whole) {
    calc::Sums sections;
    calc::Sums sessions;
    calc::Sums weeks;
    for (auto const& week : plan.weeks) {
        weeks.add(reckoner.of_week(week));
    }
    for (auto const& session : plan.sessions) {
        sessions.add(reckoner.of_session(session));
        for (auto i = session.sections.first; i < session.sections.end(); ++i) {
            sections.add(reckoner.of_section(session, plan.sections[i]));
        }
    }
    for (int const lane : lanes_of(whole.lanes())) {
        promise(weeks.swum(lane) == whole.swum(lane), "weeks add up to the plan");
        promise(sessions.swum(lane) == whole.swum(lane), "sessions add up to the plan");
        promise(sections.swum(lane) == whole.swum(lane), "sections add up to the plan");
        promise(sections.if_time(lane) == whole.if_time(lane),
                "lines if time of sections add up to the plan's");
    }
}

/// Distances and times of words are those of the plan; a split's reps may be of several words.
void words_add_up(plan::Plan const& plan, calc::Sums const& whole, calc::By by, int lane) {
    calc::Breakdown words;
    calc::BreakdownReader reader{plan, by, lane};
    for (auto const& session : plan.sessions) {
        reader.add_session(session, words);
    }
    calc::Totals sum;
    for (auto const& word : words.words) {
        not_below_zero(word.totals);
        promise(!calc::word_of(by, word.key).empty(), "every word has a spelling");
        sum.add(word.totals);
    }
    auto const totals = whole.swum(lane);
    promise(sum.distance == totals.distance && sum.timed == totals.timed, "words add up to the plan",
            calc::spelling(by));
    promise(sum.reps >= totals.reps, "each rep is one of some word's", calc::spelling(by));
}

void in_order(Band<Duration> const& band, std::string_view what) {
    promise(Duration{} <= band.low && band.low <= band.high && band.low <= band.expected &&
                band.expected <= band.high,
            "times go from the fast end to the slow one", what);
}

void times_fit(plan::Plan const& plan, calc::Clock& clock, calc::Reserve& reserve, plan::Index index,
               int lane) {
    calc::Times sum;
    for (auto const& section : clock.sections(index, lane)) {
        sum.add(section.swum);
    }
    auto const session = clock.session(index, lane);
    promise(sum.total() == session.total(), "the times of sections add up to the session's");
    if (auto const total = session.total()) {
        in_order(*total, "a session");
    }
    auto const lines = clock.lines(index, lane);
    for (auto const& line : lines) {
        promise(line.item < plan.items.size(), "a line with a time is one of the plan's");
        promise(!line.start || !line.end || line.start->low <= line.end->low,
                "a line ends when it has begun");
    }
    if (auto const over = reserve.over(index, lane)) {
        promise(std::isfinite(over->used) && over->used >= 0, "the reserve that is used up is a number");
        promise(over->runs_out.size() <= lines.size(), "the reserve runs out once a line at most");
    }
}

void words_take_their_time(plan::Plan const& plan, calc::By by, int lane) {
    calc::WorkReader reader{plan, by, lane};
    calc::WordTimes words;
    for (auto const& session : plan.sessions) {
        reader.add_session(session, words);
    }
    for (auto const& word : words.words) {
        promise(!word.known || word.swimming.low.ms() >= 0, "no word takes less than no time");
    }
}

} // namespace

void add_up(plan::Plan const& plan) {
    calc::Reckoner reckoner{plan};
    auto const whole = reckoner.of_plan();
    parts_add_up(plan, reckoner, whole);
    calc::Clock clock{plan};
    calc::Reserve reserve{plan, clock};
    for (int const lane : lanes_of(whole.lanes())) {
        lanes_hold_all(whole, lane);
        promise(calc::longest_of_plan(plan, lane).distance == whole.swum(lane).longest,
                "the longest rep that is pointed at is the longest of the sums");
        for (plan::Index i = 0; i < plan.sessions.size(); ++i) {
            times_fit(plan, clock, reserve, i, lane);
        }
    }
    auto const lane = calc::lowest(whole.lanes());
    for (auto const by :
         {calc::By::stroke, calc::By::mode, calc::By::effort, calc::By::gear, calc::By::section}) {
        words_add_up(plan, whole, by, lane);
        if (by != calc::By::section) {
            words_take_their_time(plan, by, lane);
        }
    }
}

} // namespace lengthwise::fuzz
