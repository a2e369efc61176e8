#pragma once

namespace lengthwise {

/// From `low` to `high`, both included; low <= high.
template <typename T>
struct Range {
    T low{};
    T high{};

    [[nodiscard]] constexpr bool single() const { return low == high; }
    friend bool operator==(Range const&, Range const&) = default;
};

/// Low, expected and high estimate of one quantity.
template <typename T>
struct Band {
    T low{};
    T expected{};
    T high{};

    friend bool operator==(Band const&, Band const&) = default;
};

} // namespace lengthwise
