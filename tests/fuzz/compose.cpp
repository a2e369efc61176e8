#include "calc/growth.hpp"
#include "calc/timeline.hpp"
#include "check/register.hpp"
#include "compose/author.hpp"
#include "compose/ramp.hpp"
#include "compose/text.hpp"
#include "compose/ways_out.hpp"
#include "fuzz/compose_wish.hpp"
#include "fuzz/promise.hpp"
#include "fuzz/reading.hpp"
#include "fuzz/target.hpp"
#include "grammar/write.hpp"
#include "report/compose_text.hpp"
#include "support/unsafe_text.hpp"

#include <algorithm>
#include <string>

/// A wish becomes a plan that can be read and asks for nothing to be mended, or is told why it cannot.
namespace lengthwise::fuzz {
namespace {

using compose::Ramp;
using compose::Request;

void can_be_read(Reading const& reading, std::string const& text) {
    promise(reading.clean(), "a composed plan can be read", reading.first_error());
    promise(grammar::write(reading.bundle->root().tree) == text, "a composed plan is tidy");
}

/// As tests/compose/composed_plans_test.cpp has it.
void nothing_to_mend(Request const& request, plan::Plan const& plan) {
    auto const found = check::check(plan);
    promise(found.kept().empty(), "nothing is to mend in a composed plan",
            found.kept().empty() ? "" : found.kept().front().message);
    calc::Clock clock{plan};
    for (plan::Index i = 0; request.threshold && i < plan.sessions.size(); ++i) {
        auto const time = clock.session(i, 0).total();
        promise(time && time->high <= compose::usable_slot(request), "a composed session fits its slot");
    }
}

/// As tests/compose/random_ramps_test.cpp has it.
void reaches_the_race(Request const& request, Ramp const& ramp) {
    auto const last = std::find_if(ramp.weeks.rbegin(), ramp.weeks.rend(),
                                   [](auto const& week) { return week.kind == compose::WeekKind::build; });
    promise(last != ramp.weeks.rend(), "a ramp builds");
    promise(last->rep * ramp.lap >=
                calc::race_rep(request.race.distance, compose::limit_or(request, "race-rep", 100)),
            "the last build week has the race rep");
}

void has_ways_out(Request const& request) {
    auto const ways = compose::ways_out(request);
    promise(!ways.clashes.empty(), "a wish that cannot be met clashes somewhere");
    no_fault(support::unsafe_in(report::ways_out_text(request, ways, report::Paint{}, false)),
             "ways out cannot steer a terminal");
    for (auto const& way : ways.single) {
        if (way.longest) {
            auto changed = request;
            changed.longest = *way.longest;
            promise(compose::ramp_of(changed).has_value(), "a way out is one", "longest rep of today");
        }
    }
}

void is_composed(Request const& request, Ramp const& ramp) {
    (void)report::ramp_table(request, ramp, report::Paint{}, false);
    (void)report::ramp_reasons(ramp, report::Paint{}, true);
    (void)report::ramp_sayings(request, ramp, false);
    if (compose::short_at_any_pace(request, ramp)) {
        return;
    }
    auto const text = compose::plan_text(request, ramp, compose::sessions_of(request, ramp));
    auto const reading = read({text, {}});
    can_be_read(reading, text);
    if (is_usual(request)) {
        reaches_the_race(request, ramp);
        nothing_to_mend(request, reading.plan());
    }
}

} // namespace

void run(std::string_view bytes) {
    auto const request = wish_of(bytes);
    auto const refusals = compose::refusals(request);
    if (!refusals.empty()) {
        (void)report::refusal_sayings(request, refusals, false);
        return;
    }
    if (auto const ramp = compose::ramp_of(request)) {
        is_composed(request, *ramp);
    } else if (number_of(bytes) % 4 == 0) { // one in four: it composes many a plan to find a way out
        has_ways_out(request);
    }
}

} // namespace lengthwise::fuzz
