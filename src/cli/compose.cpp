#include "cli/commands.hpp"
#include "cli/plans.hpp"
#include "compose/author.hpp"
#include "compose/ramp.hpp"
#include "compose/text.hpp"
#include "report/width.hpp"
#include "units/spell.hpp"

#include <fmt/core.h>

#include <string>
#include <string_view>

namespace lengthwise::cli {

namespace {

std::string plural(std::size_t n, std::string_view word) {
    return fmt::format("{} {}{}", n, word, n == 1 ? "" : "s");
}

/// What stands in the way of any plan.
std::string sentence(compose::Refusal refusal, compose::Request const& request) {
    using compose::Refusal;
    auto const unit = request.pool.unit;
    switch (refusal) {
    case Refusal::pool:
        return "a plan is for a pool of 15 to 100 m, --pool 25m";
    case Refusal::race:
        return fmt::format("--race is {}, plans are for up to 10 km",
                           spell::distance(request.race.distance, request.race.unit, true));
    case Refusal::days:
        return fmt::format("--days has {}, a plan is for one to four a week",
                           plural(request.days.size(), "day"));
    case Refusal::few_days:
        return fmt::format(
            "--days has {}, {} sessions a week are asked for; more days, or: --limit \"sessions {}\"",
            plural(request.days.size(), "day"), compose::limit_or(request, "sessions", 2),
            request.days.size());
    case Refusal::longest:
        return fmt::format("--longest is {}, a plan starts from one length swum, {}",
                           spell::distance(request.longest, unit, true),
                           spell::distance(request.pool.length, unit, true));
    case Refusal::session:
        return fmt::format("--session is {}, a plan starts from one length to 10 km",
                           spell::distance(request.session, unit, true));
    case Refusal::threshold:
        return "--threshold is over 10 min for 100, is that the time for 100?";
    case Refusal::order:
        return fmt::format("the race, {}, is not after the first day, {}", spell::day(request.race.on),
                           spell::day(request.from));
    case Refusal::weeks:
        return fmt::format("from {} to {} are more than two years, plans are for {} weeks",
                           spell::day(request.from), spell::day(request.race.on), compose::most_weeks);
    }
    return {};
}

std::string summary(compose::Request const& request, std::vector<compose::Week> const& weeks) {
    std::size_t sessions = 0;
    for (auto const& week : weeks) {
        sessions += week.sessions.size();
    }
    return fmt::format("{}, {}, race {}", plural(weeks.size(), "week"), plural(sessions, "session"),
                       spell::day(request.race.on));
}

} // namespace

int compose(Compose const& options, Files&, Console& console) {
    auto const& request = options.request;
    if (auto const refusals = compose::refusals(request); !refusals.empty()) {
        console.say(sentence(refusals.front(), request));
        return misused;
    }
    auto const ramp = compose::ramp_of(request);
    if (!ramp) {
        console.say(fmt::format("{} to {} by {} does not work\n\nnothing was written",
                                spell::distance(request.longest, request.pool.unit, console.ascii),
                                spell::distance(request.race.distance, request.race.unit, console.ascii),
                                spell::day(request.race.on)));
        return has_errors;
    }
    auto const weeks = compose::sessions_of(request, *ramp);
    console.out.write(compose::plan_text(request, *ramp, weeks));
    console.summary = summary(request, weeks);
    if (options.target.file && *options.target.file != "-") {
        console.below = fmt::format("\nnext: lengthwise check {}\n", report::visible(*options.target.file));
    }
    return fine;
}

} // namespace lengthwise::cli
