#pragma once

#include "reading.hpp"

#include <cstdint>

/// Numbers with their units and times, before anybody knows what they are for.
namespace lengthwise::grammar {

struct Quantity {
    char const* begin = nullptr;
    char const* end = nullptr;
    bool is_time = false;
    std::uint32_t value = 0; ///< as the leaf has it: 1/600, milliseconds or, for a bare time, the number
    std::uint8_t detail = 0; ///< WrittenUnit and decimal_flag, or WrittenTime
    [[nodiscard]] bool is_bare() const { return !is_time && detail == 0; }
    [[nodiscard]] bool is_whole() const { return value % number_scale == 0; }
};

inline constexpr std::uint64_t largest_number = 7'000'000;
inline constexpr std::uint64_t second_ms = 1000;
inline constexpr std::uint64_t minute_ms = 60 * second_ms;
inline constexpr std::uint64_t hour_ms = 60 * minute_ms;
inline constexpr std::uint64_t day_ms = 24 * hour_ms;

[[nodiscard]] constexpr std::uint8_t written(WrittenUnit unit) {
    return static_cast<std::uint8_t>(unit);
}
[[nodiscard]] constexpr std::uint8_t written(WrittenTime form) {
    return static_cast<std::uint8_t>(form);
}

// The rare halves of what follows: clocks, points, fractions, large numbers, faults.
[[nodiscard]] bool scan_rare_quantity(Reading& r, Quantity& q, Figure const& figure);
[[nodiscard]] bool refuse_clinging(Reading& r, Quantity const& q, Ahead const& letters);
[[nodiscard]] bool long_time(Reading& r, Quantity const& q, std::uint64_t ms);

/// Ends a time of `ms`, within a day.
[[nodiscard]] inline bool finish_time(Reading& r, Quantity& q, std::uint64_t ms, WrittenTime form) {
    if (ms > day_ms && !long_time(r, q, ms)) {
        return false;
    }
    q.is_time = true;
    q.value = static_cast<std::uint32_t>(ms < day_ms ? ms : day_ms);
    q.detail = written(form);
    return true;
}

/// Behind the digits of a whole number: its unit, if there is one.
[[nodiscard]] inline bool scan_unit(Reading& r, Quantity& q, std::uint64_t value) {
    auto const& unit = r.word(q.end);
    if (!is_between(unit.word, Word::metres, Word::hours)) {
        return !is_letter(*q.end) || refuse_clinging(r, q, unit);
    }
    q.end = unit.end;
    if (unit.word <= Word::lengths) {
        q.detail = static_cast<std::uint8_t>(static_cast<int>(unit.word) - static_cast<int>(Word::metres) +
                                             static_cast<int>(WrittenUnit::metres));
        return true;
    }
    auto const scale = unit.word == Word::seconds   ? second_ms
                       : unit.word == Word::minutes ? minute_ms
                                                    : hour_ms;
    auto const form = static_cast<int>(unit.word) - static_cast<int>(Word::seconds) +
                      static_cast<int>(WrittenTime::seconds);
    return finish_time(r, q, (value < largest_number ? value : largest_number) * scale,
                       static_cast<WrittenTime>(form));
}

/// A number with its unit or a time, whatever it is for.
[[nodiscard]] inline bool scan_quantity(char const* at, Reading& r, Quantity& q) {
    auto const& figure = r.figure(at);
    q = {figure.begin, figure.end};
    auto const next = *figure.end;
    if (figure.begin == figure.end || figure.value > largest_number || next == ':' || next == '.' ||
        is_digit(*r.word(figure.end).begin)) {
        return scan_rare_quantity(r, q, figure);
    }
    q.value = static_cast<std::uint32_t>(figure.value) * number_scale;
    return scan_unit(r, q, figure.value);
}

} // namespace lengthwise::grammar
