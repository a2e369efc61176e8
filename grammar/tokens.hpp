#pragma once

#include "reading.hpp"

#include <cstdint>

/// The notation's tokens that are more than a word. Each reader skips blanks,
/// moves `at` behind what it read and appends its leaf; where it cannot, it leaves
/// `at` alone and returns false.
namespace lengthwise::grammar {

/// A number with its unit, or a time, before anybody knows what it is for.
struct Quantity {
    char const* begin = nullptr;
    char const* end = nullptr;
    bool is_time = false;
    std::uint32_t value = 0; ///< as the leaf has it: 1/600, milliseconds or, for a bare time, the number
    std::uint8_t detail = 0; ///< WrittenUnit and decimal_flag, or WrittenTime
    [[nodiscard]] bool is_bare() const { return !is_time && detail == 0; }
    [[nodiscard]] bool is_whole() const { return value % number_scale == 0; }
};
[[nodiscard]] bool scan_quantity(char const* at, Reading& r, Quantity& quantity);

/// What a time may be at its place.
enum class TimeRule : std::uint8_t {
    may_be_zero, ///< rest, pause, break, shift
    above_zero,  ///< amounts, send-offs, exact times
    with_unit,   ///< a break: a number with its unit, 0 allowed
    slot,        ///< the same, at least a minute
};
bool read_time(char const*& at, Reading& r, Kind kind, TimeRule rule, char const* from = nullptr);
bool read_distance(char const*& at, Reading& r, Kind kind, char const* from = nullptr);
/// `distance` or `time`, whichever stands there.
bool read_amount(char const*& at, Reading& r, Kind distance, Kind time, char const* from = nullptr);
/// A time or a range of times; `first` and Kind::rest_to.
bool read_rest(char const*& at, Reading& r, Kind first, char const* from);
/// NUM behind a limit's name, PERCENT, a distance, a time or a range.
bool read_limit_value(char const*& at, Reading& r);

/// A plain number from `low` to `high`; `fault` is what it is otherwise.
bool read_number(char const*& at, Reading& r, Kind kind, std::uint32_t low, std::uint32_t high, Fault fault,
                 char const* from = nullptr);
bool read_percent(char const*& at, Reading& r, Kind kind, char const* from = nullptr);
bool read_ordinal(char const*& at, Reading& r, Kind kind);
/// `1-4` behind `descend`, already pushed as the last node.
bool read_descend_range(char const*& at, Reading& r);
/// `lane 1-4:` behind `lane`.
bool read_lane_label(char const*& at, Reading& r);
bool read_date(char const*& at, Reading& r, Kind kind, char const* from = nullptr);
bool read_time_of_day(char const*& at, Reading& r);
bool read_rule_name(char const*& at, Reading& r);

/// NUM X before an item's body; sets the open item's count.
bool read_count(char const*& at, Reading& r);

/// A comma, a slash of a split: with the blanks that belong to them.
bool read_comma(char const*& at, Reading& r);
bool read_slash(char const*& at, Reading& r);
/// The colon of a label; a blank follows.
bool read_colon(char const*& at, Reading& r);
/// Blanks, a comment, the line's end.
bool read_line_end(char const*& at, Reading& r);

} // namespace lengthwise::grammar
