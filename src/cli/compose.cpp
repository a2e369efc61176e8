#include "cli/commands.hpp"
#include "cli/plans.hpp"
#include "compose/author.hpp"
#include "compose/ramp.hpp"
#include "compose/text.hpp"
#include "compose/ways_out.hpp"
#include "report/compose_text.hpp"
#include "report/width.hpp"
#include "units/spell.hpp"

#include <fmt/core.h>

#include <string>
#include <string_view>

namespace lengthwise::cli {

namespace {

void say(std::vector<report::Saying> const& sayings, Console& console) {
    for (auto const& saying : sayings) {
        console.err.write(report::saying_text(saying, console.err_paint));
    }
}

std::string plural(std::size_t n, std::string_view word) {
    return fmt::format("{} {}{}", n, word, n == 1 ? "" : "s");
}

std::string summary(compose::Request const& request, std::vector<compose::Week> const& weeks) {
    std::size_t sessions = 0;
    for (auto const& week : weeks) {
        sessions += week.sessions.size();
    }
    return fmt::format("{}, {}, race {}", plural(weeks.size(), "week"), plural(sessions, "session"),
                       spell::day(request.race.on));
}

/// What is said beside the plan: how it climbs, why if that is asked for, and what to type next.
std::string beside(Compose const& options, compose::Ramp const& ramp, Console const& console) {
    auto const& request = options.request;
    auto text = '\n' + report::ramp_table(request, ramp, console.err_paint, console.ascii);
    if (options.explain) {
        text += '\n' + report::ramp_reasons(request, ramp, console.err_paint, console.ascii);
    }
    if (options.target.file && *options.target.file != "-") {
        text += fmt::format("\nnext: lengthwise check {}\n", report::visible(*options.target.file));
    }
    return text;
}

} // namespace

int compose(Compose const& options, Files&, Console& console) {
    auto const& request = options.request;
    if (auto const refusals = compose::refusals(request); !refusals.empty()) {
        say(report::refusal_sayings(request, refusals, console.ascii), console);
        return misused;
    }
    auto const ramp = compose::ramp_of(request);
    if (!ramp) {
        auto const ways = compose::ways_out(request);
        console.err.write(report::ways_out_text(request, ways, console.err_paint, console.ascii));
        return has_errors;
    }
    auto const weeks = compose::sessions_of(request, *ramp);
    say(report::ramp_sayings(request, *ramp, console.ascii), console);
    console.out.write(compose::plan_text(request, *ramp, weeks));
    console.summary = summary(request, weeks);
    console.below = beside(options, *ramp, console);
    return fine;
}

} // namespace lengthwise::cli
