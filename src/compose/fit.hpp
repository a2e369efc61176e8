#pragma once

#include "compose/page.hpp"

#include <array>
#include <optional>
#include <vector>

/// How laps are cut into reps. Common practice, no published source.
namespace lengthwise::compose {

/// Sizes of reps and counts of reps that look well on a whiteboard.
inline constexpr std::array<Laps, 15> round_sizes{1, 2, 3, 4, 5, 6, 8, 10, 12, 16, 20, 24, 30, 32, 40};
inline constexpr std::array<int, 9> nice_counts{1, 2, 3, 4, 5, 6, 8, 10, 12};

[[nodiscard]] bool is_round(Laps size);
[[nodiscard]] bool is_nice(int count);
/// The largest nice count of at most `most`, which is at least 1.
[[nodiscard]] int nice_at_most(int most);

struct Fit {
    int count = 1;
    Laps size = 1;
    Laps spare = 0; ///< laps that are left over
};

struct FitTerms {
    int most = 8;   ///< reps
    Laps spare = 1; ///< laps that may be left over
    int least = 2;  ///< reps
};

/// A nice count of round reps, none over `longest` and each near `wish`, that make `laps` but for a spare
/// one: the least of twice what is spare + how far from the wish + 1 for over six reps.
[[nodiscard]] std::optional<Fit> fit(Laps laps, Laps longest, Laps wish, FitTerms terms = {});

/// Where one row will not do: the fewest rows of unlike size, none over `longest`, but for two spare laps.
/// More than twelve of a lap each have a row for each twelve.
[[nodiscard]] std::vector<Fit> rows(Laps laps, Laps longest);

/// The fewest equal round reps, none over `longest`.
[[nodiscard]] Fit equal_reps(Laps laps, Laps longest);

} // namespace lengthwise::compose
