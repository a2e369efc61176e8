#pragma once

#include "cli/console.hpp"
#include "cli/options.hpp"
#include "compose/author.hpp"
#include "compose/ramp.hpp"
#include "compose/resume.hpp"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

/// What `compose` does with a request, whether a plan begins or goes on.
namespace lengthwise::cli {

struct Composed {
    compose::Ramp ramp;
    std::vector<compose::Week> weeks;

    [[nodiscard]] std::size_t sessions() const;
};

/// The sessions of a request, and what to know about them said; else how the command ends, which has been
/// said.
struct Composing {
    std::optional<Composed> composed;
    int code = 0;
};

/// Ways out that would begin above `most_today` (0: any) are left out where there are others.
[[nodiscard]] Composing compose_sessions(compose::Request const& request, Console& console,
                                         compose::Highest const& most_today = {});

/// What is said beside the plan: how it climbs, why if that is asked for, and what to type next.
[[nodiscard]] std::string beside(Compose const& options, compose::Request const& request,
                                 compose::Ramp const& ramp, Console const& console);

/// "1 week", "3 weeks".
[[nodiscard]] std::string counted(std::size_t n, std::string_view word);

} // namespace lengthwise::cli
