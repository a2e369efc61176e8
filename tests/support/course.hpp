#pragma once

#include "support/pen.hpp"
#include "units/distance.hpp"
#include "units/duration.hpp"
#include "units/pool.hpp"

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace lengthwise::test {

/// How the numbers of a named set are written: so that they are right in any pool.
enum class Everywhere : std::uint8_t { no, bare, metres, yards, lengths };

/// Where something is swum, and how distances may be written there. Worked out from
/// docs/notation.md, "Amounts and units", without the code under test.
struct Course {
    Pool pool;
    std::string tidy{};                     ///< what `pool` takes: "33 1/3 m", "open water"
    std::vector<std::string> others{};      ///< other ways to write that
    Everywhere everywhere = Everywhere::no; ///< in a set a distance of n m stands for "n", "n m", "n yd";
                                            ///< with lengths, one for each 25 m
};

/// Nothing said, open water, and pools whole and not.
[[nodiscard]] std::vector<Course> const& courses();

/// Lengths that a bare whole number stands for, 0 when it is no count of lengths: by trying one
/// count after the other.
[[nodiscard]] std::int64_t lengths_by_trying(Pool const& pool, std::int64_t number);

/// All ways to write a distance; at least one for whole and half lengths, and whole multiples of 25 of the
/// course's unit.
[[nodiscard]] std::vector<Spelling> writings(Distance distance, Course const& course);

/// The same with a unit of its own, metres or yards.
[[nodiscard]] std::vector<Spelling> writings_with_unit(Distance distance);

/// Whether it says its unit.
[[nodiscard]] bool says_unit(Spelling const& way);

/// Ways to write a ladder whose last step says the unit for all; none in sets.
[[nodiscard]] std::vector<Spelling> ladder_writings(std::vector<Distance> const& steps, Course const& course);

/// Ways to write a time; `with_unit` without a clock's.
[[nodiscard]] std::vector<Spelling> writings(Duration time, bool with_unit = false);

} // namespace lengthwise::test
