#include "check/lane_findings.hpp"
#include "check/progress.hpp"
#include "check/rules.hpp"
#include "check/walk.hpp"
#include "check/words.hpp"

#include "calc/growth.hpp"
#include "calc/reps.hpp"
#include "units/spell.hpp"

#include <fmt/core.h>

#include <map>
#include <optional>
#include <string>
#include <vector>

namespace lengthwise::check {

namespace {

using plan::Plan;

std::string in_unit(Distance distance, plan::Race const& race) {
    return spell::distance(distance, race.unit);
}

std::string race_words(RaceRep const& asked, plan::Race const& race) {
    return asked.percent == calc::usual::race_rep
               ? fmt::format("the race is {}", in_unit(race.distance, race))
               : fmt::format("{} % of the race is {}", asked.percent, in_unit(asked.distance, race));
}

// --- the nearest line ---------------------------------------------------------------

/// Why a rep does not count, for "nearest: 750 m, but …".
std::string flaw(Plan const& plan, plan::Terms const& terms, Pool const& pool, bool optional) {
    auto const of = [](plan::Manner const& manner) -> std::string {
        switch (manner.mode) {
        case Mode::kick:
        case Mode::pull:
        case Mode::drill:
        case Mode::tread:
            return std::string{spelling(word_of(manner.mode))};
        case Mode::unsaid:
        case Mode::swim:
            break;
        }
        for (auto const gear : {Gear::fins, Gear::paddles, Gear::buoy, Gear::board, Gear::band}) {
            if (manner.gear.has(gear)) {
                return fmt::format("with {}", spelling(word_of(gear)));
            }
        }
        return {};
    };
    if (terms.stops) {
        return "with stops";
    }
    for (auto i = terms.parts.first; i < terms.parts.end(); ++i) {
        if (auto why = of(plan.parts[i].manner); !why.empty()) {
            return fmt::format("in part {}", why);
        }
    }
    if (auto why = of(terms.manner); terms.parts.empty() && !why.empty()) {
        return why;
    }
    if (terms.broken.piece != 0) {
        return fmt::format("broken at {}",
                           said(Distance::units(terms.broken.piece), terms.broken.unit, pool));
    }
    return optional ? "only if time" : "";
}

struct Nearest {
    Distance distance;
    Span span;
    std::string flaw;
};

/// The longest rep of a lane before race day, whatever keeps it from counting.
std::optional<Nearest> nearest(Plan const& plan, int lane) {
    std::optional<Nearest> best;
    Walk walk{plan};
    for (auto const& session : plan.sessions) {
        if (!before_race(plan, session)) {
            continue;
        }
        walk.once(session, {}, [&](Met const& met) {
            if (!met.item.is_leaf() || met.item.is_timed() || !met.line.swum_by(lane)) {
                return;
            }
            calc::each_rep(plan, met.item, [&](std::int64_t amount, plan::Terms const& terms, std::int64_t) {
                auto const distance = Distance::units(amount);
                if (!best || distance > best->distance) {
                    best = Nearest{distance, met.item.span,
                                   flaw(plan, terms, plan.pool_of(session), met.line.optional)};
                }
            });
        });
    }
    return best;
}

// --- lanes and swimmers --------------------------------------------------------------

/// `whose` is " of Ann", or nothing.
std::string short_words(Distance longest, std::string const& whose, RaceRep const& asked,
                        plan::Race const& race) {
    return longest.zero() ? fmt::format("no rep{} is swum in one piece, {}", whose, race_words(asked, race))
                          : fmt::format("longest rep{} is {}, {}", whose, in_unit(longest, race),
                                        race_words(asked, race));
}

void say_of_lane(Inquiry const& inquiry, LaneFindings& findings, Swum const& swum, Distance longest,
                 RaceRep const& asked) {
    auto const& race = *inquiry.plan.race;
    auto hint = std::string{"before race day swim it once in one piece, or: allow race-rep \"why\""};
    std::vector<Related> related;
    if (auto const near = nearest(inquiry.plan, swum.lane)) {
        auto const counts = near->flaw.empty();
        related.push_back({near->span, counts ? fmt::format("nearest: {}", in_unit(near->distance, race))
                                              : fmt::format("nearest: {}, but {}",
                                                            in_unit(near->distance, race), near->flaw)});
        if (near->flaw.starts_with("broken") && near->distance >= asked.distance) {
            hint = "swim it unbroken, or: allow race-rep \"why\"";
        }
    }
    findings.error(swum, race.span, short_words(longest, "", asked, race), std::move(hint),
                   std::move(related));
}

std::string share_words(Sharers const& sharers) {
    return sharers.percent == 100 ? fmt::format("swims in lane {}", sharers.lane)
                                  : fmt::format("swims {} % of each distance", sharers.percent);
}

void say_of_swimmers(LaneFindings& findings, plan::Race const& race, Sharers const& sharers, Distance longest,
                     RaceRep const& asked) {
    auto const way = sharers.percent == 100 ? "a longer rep for that lane" : "a larger share";
    findings.error(race.span, short_words(longest, " of " + names(sharers), asked, race),
                   fmt::format("{}, or: allow race-rep \"why\"", way),
                   {{sharers.swimmers.front()->span, share_words(sharers)}});
}

void judge_without_race(Inquiry& inquiry) {
    if (!inquiry.plan.sessions.empty()) {
        inquiry.note(inquiry.plan.sessions.front().span,
                     "no race is named, so nothing is measured against one",
                     "before the first week or session: race \"Where\" sprint on 2027-06-13");
    }
}

void judge(Inquiry& inquiry) {
    auto const& plan = inquiry.plan;
    if (inquiry.waived()) {
        return;
    }
    if (!plan.race) {
        judge_without_race(inquiry);
        return;
    }
    auto const asked = race_rep_asked(plan);
    LaneFindings findings{lanes_to_judge(plan).size()};
    std::map<int, Distance> of_lanes;
    each_swum(plan, inquiry.sums, [&](Swum const& swum) {
        auto const longest = longest_before_race(swum);
        if (swum.sharers == nullptr) {
            of_lanes[swum.lane] = longest;
        }
        if (longest >= asked.distance) {
            return;
        }
        if (swum.sharers == nullptr) {
            say_of_lane(inquiry, findings, swum, longest, asked);
        } else if (auto const lane = of_lanes.find(swum.lane);
                   lane == of_lanes.end() || lane->second != longest) {
            say_of_swimmers(findings, *plan.race, *swum.sharers, longest, asked);
        }
    });
    findings.hand_in(inquiry);
}

} // namespace

Rule const race_rep{
    .name = "race-rep",
    .severity = Severity::error,
    .measures = "the race distance once, in one piece",
    .limit = "100%",
    .meaning = "Before race day each swimmer and lane has one rep at least as long as the race: unbroken, no "
               "stops, swum and not kicked, pulled or drilled, with at most snorkel and wetsuit.",
    .why = "who has swum it knows it can be swum.",
    .source = practice,
    .good = "750 crawl steady",
    .bad = "750 crawl broken at 250 for 15s",
    .mend = "swim it once before race day, or ask for less: limit race-rep 75%; where it is not meant: allow "
            "race-rep \"relay, 250 m each\"",
    .judge = judge,
};

} // namespace lengthwise::check
