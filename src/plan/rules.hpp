#pragma once

#include <array>
#include <cstddef>
#include <cstdint>
#include <optional>
#include <string_view>

namespace lengthwise::plan {

/// What a `limit` of a rule is counted in.
enum class LimitKind : std::uint8_t { none, percent, number, distance, duration, range };

/// A rule's name, and what `limit` and `allow` may say of it. What it judges, and
/// why, stands in src/check.
struct Rule {
    std::string_view name;
    LimitKind kind = LimitKind::none;
    bool file_level = false; ///< judges the whole plan: `limit` and `allow` stand at the file's head only
};

using RuleId = std::uint8_t; ///< an index of `rules`

inline constexpr std::array rules{
    Rule{"race-rep", LimitKind::percent, true},
    Rule{"rep-step", LimitKind::percent, true},
    Rule{"week-growth", LimitKind::percent, true},
    Rule{"sessions", LimitKind::number, true},
    Rule{"session-floor", LimitKind::distance, true},
    Rule{"taper", LimitKind::percent, true},
    Rule{"calendar", LimitKind::none, true},
    Rule{"slot", LimitKind::duration, false},
    Rule{"send-off", LimitKind::duration, false},
    Rule{"rest-band", LimitKind::range, false},
    Rule{"whole-lengths", LimitKind::none, false},
    Rule{"home-wall", LimitKind::none, false},
    Rule{"medley", LimitKind::none, false},
    Rule{"shape", LimitKind::none, false},
    Rule{"lanes", LimitKind::none, false},
    Rule{"feasible", LimitKind::none, false},
    Rule{"caution", LimitKind::none, false},
    Rule{"second-look", LimitKind::none, false},
};

[[nodiscard]] constexpr std::optional<RuleId> find_rule(std::string_view name) {
    for (std::size_t i = 0; i < rules.size(); ++i) {
        if (rules[i].name == name) {
            return static_cast<RuleId>(i);
        }
    }
    return std::nullopt;
}

} // namespace lengthwise::plan
