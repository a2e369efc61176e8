#pragma once

#include <array>
#include <cstdint>
#include <span>
#include <string_view>

/// The drills that are handed out. Common practice, no published source. None asks for fewer
/// breaths or a held one.
namespace lengthwise::compose {

enum class Focus : std::uint8_t { body, breath, kick, catch_, timing, wall, sight };

/// As a heading.
[[nodiscard]] std::string_view name_of(Focus focus);

struct Drill {
    std::string_view name;
    Focus focus;
    int stage;              ///< from which it is for a swimmer: 0, 1, 2
    std::string_view needs; ///< the drill to know before; empty: none
    std::string_view cue;   ///< what to think of, at most 74 characters
};

/// By focus, the plain ones first.
[[nodiscard]] std::span<Drill const> drills();

/// By name; there.
[[nodiscard]] Drill const& drill_named(std::string_view name);

/// The basics, which what comes later leans on.
inline constexpr std::string_view bubbles = "bubbles";
inline constexpr std::string_view push_and_glide = "push and glide";
inline constexpr std::string_view catch_up = "catch-up";

} // namespace lengthwise::compose
