#include "check/lane_findings.hpp"
#include "check/progress.hpp"
#include "check/rules.hpp"
#include "check/words.hpp"

#include "calc/growth.hpp"

#include <fmt/core.h>

#include <optional>

namespace lengthwise::check {

namespace {

/// What the race, or what `limit race-rep` asks of it, wants a session to be in this pool.
Distance wanted(Inquiry const& inquiry, plan::Session const& session) {
    auto const& plan = inquiry.plan;
    if (auto const limit = inquiry.limit()) {
        return Distance::units(limit->low);
    }
    auto const lap = lap_of(plan, session);
    return calc::session_need(Distance::ceiling(race_rep_asked(plan).distance, lap)) * lap;
}

/// The session that comes nearest to what is wanted of it.
struct Nearest {
    Distance distance;
    Distance wanted;
    plan::Session const* session = nullptr;

    [[nodiscard]] bool enough() const { return distance >= wanted; }
};

std::optional<Nearest> nearest(Inquiry const& inquiry, Swum const& swum, std::size_t count) {
    auto const& plan = swum.plan;
    std::optional<Nearest> best;
    for (std::size_t w = 0; w < count; ++w) {
        auto const sessions = swum.weeks[w].week->sessions;
        for (auto i = sessions.first; i < sessions.end(); ++i) {
            auto const& session = plan.sessions[i];
            if (!before_race(plan, session)) {
                continue;
            }
            Nearest const here{swum.sums.of_session(session).swum(swum.lane).distance,
                               wanted(inquiry, session), &session};
            if (!best || here.wanted - here.distance < best->wanted - best->distance) {
                best = here;
            }
        }
    }
    return best;
}

void judge_sessions(Inquiry const& inquiry, LaneFindings& findings, Swum const& swum) {
    auto const& race = *inquiry.plan.race;
    auto const weeks = swum.weeks.size();
    auto const eased = calc::taper_weeks(race.distance, weeks);
    auto const near = nearest(inquiry, swum, weeks > eased ? weeks - eased : weeks);
    if (!near || near->enough()) {
        return;
    }
    auto const& pool = swum.plan.pool_of(*near->session);
    findings.warn(swum, race.span,
                  fmt::format("the longest session before the last {} is {}, this race wants {}",
                              eased == 1 ? "week" : "two weeks", said(near->distance, pool),
                              said(near->wanted, pool)),
                  "lengthen one, or: limit session-floor 800m", {{near->session->span, "the longest"}});
}

void judge(Inquiry& inquiry) {
    if (!inquiry.plan.race || inquiry.waived()) {
        return;
    }
    LaneFindings findings{lanes_to_judge(inquiry.plan).size()};
    each_swum(inquiry.plan, inquiry.sums, [&](Swum const& swum) { judge_sessions(inquiry, findings, swum); });
    findings.hand_in(inquiry);
}

} // namespace

Rule const session_floor{
    .name = "session-floor",
    .severity = Severity::warning,
    .measures = "one session is long enough for the race",
    .limit = "the race and a third",
    .meaning =
        "Once before the taper a session is longer than the race by a third of it, and by at least three "
        "laps (there and back): the race rep with room to warm up and cool down. Where limit race-rep "
        "asks for less than the race, so does this. Judged for each lane, and for each swimmer's share.",
    .why = "the race rep needs a session around it.",
    .source = practice,
    .good = "1000 m in a session, for a race of 750 m",
    .bad = "900 m in the longest session, for a race of 750 m",
    .mend = "lengthen one session, or set your own distance: limit session-floor 800m",
    .judge = judge,
};

} // namespace lengthwise::check
