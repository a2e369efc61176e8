#pragma once

#include "words.hpp"

#include <array>
#include <cstddef>
#include <cstdint>
#include <string_view>

/// How words are looked up: folded to lower case, packed into two integers and
/// hashed into one table. Private to words.cpp and the parser, which packs a word
/// while it reads it.
namespace lengthwise::detail {

/// A folded word of at most 16 bytes; longer ones spell nothing.
struct WordKey {
    std::uint64_t low = 0;  ///< bytes 0-7, the first in the lowest byte
    std::uint64_t high = 0; ///< bytes 8-15
    friend constexpr bool operator==(WordKey, WordKey) = default;
};
inline constexpr std::size_t longest_word = 16;

[[nodiscard]] constexpr char fold(char c) {
    return c >= 'A' && c <= 'Z' ? static_cast<char>(c + ('a' - 'A')) : c;
}

[[nodiscard]] constexpr WordKey pack(std::string_view text) {
    WordKey key;
    for (std::size_t i = 0; i < text.size(); ++i) {
        // A NUL would read as nothing; it becomes a byte that no word has.
        auto const c = text[i] == '\0' ? '\xFF' : fold(text[i]);
        auto const byte = static_cast<std::uint64_t>(static_cast<unsigned char>(c));
        (i < 8 ? key.low : key.high) |= byte << (8 * (i % 8));
    }
    return key;
}

struct WordSlot {
    WordKey key;
    Word word = Word::none;
};
inline constexpr int word_slot_bits = 9;
inline constexpr std::size_t word_slots = std::size_t{1} << word_slot_bits;

[[nodiscard]] constexpr std::size_t slot_of(WordKey key) {
    return static_cast<std::size_t>((key.low ^ (key.high << 7)) * 0x9E3779B97F4A7C15ULL >>
                                    (64 - word_slot_bits));
}

/// Open addressing; a slot without a word ends the search.
extern std::array<WordSlot, word_slots> const word_table;

[[nodiscard]] inline Word find_key(WordKey key) {
    for (std::size_t at = slot_of(key);; at = (at + 1) % word_slots) {
        auto const& slot = word_table[at];
        if (slot.key == key || slot.word == Word::none) {
            return slot.word;
        }
    }
}

} // namespace lengthwise::detail
