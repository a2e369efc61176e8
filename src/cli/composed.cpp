#include "cli/composed.hpp"

#include "cli/plans.hpp"
#include "compose/ways_out.hpp"
#include "report/compose_text.hpp"
#include "report/width.hpp"

#include <fmt/core.h>

#include <algorithm>
#include <utility>

namespace lengthwise::cli {

namespace {

void say(std::vector<report::Saying> const& sayings, Console& console) {
    for (auto const& saying : sayings) {
        console.err.write(report::saying_text(saying, console.err_paint));
    }
}

void drop_above(compose::Highest const& most, std::int64_t sessions, compose::WaysOut& ways) {
    auto const above = [&](compose::WayOut const& way) {
        return (way.longest && !most.longest.zero() && *way.longest > most.longest) ||
               (way.session && !most.week.zero() && *way.session * sessions > most.week);
    };
    if (!std::ranges::all_of(ways.single, above)) {
        std::erase_if(ways.single, above);
    }
}

} // namespace

std::size_t Composed::sessions() const {
    std::size_t count = 0;
    for (auto const& week : weeks) {
        count += week.sessions.size();
    }
    return count;
}

Composing compose_sessions(compose::Request const& request, Console& console,
                           compose::Highest const& most_today) {
    if (auto const refusals = compose::refusals(request); !refusals.empty()) {
        say(report::refusal_sayings(request, refusals, console.ascii), console);
        return {std::nullopt, misused};
    }
    auto ramp = compose::ramp_of(request);
    if (!ramp) {
        auto ways = compose::ways_out(request);
        drop_above(most_today, static_cast<std::int64_t>(request.days.size()), ways);
        console.err.write(report::ways_out_text(request, ways, console.err_paint, console.ascii));
        return {std::nullopt, has_errors};
    }
    say(report::ramp_sayings(request, *ramp, console.ascii), console);
    if (compose::short_at_any_pace(request, *ramp)) {
        console.err.write("\nnothing was written\n");
        return {std::nullopt, has_errors};
    }
    auto weeks = compose::sessions_of(request, *ramp);
    return {Composed{std::move(*ramp), std::move(weeks)}, fine};
}

std::string beside(Compose const& options, compose::Request const& request, compose::Ramp const& ramp,
                   Console const& console) {
    auto text = '\n' + report::ramp_table(request, ramp, console.err_paint, console.ascii);
    if (options.explain) {
        text += '\n' + report::ramp_reasons(ramp, console.err_paint, console.ascii);
    }
    if (options.target.file && *options.target.file != "-") {
        text += fmt::format("\nnext: lengthwise check {}\n", report::visible(*options.target.file));
    }
    return text;
}

std::string counted(std::size_t n, std::string_view word) {
    return fmt::format("{} {}{}", n, word, n == 1 ? "" : "s");
}

} // namespace lengthwise::cli
