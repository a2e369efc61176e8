#pragma once

#include "tree.hpp"

#include <cstdint>
#include <string>

/// How a tree's leaves are spelled. Private to grammar/write.cpp.
namespace lengthwise::grammar {

/// "200", "25m", "33 1/3 m", "12.5m", "4 lengths", "1 length".
[[nodiscard]] std::string spell_number(Node const& number);

/// "90s", "2min", "0:50", "12:05.5", "1:02:03"; only digits for the bare low end of a range.
[[nodiscard]] std::string spell_time(Node const& time);

/// "1st", "12th".
[[nodiscard]] std::string spell_ordinal(std::uint32_t number);

/// The count of lengths that a bare number stands for in a pool that is `lap` / 600 long and
/// no whole number: the smallest k where k laps, truncated or rounded half up, are the
/// number; an exact count wins. 0 where there is none.
[[nodiscard]] std::uint32_t lengths_meant(Node const& number, std::uint32_t lap);

/// True for a bare number that is whole laps to the millimetre, and so says them well enough.
[[nodiscard]] bool is_whole_laps(Node const& number, std::uint32_t lap);

/// A leaf with its keyword: "pool 25m", "broken at 250", "on 2:00", "with fins". What continues
/// a list or range is without what joins it ("paddles", "40s").
[[nodiscard]] std::string spell_leaf(Tree const& tree, Node const& leaf);

} // namespace lengthwise::grammar
