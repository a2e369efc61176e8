#include "check/rules.hpp"
#include "check/seen.hpp"
#include "check/walk.hpp"

#include "calc/reps.hpp"
#include "units/spell.hpp"

#include <fmt/core.h>

#include <algorithm>
#include <set>
#include <utility>

namespace lengthwise::check {

namespace {

constexpr Range<Duration> usual{Duration::seconds(20), Duration::seconds(40)};
constexpr auto behind_a_line = Duration::minutes(1);

bool is_endurance(plan::Effort const& effort) {
    return !effort.said() ||
           (effort.kind == plan::Effort::Kind::word && effort.word <= EffortWord::threshold);
}

/// Every rep of the item is plain swimming up to threshold.
bool is_endurance(plan::Plan const& plan, plan::Item const& item) {
    auto all = true;
    calc::each_rep(plan, item, [&](std::int64_t, plan::Terms const& terms, std::int64_t) {
        all = all && calc::qualifies(plan, terms) && is_endurance(terms.manner.effort);
        for (auto i = terms.parts.first; i < terms.parts.end(); ++i) {
            all = all && is_endurance(plan.parts[i].manner.effort);
        }
    });
    return all;
}

class Judge {
  public:
    explicit Judge(Inquiry& inquiry) : inquiry_(inquiry) {}

    void look_at(Met const& met, Range<Duration> band) {
        auto const& item = met.item;
        if (!item.is_leaf() || item.is_timed()) {
            return;
        }
        auto const& terms = inquiry_.plan.terms[item.terms];
        if (terms.recovery.kind != plan::Recovery::Kind::rest || !is_endurance(inquiry_.plan, item)) {
            return;
        }
        auto const rest = terms.recovery.rest;
        auto const between = item.count > 1;
        auto const high = between ? band.high : std::max(band.high, behind_a_line);
        if ((rest.low >= band.low && rest.high <= high) || !first_time(met, terms, rest)) {
            return;
        }
        inquiry_.note(
            place(item),
            fmt::format("{} of rest {}, for endurance it is {}", spell::spaced(rest),
                        between ? "between reps" : "behind the rep", spell::spaced({band.low, high})),
            between
                ? fmt::format("try: rest {}, or: limit rest-band {}", spell::range(band, true),
                              spell::range({std::min(band.low, rest.low), std::max(high, rest.high)}, true))
                : fmt::format("try: rest {}", spell::range(band, true)),
            used(met));
    }

  private:
    /// A rest that comes down from outside is said once, and so is what stands in a set.
    bool first_time(Met const& met, plan::Terms const& terms, Range<Duration> rest) {
        if (terms.said_recovery.kind != plan::Recovery::Kind::none) {
            return seen_.first_time(met);
        }
        return inherited_.emplace(rest.low, rest.high).second;
    }

    Inquiry& inquiry_;
    SeenInSets seen_;
    std::set<std::pair<Duration, Duration>> inherited_;
};

void judge(Inquiry& inquiry) {
    Walk walk{inquiry.plan};
    Judge judge{inquiry};
    for (auto const& session : inquiry.plan.sessions) {
        if (inquiry.waived(session)) {
            continue;
        }
        auto const limit = inquiry.limit(session);
        auto const band =
            limit ? Range<Duration>{Duration::ms(limit->low), Duration::ms(limit->high)} : usual;
        walk.once(session, {band.low.ms(), band.high.ms()},
                  [&](Met const& met) { judge.look_at(met, band); });
    }
}

} // namespace

Rule const rest_band{
    .name = "rest-band",
    .severity = Severity::note,
    .measures = "rest between endurance reps",
    .limit = "20-40s",
    .meaning =
        "Between the reps of one line that are swum up to threshold the rest lies in this band; behind "
        "a single rep it may reach 1 min. A group's own rest, drills, kick, send-offs and hard swims "
        "are left alone.",
    .why = "with less a beginner's stroke falls apart, with more it is no longer one long effort in pieces.",
    .source =
        "common practice with beginners, no published source; in studies trained swimmers rest an eighth of "
        "the swim at threshold (Toubekis et al. 2011, J Sci Med Sport 14:363-368)",
    .good = "4 x 100 crawl steady rest 20s",
    .bad = "4 x 100 crawl steady rest 1min",
    .mend = "choose a rest in the band, or set your own: limit rest-band 10-60s",
    .judge = judge,
};

} // namespace lengthwise::check
