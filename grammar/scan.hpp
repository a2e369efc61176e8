#pragma once

#include <array>
#include <cstddef>
#include <cstdint>

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

/// The byte after the closing quote of the STRING that begins at `at`, or nothing
/// where its line ends first.
[[nodiscard]] inline char const* scan_string(char const* at) {
    for (++at;; ++at) {
        if (*at == '"') {
            return at + 1;
        }
        if (*at == '\\' && (at[1] == '"' || at[1] == '\\')) {
            ++at;
        } else if (*at == '\\' || *at == '\n' || *at == '\0') {
            return nullptr;
        }
    }
}

} // namespace lengthwise::grammar
