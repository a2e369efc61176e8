#include "cli/commands.hpp"
#include "cli/composed.hpp"
#include "cli/plans.hpp"
#include "cli/resume.hpp"
#include "compose/text.hpp"
#include "units/spell.hpp"

#include <fmt/core.h>

namespace lengthwise::cli {

int compose(Compose const& options, Files& files, Console& console) {
    if (options.resume) {
        return resume(options, *options.resume, files, console);
    }
    auto const& request = options.request;
    auto const composing = compose_sessions(request, console);
    if (!composing.composed) {
        return composing.code;
    }
    auto const& [ramp, weeks] = *composing.composed;
    console.out.write(compose::plan_text(request, ramp, weeks));
    console.summary =
        fmt::format("{}, {}, race {}", counted(weeks.size(), "week"),
                    counted(composing.composed->sessions(), "session"), spell::day(request.race.on));
    console.below = beside(options, request, ramp, console);
    return fine;
}

} // namespace lengthwise::cli
