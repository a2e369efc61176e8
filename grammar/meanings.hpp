#pragma once

#include "words.hpp"

#include <array>
#include <cstdint>
#include <span>
#include <string_view>

/// What the notation's words are for. `explain` prints it and docs/words.md is made of it; a test reads
/// every example and asks for every word.
namespace lengthwise::grammar {

struct Meaning {
    enum class Example : std::uint8_t {
        file, ///< whole lines of a file, from its head on
        lines ///< lines of a main part
    };
    std::string_view name;  ///< as it is written: "lane", "if time", "odds, evens"
    std::string_view title; ///< what it is, without a full stop
    Example kind = Example::lines;
    std::string_view example; ///< its forms
    std::string_view text;    ///< sentences
    std::array<Word, 8> words{};

    [[nodiscard]] bool tells(Word word) const;

    /// What stands behind it, as messages about it say; nothing where that is not told.
    [[nodiscard]] std::string_view takes() const;
};

/// Of statements, settings and headings; of what stands on a line; of the signs.
[[nodiscard]] std::span<Meaning const> meanings_of_statements();
[[nodiscard]] std::span<Meaning const> meanings_of_modifiers();
[[nodiscard]] std::span<Meaning const> meanings_of_joints();

/// The three above, in their order.
[[nodiscard]] std::array<std::span<Meaning const>, 3> meanings();

} // namespace lengthwise::grammar
