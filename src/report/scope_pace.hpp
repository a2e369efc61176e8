#pragma once

#include "plan/plan.hpp"
#include "report/summary.hpp"

#include <optional>

namespace lengthwise::report {

/// The pace of a lane in a scope.
struct ScopePace {
    std::optional<plan::Threshold> pace; ///< where all sessions are timed at the same
    bool several = false;                ///< they are not
};

[[nodiscard]] ScopePace scope_pace(Summary& summary, int lane);

} // namespace lengthwise::report
