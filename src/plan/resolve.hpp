#pragma once

#include "grammar/bundle.hpp"
#include "grammar/diagnostic.hpp"
#include "plan/plan.hpp"

namespace lengthwise::plan {

struct Resolved {
    Plan plan;
    Diagnostics findings; ///< errors only, codes `syntax-…`
};

/// What the bundle's text means. Never throws for bad input. Meant for a bundle
/// without errors; with some it resolves what it can, so that one run shows all
/// errors of a file, and the plan is then of no use. The plan views the bundle's text.
[[nodiscard]] Resolved resolve(grammar::Bundle const& bundle);

} // namespace lengthwise::plan
