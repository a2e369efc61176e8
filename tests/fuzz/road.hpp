#pragma once

#include "fuzz/reading.hpp"

#include <cstdint>
#include <string>

/// The stations of the target `road`. Each gives back all that it made, so that a second time can be held
/// against the first.
namespace lengthwise::fuzz {

/// The findings of a text, as people and other programs get them; `plan` null where errors hide it.
[[nodiscard]] std::string findings_shown(Diagnostics const& findings, Reading const& reading, bool has_plan);

/// What a plan adds up to, held against itself.
void add_up(plan::Plan const& plan);

/// Everything that is shown of a whole plan. `choice` decides how.
[[nodiscard]] std::string plan_shown(plan::Plan const& plan, std::uint64_t choice);

/// Everything that is shown of one session, as it stands and made to fit.
[[nodiscard]] std::string session_shown(plan::Plan const& plan, plan::Index session, std::uint64_t choice);

/// A session on cards of all sizes.
[[nodiscard]] std::string cards_shown(plan::Plan const& plan, plan::Index session, std::uint64_t choice);

} // namespace lengthwise::fuzz
