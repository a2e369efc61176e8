#pragma once

#include "cli/options.hpp"
#include "plan/plan.hpp"

#include <optional>
#include <string>
#include <vector>

namespace lengthwise::cli {

/// A card that is to be made.
struct CardWish {
    plan::Index session = 0;
    int lane = 0;
    std::optional<plan::Index> swimmer{}; ///< whose own it is; nothing: the lane's
};

struct PickedCards {
    std::vector<CardWish> cards; ///< in the plan's order, each session's lanes ascending
    std::string problem;         ///< why there are none
};

/// What `--week`, `--session`, `--lane` and `--swimmer` ask for: a card a session, where it has lanes one
/// a lane, and one for each swimmer who swims a share of a lane.
[[nodiscard]] PickedCards pick_cards(plan::Plan const& plan, Cards const& options, bool ascii);

} // namespace lengthwise::cli
