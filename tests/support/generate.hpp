#pragma once

#include <cstdint>
#include <string>
#include <string_view>

namespace lengthwise::test {

/// What to write. The same seed and sizes make the same plan, tidy or not.
struct Wanted {
    std::uint64_t seed = 0;
    std::string_view bytes{}; ///< decide before the seed does, as long as they last
    bool untidy = false;      ///< with other spaces, cases, synonyms, line ends, and comments
    bool include = false;     ///< some of the sets in a file of their own
    int weeks = 2;            ///< at most, with sessions before any week as often
    int sessions = 3;         ///< of a week, at most
    int lines = 4;            ///< of a section, at most
    // How often, in percent:
    int sets = 70;      ///< a plan has named sets
    int groups = 20;    ///< an item is a group
    int uses = 15;      ///< an item uses a set, where there are any
    int ladders = 12;   ///< reps are a ladder
    int timed = 15;     ///< reps are times
    int splits = 15;    ///< single amounts have parts
    int broken = 8;     ///< single amounts are broken
    int selectors = 20; ///< an item has selectors
    int lanes = 30;     ///< a session has lanes
    int optional = 8;   ///< a line is swum `if time`
};

struct Generated {
    std::string text;
    std::string library; ///< of "library.swim", when it is included
    int comments = 0;    ///< of `text`; each is "#: " and its number from 1
};

/// A plan that can be read without an error, with every construct of the notation sooner or
/// later. Untidy text differs from tidy in its writing alone: tidied and without its comments
/// it is the tidy text of the same seed.
[[nodiscard]] Generated generate(Wanted const& wanted);

} // namespace lengthwise::test
