#pragma once

#include "plan/plan.hpp"
#include "report/paint.hpp"
#include "tailor/late.hpp"

#include <cstddef>
#include <string>

namespace lengthwise::report {

struct LateStyle {
    std::size_t width = 80; ///< no line is wider, from 40 on
    bool ascii = false;
    bool moved = false; ///< the session was made to fit another pool, which is named then
};

/// What to swim in the time that is left, for a screen; ends in a line feed. `late` was made of `plan`
/// and `wish`, without a problem.
[[nodiscard]] std::string late_text(plan::Plan const& plan, tailor::LateWish const& wish,
                                    tailor::Late const& late, LateStyle const& style, Paint const& paint);

/// Why there is no such answer: one sentence, and lines below it, without a last line feed.
[[nodiscard]] std::string late_problem(plan::Plan const& plan, tailor::LateWish const& wish,
                                       tailor::Late const& late, bool ascii = false);

} // namespace lengthwise::report
