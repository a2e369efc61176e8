#pragma once

#include "word_key.hpp"

#include <array>
#include <bit>
#include <cstddef>
#include <cstdint>
#include <cstring>

/// The notation's characters, without a locale. A text ends in a NUL that every
/// scanner here stops at, so none of them needs to look at the end.
namespace lengthwise::grammar {

namespace detail {

enum : std::uint8_t { letter = 1, digit = 2, blank = 4, beyond_ascii = 8 };

inline constexpr std::array<std::uint8_t, 256> classes = [] {
    std::array<std::uint8_t, 256> table{};
    for (std::size_t c = 'a'; c <= 'z'; ++c) {
        table[c] = table[c - 'a' + 'A'] = letter;
    }
    for (std::size_t c = '0'; c <= '9'; ++c) {
        table[c] = digit;
    }
    for (std::size_t c = 0x80; c <= 0xFF; ++c) {
        table[c] = beyond_ascii;
    }
    table[' '] = table['\t'] = blank;
    return table;
}();

[[nodiscard]] inline bool is(char c, int wanted) {
    return (classes[static_cast<unsigned char>(c)] & wanted) != 0;
}

} // namespace detail

[[nodiscard]] inline bool is_letter(char c) {
    return detail::is(c, detail::letter);
}
[[nodiscard]] inline bool is_digit(char c) {
    return detail::is(c, detail::digit);
}
[[nodiscard]] inline bool is_blank(char c) {
    return detail::is(c, detail::blank);
}
/// What must not touch the end of a word: it would be read as part of it.
[[nodiscard]] inline bool clings_to_word(char c) {
    return detail::is(c, detail::digit | detail::beyond_ascii);
}

[[nodiscard]] inline char const* skip_blanks(char const* at) {
    while (is_blank(*at)) {
        ++at;
    }
    return at;
}

/// Two digits and no third.
[[nodiscard]] inline bool two_digits(char const* at) {
    return is_digit(at[0]) && is_digit(at[1]) && !is_digit(at[2]);
}

/// Decimal digits as they stand; `value` stops growing at 10^17, far above every
/// limit, so that it never wraps.
struct Digits {
    std::uint64_t value = 0;
    char const* end = nullptr;
};

[[nodiscard]] inline Digits scan_digits(char const* at) {
    constexpr std::uint64_t enough = 100'000'000'000'000'000;
    std::uint64_t value = 0;
    for (; is_digit(*at); ++at) {
        value = value < enough ? value * 10 + static_cast<std::uint64_t>(*at - '0') : value;
    }
    return {value, at};
}

/// A word as the look-up wants it.
struct Letters {
    lengthwise::detail::WordKey key; ///< of no word where `is_long`
    char const* end = nullptr;
    bool is_long = false; ///< more letters than any word has
};

namespace detail {

/// Eight bytes, the first in the lowest: what a little-endian machine loads.
[[nodiscard]] inline std::uint64_t load_eight(char const* at) {
    std::uint64_t bytes = 0;
    if constexpr (std::endian::native == std::endian::little) {
        std::memcpy(&bytes, at, sizeof bytes);
    } else {
        for (int i = 0; i < 8; ++i) {
            bytes |= std::uint64_t{static_cast<unsigned char>(at[i])} << (8 * i);
        }
    }
    return bytes;
}

/// The high bit of every byte that is `c`; bits above the lowest of them may lie.
[[nodiscard]] inline std::uint64_t bytes_equal(std::uint64_t bytes, char c) {
    constexpr std::uint64_t every = 0x0101010101010101;
    auto const differing = bytes ^ (every * static_cast<unsigned char>(c));
    return (differing - every) & ~differing & (every * 0x80);
}

/// Folds the letters at the front of eight bytes and clears what follows them.
/// Returns how many there are. No branch depends on it: words' lengths do not
/// follow a pattern that a processor could learn.
[[nodiscard]] inline int leading_letters(std::uint64_t& bytes) {
    constexpr std::uint64_t every = 0x0101010101010101;
    constexpr auto high = every * 0x80;
    auto const folded = bytes | (every * 0x20);
    auto const low = folded & ~high;
    auto const from_a = low + every * (0x80 - 'a');
    auto const past_z = low + every * (0x80 - 'z' - 1);
    auto const others = ~(from_a & ~past_z & ~folded) & high;
    auto const count = std::countr_zero(others) / 8;
    bytes = count == 0 ? 0 : folded & (~std::uint64_t{0} >> (64 - 8 * count));
    return count;
}

/// Letters and hyphens between letters, one by one.
[[nodiscard]] inline Letters scan_letters_slowly(char const* at) {
    Letters word;
    auto const* const from = at;
    do {
        auto const i = static_cast<std::size_t>(at - from);
        auto const byte = static_cast<std::uint64_t>(static_cast<unsigned char>(*at | 0x20));
        if (i < lengthwise::detail::longest_word) {
            (i < 8 ? word.key.low : word.key.high) |= byte << (8 * (i % 8));
        } else {
            word.is_long = true;
        }
        ++at;
    } while (is_letter(*at) || (*at == '-' && is_letter(at[1])));
    word.end = at;
    return word;
}

} // namespace detail

/// Skips the blanks that a line begins with, which are many.
[[nodiscard]] inline char const* skip_indentation(char const* at, char const* end) {
    while (end - at >= 8) {
        constexpr std::uint64_t blanks = 0x2020202020202020;
        auto const others = detail::load_eight(at) ^ blanks;
        if (others != 0) {
            return skip_blanks(at + std::countr_zero(others) / 8);
        }
        at += 8;
    }
    return skip_blanks(at);
}

/// The byte after the closing quote of the STRING that begins at `at`, or nothing
/// where its line ends first or a backslash escapes nothing.
[[nodiscard]] inline char const* scan_string(char const* at, char const* end) {
    for (++at;;) {
        while (end - at >= 8) {
            auto const bytes = detail::load_eight(at);
            auto const stops = detail::bytes_equal(bytes, '"') | detail::bytes_equal(bytes, '\\') |
                               detail::bytes_equal(bytes, '\n');
            if (stops != 0) {
                at += std::countr_zero(stops) / 8;
                break;
            }
            at += 8;
        }
        if (at == end || *at == '\n') {
            return nullptr;
        }
        if (*at == '"') {
            return at + 1;
        }
        if (*at == '\\') {
            if (at[1] != '"' && at[1] != '\\') {
                return nullptr;
            }
            ++at;
        }
        ++at;
    }
}

/// The word at `at`, which is a letter; the text ends at `end`.
[[nodiscard]] inline Letters scan_letters(char const* at, char const* end) {
    if (end - at >= 16) [[likely]] {
        Letters word;
        word.key.low = detail::load_eight(at);
        auto count = detail::leading_letters(word.key.low);
        if (count == 8) {
            word.key.high = detail::load_eight(at + 8);
            count += detail::leading_letters(word.key.high);
        }
        word.end = at + count;
        if (*word.end != '-' && count < 16) [[likely]] {
            return word;
        }
    }
    return detail::scan_letters_slowly(at);
}

} // namespace lengthwise::grammar
