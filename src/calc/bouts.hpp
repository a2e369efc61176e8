#pragma once

#include "plan/plan.hpp"

#include <cstdint>
#include <vector>

/// The reps or rounds of an item in the order they are swum, without writing them out.
namespace lengthwise::calc {

/// Some in a row: those that are swum alike, or a pattern that comes again and again.
struct Bout {
    std::uint32_t times = 1;
    plan::Selection const* selection = nullptr; ///< chooses them; null: none does
    std::uint32_t number = 0; ///< of the first, counted from 0; in a pattern that comes again,
                              ///< of its first time
    std::vector<Bout> inside; ///< what is repeated; empty: one rep or round

    [[nodiscard]] std::uint32_t count() const; ///< reps or rounds in it, all its times
};

/// All of an item. Ladders and those with a send-off each come one by one; else `odds`, `evens` and
/// `every` become patterns: 9999 reps with every other one hard are a handful of bouts.
[[nodiscard]] std::vector<Bout> bouts_of(plan::Plan const& plan, plan::Item const& item);

} // namespace lengthwise::calc
