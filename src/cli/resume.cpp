#include "cli/resume.hpp"

#include "check/register.hpp"
#include "cli/compose_options.hpp"
#include "cli/composed.hpp"
#include "cli/plans.hpp"
#include "cli/put_weeks.hpp"
#include "compose/amounts.hpp"
#include "compose/resume.hpp"
#include "compose/text.hpp"
#include "report/pace_words.hpp"
#include "report/width.hpp"
#include "units/spell.hpp"

#include <fmt/core.h>

#include <algorithm>
#include <string>
#include <utility>

namespace lengthwise::cli {

namespace {

void say(Console& console, Severity severity, std::string message, std::string hint) {
    report::Saying const saying{"resume", severity, std::move(message), std::move(hint)};
    auto const text = report::saying_text(saying, console.err_paint);
    console.err.write(console.ascii ? report::in_ascii(text) : text);
}

/// What is asked for, with what only the command line knows; else how the command ends.
struct Asked {
    std::optional<compose::Request> request;
    int code = fine;
};

Asked asked_for(Compose const& options, Resume const& wish, Loaded const& loaded, Console& console) {
    auto found = compose::request_behind(loaded.plan(), wish.after, wish.instead);
    if (auto const* const obstacle = std::get_if<compose::Obstacle>(&found)) {
        say(console, Severity::error, fmt::format("{}: {}", report::visible(loaded.name), obstacle->message),
            obstacle->hint);
        return {std::nullopt, has_errors};
    }
    auto& request = std::get<compose::Request>(found);
    request.closed = options.request.closed;
    request.kit = options.request.kit;
    request.race_in_pool = options.request.race_in_pool;
    auto const pool = compose::distance(request.pool.length, request.pool.unit);
    if (auto const misuse = read_today(wish.today, pool, request)) {
        console.say(misuse->problem);
        return {std::nullopt, misused};
    }
    return {std::move(request), fine};
}

/// The checks count from the highest so far: more than that cannot be taken for today.
void hold(compose::Request& request, compose::Highest const& highest, Resume const& wish, Console& console) {
    auto const before = request;
    compose::hold_to(request, highest);
    auto const words = [&](Distance distance) {
        return spell::distance(distance, request.pool.unit, console.ascii);
    };
    if (request.longest < before.longest) {
        say(console, Severity::note,
            fmt::format("{} is more than the longest rep up to week {}, {}", words(before.longest),
                        wish.after, words(highest.longest)),
            "it counts from there, as check does");
    }
    if (!wish.today.session) {
        say(console, Severity::note,
            fmt::format("a session of today counts as {}, as in week {}", words(request.session), wish.after),
            "less goes after a break? --session 600m");
    } else if (request.session < before.session) {
        say(console, Severity::note,
            fmt::format("{} a session is more than the highest week up to week {}, {}", words(before.session),
                        wish.after, words(highest.week)),
            "it counts from there, as check does");
    }
}

/// What the checks say of the new weeks, or of the whole plan with them.
Diagnostics findings(grammar::Bundle const& bundle, plan::Plan const& plan, std::uint32_t from) {
    auto const first = plan.sessions.empty() ? bundle.root().source.end() : plan.weeks.front().span.begin;
    auto const found = check::check(plan);
    Diagnostics kept;
    for (auto const& finding : found.kept()) {
        if (finding.span.begin >= from || finding.span.begin < first) {
            kept.add(finding);
        }
    }
    return kept;
}

/// "week 4", "weeks 4 to 9".
std::string weeks_words(std::vector<compose::Week> const& weeks) {
    auto const first = weeks.front().number;
    auto const last = weeks.back().number;
    return first == last ? fmt::format("week {}", first) : fmt::format("weeks {} to {}", first, last);
}

std::string replaced_words(Rest const& rest) {
    if (rest.sessions == 0) {
        return {};
    }
    auto const remarks = rest.remarks == 0   ? std::string{}
                         : rest.remarks == 1 ? std::string{" with a note or comment"}
                                             : fmt::format(" with {} notes and comments", rest.remarks);
    return fmt::format("in the place of {}{}\n", counted(rest.sessions, "session"), remarks);
}

/// Written, read again, and what the checks say of it said; false where it could not be read.
bool is_sound(Loaded const& loaded, std::string const& text, std::uint32_t from, Files& files,
              Console& console) {
    auto const path = loaded.name == "-" ? std::nullopt : std::optional{loaded.name};
    auto const bundle = grammar::bundle(loaded.name, text, path, files);
    auto const resolved = plan::resolve(bundle);
    if (bundle.findings.has_errors() || resolved.findings.has_errors()) {
        console.say(fmt::format("{} stays as it is: with these weeks it could not be read, a fault of this "
                                "program",
                                report::visible(loaded.name)));
        return false;
    }
    auto const found = findings(bundle, resolved.plan, from);
    if (!found.kept().empty()) {
        report::Sources sources;
        for (auto const& file : bundle.files) {
            sources.push_back(&file.source);
        }
        console.err.write(report::findings_text(found, sources, console.err_paint, style_of(console)));
    }
    return true;
}

} // namespace

int resume(Compose const& options, Resume const& wish, Files& files, Console& console) {
    auto const loaded = load_one("compose --resume", {wish.file}, files, console);
    if (!loaded.plan) {
        return loaded.code;
    }
    auto asked = asked_for(options, wish, *loaded.plan, console);
    if (!asked.request) {
        return asked.code;
    }
    auto& request = *asked.request;
    auto const highest = compose::highest_up_to(loaded.plan->plan(), wish.after);
    hold(request, highest, wish, console);
    auto const composing = compose_sessions(request, console, highest);
    if (!composing.composed) {
        return composing.code;
    }
    auto const& [ramp, weeks] = *composing.composed;
    auto const& root = loaded.plan->bundle.root();
    auto const rest = behind_week(root, wish.after);
    auto const head = compose::head_behind(loaded.plan->plan(), request, ramp);
    auto const text = with_weeks(root, rest, compose::weeks_text(request, ramp, weeks, head));
    if (!is_sound(*loaded.plan, text, rest.span.begin, files, console)) {
        return misused;
    }
    console.out.write(text);
    if (loaded.plan->name != "-") {
        console.old = {loaded.plan->name, std::string{root.source.text()}};
    }
    console.summary =
        fmt::format("{} anew, {}, race {}", weeks_words(weeks),
                    counted(composing.composed->sessions(), "session"), spell::day(request.race.on));
    console.below = replaced_words(rest) + beside(options, request, ramp, console);
    return fine;
}

} // namespace lengthwise::cli
