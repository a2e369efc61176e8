#pragma once

#include "plan/plan.hpp"
#include "report/choose.hpp"

#include <optional>
#include <string>
#include <string_view>

/// `--swimmer NAME`: whose session a screen is about.
namespace lengthwise::report {

/// Who was asked for, or why there is none: a sentence without a line feed, which ends the command with 2.
struct PickedSwimmer {
    std::optional<plan::Index> index; ///< of Plan::swimmers; nothing when nobody was asked for
    std::optional<int> lane;          ///< asked for, else the swimmer's own
    std::string problem;

    [[nodiscard]] bool found() const { return problem.empty(); }
};

/// A name wins over one that differs in capitals only, and that over the beginning of a single name.
/// Another lane than the swimmer's own is a problem.
[[nodiscard]] PickedSwimmer pick_swimmer(plan::Plan const& plan, Wish const& wish);

/// "Ann", with a share of not all "Ann, 80 %"; safe to print.
[[nodiscard]] std::string swimmer_label(plan::Swimmer const& swimmer);

} // namespace lengthwise::report
