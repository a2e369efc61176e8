#include "plan/items.hpp"

#include "grammar/limits.hpp"

#include <fmt/core.h>

#include <string_view>

/// How much of a session is read, and what is said of more.
namespace lengthwise::plan {

bool ItemReader::fits(int depth, Span at) {
    if (depth <= limits::nesting) {
        return true;
    }
    work_.report.error(
        code::limit, at,
        fmt::format("parentheses and uses stand {} deep here; {} are read", depth, limits::nesting),
        "write the inner sets on lines of their own");
    return false;
}

bool ItemReader::may_read(Span at) {
    if (stopped_) {
        return false;
    }
    if (readings_.count()) {
        return true;
    }
    stopped_ = true;
    auto const session = readings_.session_passed();
    work_.report.error(code::limit, reading_.empty() ? at : reading_,
                       fmt::format("the shared sets of {} would be read in more than {} further ways",
                                   session ? "this session" : "this file",
                                   session ? limits::session_contexts : limits::file_contexts),
                       "use fewer sets inside sets, or say less around them");
    return false;
}

/// Says, at the line that passes a limit, that the session is larger than is read.
void ItemReader::weigh(Load const& more, Span at) {
    auto const before = session_;
    session_.add(more);
    auto const passed = [](std::int64_t was, std::int64_t is, std::int64_t limit) {
        return was <= limit && is > limit;
    };
    auto const say = [&](std::string_view what, std::int64_t is, std::int64_t limit, std::int64_t scale,
                         std::string_view unit) {
        work_.report.error(code::limit, at,
                           fmt::format("with this line the session's {} comes to {} {}; {} {} are read", what,
                                       is / scale + (is % scale != 0 ? 1 : 0), unit, limit / scale, unit));
    };
    constexpr auto kilometre = 1000 * Distance::per_metre;
    constexpr auto hour = Duration::hours(1).ms();
    if (passed(before.units, session_.units, limits::session_km * kilometre)) {
        say("distance", session_.units, limits::session_km * kilometre, kilometre, "km");
    } else if (passed(before.reps, session_.reps, limits::session_reps)) {
        say("number of reps", session_.reps, limits::session_reps, 1, "reps");
    } else if (passed(before.ms, session_.ms, limits::session_hours * hour)) {
        say("time", session_.ms, limits::session_hours * hour, hour, "h");
    }
}

} // namespace lengthwise::plan
