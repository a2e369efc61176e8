#pragma once

#include "quantity.hpp"

#include <cstdint>

/// The notation's tokens that are more than a word. Each reader skips blanks,
/// moves `at` behind what it read and appends its leaf; where it cannot, it leaves
/// `at` alone and returns false.
namespace lengthwise::grammar {

inline bool append(char const*& at, Reading& r, Kind kind, Quantity const& q, char const* from = nullptr) {
    r.push(kind, from != nullptr ? from : q.begin, q.end, q.value, q.detail);
    at = q.end;
    return true;
}

/// The faults of what is read below, out of the way.
[[nodiscard]] bool wrong_zero(Reading& r, Quantity& q);
[[nodiscard]] bool wrong_count(Reading& r, Figure const& figure, char const* to);

[[nodiscard]] inline bool above_zero(Reading& r, Quantity& q) {
    return q.value != 0 || wrong_zero(r, q);
}

/// `distance` or `time`, whichever stands there.
inline bool read_amount(char const*& at, Reading& r, Kind distance, Kind time, char const* from = nullptr) {
    Quantity q;
    return scan_quantity(at, r, q) && above_zero(r, q) && append(at, r, q.is_time ? time : distance, q, from);
}

/// What a time may be at its place.
enum class TimeRule : std::uint8_t {
    may_be_zero, ///< rest, pause, break, shift
    above_zero,  ///< amounts, send-offs, exact times
    with_unit,   ///< a break: a number with its unit, 0 allowed
    slot,        ///< the same, at least a minute
};
bool read_time(char const*& at, Reading& r, Kind kind, TimeRule rule, char const* from = nullptr);
bool read_distance(char const*& at, Reading& r, Kind kind, char const* from = nullptr);
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
/// `lane 1-4:` behind `lane`, and `:` behind `if time`; once an item.
bool read_lane_label(char const*& at, Reading& r);
bool read_if_time_label(char const*& at, Reading& r);
bool read_date(char const*& at, Reading& r, Kind kind, char const* from = nullptr);
bool read_time_of_day(char const*& at, Reading& r);
bool read_rule_name(char const*& at, Reading& r);

/// NUM X before an item's body; sets the open item's count.
inline bool read_count(char const*& at, Reading& r) {
    auto const& figure = r.figure(at);
    if (figure.begin == figure.end) {
        return false;
    }
    auto const* x = skip_blanks(figure.end);
    if ((*x | 0x20) == 'x' && !is_letter(x[1])) {
        ++x;
    } else if (x[0] == '\xC3' && x[1] == '\x97' && !is_letter(x[2])) { // the multiplication sign
        x += 2;
    } else {
        return false;
    }
    auto count = figure.value;
    if (count - 1 >= limits::repeat) {
        if (!wrong_count(r, figure, x)) {
            return false;
        }
        count = 1;
    }
    r.nodes[r.item].length = static_cast<std::uint16_t>(count);
    r.counted = true;
    at = x;
    return true;
}

/// A comma and the blank behind it.
inline bool read_comma(char const*& at) {
    auto const* const comma = skip_blanks(at);
    if (*comma != ',' || !is_blank(comma[1])) {
        return false;
    }
    at = comma + 1;
    return true;
}

/// The slash of a split between its blanks.
inline bool read_slash(char const*& at) {
    auto const* const slash = skip_blanks(at);
    if (slash == at || *slash != '/' || !is_blank(slash[1])) {
        return false;
    }
    at = slash + 1;
    return true;
}

/// The colon of a label and the blank behind it.
inline bool read_colon(char const*& at) {
    auto const* const colon = skip_blanks(at);
    if (*colon != ':' || !is_blank(colon[1])) {
        return false;
    }
    at = colon + 1;
    return true;
}

/// Blanks, a comment, the line's end.
inline bool read_line_end(char const*& at, Reading& r) {
    auto const* p = skip_blanks(at);
    if (*p == '#') {
        auto const* const from = p;
        while (*p != '\n' && p != r.end) {
            ++p;
        }
        r.add_comment(from, p[-1] == '\r' ? p - 1 : p);
    } else if (*p == '\r' && p[1] == '\n') {
        ++p;
    }
    if (*p == '\n') {
        at = p + 1;
        return true;
    }
    if (p == r.end) {
        at = p;
        return true;
    }
    return false;
}

} // namespace lengthwise::grammar
