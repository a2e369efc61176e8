#pragma once

#include <cstdint>

namespace lengthwise {

/// A half-open range of bytes. Offsets live in one space over all files of a
/// bundle: a file's first byte stands at its Source's base. Line and column are
/// worked out from an offset only when somebody asks (Source::locate).
struct Span {
    std::uint32_t begin = 0;
    std::uint32_t end = 0;

    [[nodiscard]] constexpr std::uint32_t size() const { return end - begin; }
    [[nodiscard]] constexpr bool empty() const { return begin == end; }
    friend constexpr bool operator==(Span, Span) = default;
};

/// From the first byte of `a` to the last of `b`.
[[nodiscard]] constexpr Span cover(Span a, Span b) {
    return {a.begin < b.begin ? a.begin : b.begin, a.end > b.end ? a.end : b.end};
}

} // namespace lengthwise
