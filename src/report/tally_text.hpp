#pragma once

#include "calc/breakdown.hpp"
#include "plan/plan.hpp"
#include "report/choose.hpp"
#include "report/paint.hpp"

#include <cstddef>
#include <optional>
#include <string>

namespace lengthwise::report {

struct TallyOptions {
    Scope scope;               ///< from pick_scope
    std::optional<int> lane{}; ///< nothing: the scope's lanes, its lowest for plain totals
    std::optional<calc::By> by{};
    std::size_t width = 60;
    bool ascii = false;
    std::string file{};      ///< named above the totals and in JSON when several files are given; else empty
    bool by_swimmer = false; ///< the swimmers side by side, instead of `by`; `swimmer` alone if one is set
    plan::Swimmer const* swimmer = nullptr; ///< whose plan it is (tailor/swimmer.hpp), as the file names him
};

/// The totals of a session, a week or a plan for people; ends in a line feed. A plan
/// of one session is shown as that session, a plan of one week as that week.
[[nodiscard]] std::string tally_text(plan::Plan const& plan, TallyOptions const& options, Paint const& paint);

} // namespace lengthwise::report
