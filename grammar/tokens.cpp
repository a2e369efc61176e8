#include "tokens.hpp"

#include <algorithm>
#include <array>
#include <utility>

namespace lengthwise::grammar {

namespace {

/// Whether the item being read bears a label of this kind already.
bool has_label(Reading& r, Kind kind) {
    for (auto i = r.item + 1; i < r.nodes.size(); ++i) {
        if (r.nodes[i].kind == kind) {
            return true;
        }
    }
    return false;
}

/// Whether a time may stand where `rule` holds. Once its error is out, a number
/// without a unit goes on as the time that was most likely meant.
bool obeys(Reading& r, Quantity& q, TimeRule rule) {
    if (!q.is_time && !q.is_bare()) {
        return r.refuse(q.begin, q.end, Fault::time_distance);
    }
    if (!q.is_time) {
        auto const number = q.value / number_scale;
        if (!r.pass(q.begin, q.end, Fault::time_no_unit, number)) {
            return false;
        }
        auto const is_slot = rule == TimeRule::slot;
        return finish_time(r, q,
                           std::clamp<std::uint64_t>(number, 1, 1440) * (is_slot ? minute_ms : second_ms),
                           is_slot ? WrittenTime::minutes : WrittenTime::seconds);
    }
    auto const is_clock =
        q.detail == written(WrittenTime::clock) || q.detail == written(WrittenTime::long_clock);
    switch (rule) {
    case TimeRule::above_zero:
        return above_zero(r, q);
    case TimeRule::with_unit:
        return !is_clock || r.pass(q.begin, q.end, Fault::time_unit_wanted, q.value);
    case TimeRule::slot:
        if (is_clock && !r.pass(q.begin, q.end, Fault::time_unit_wanted, q.value)) {
            return false;
        }
        if (q.value < minute_ms) {
            q.value = static_cast<std::uint32_t>(minute_ms);
            return r.pass(q.begin, q.end, Fault::slot_short);
        }
        return true;
    case TimeRule::may_be_zero:
        break;
    }
    return true;
}

} // namespace

bool wrong_zero(Reading& r, Quantity& q) {
    q.value = q.is_time ? static_cast<std::uint32_t>(second_ms) : number_scale;
    return r.pass(q.begin, q.end, q.is_time ? Fault::time_zero : Fault::number_zero);
}

bool wrong_count(Reading& r, Figure const& figure, char const* to) {
    return r.pass(figure.begin, to, figure.value < 1 ? Fault::count_zero : Fault::count_large);
}

bool read_time(char const*& at, Reading& r, Kind kind, TimeRule rule, char const* from) {
    Quantity q;
    return scan_quantity(at, r, q) && obeys(r, q, rule) && append(at, r, kind, q, from);
}

bool read_distance(char const*& at, Reading& r, Kind kind, char const* from) {
    Quantity q;
    return scan_quantity(at, r, q) && (!q.is_time || r.refuse(q.begin, q.end, Fault::distance_time)) &&
           above_zero(r, q) && append(at, r, kind, q, from);
}

bool read_rest(char const*& at, Reading& r, Kind first, char const* from) {
    Quantity low;
    if (!scan_quantity(at, r, low)) {
        return false;
    }
    auto const* dash = skip_blanks(low.end);
    Quantity high;
    if (*dash != '-' || !scan_quantity(dash + 1, r, high)) {
        return obeys(r, low, TimeRule::may_be_zero) && append(at, r, first, low, from);
    }
    if (!high.is_time || (!low.is_time && !(low.is_bare() && low.is_whole()))) {
        return r.refuse(low.begin, high.end, Fault::range_no_unit, high.value / number_scale);
    }
    if (low.is_bare()) {
        if (high.detail >= written(WrittenTime::clock)) {
            return r.refuse(low.begin, high.end, Fault::range_clock);
        }
        low.value /= number_scale;
        auto const unit = high.detail == written(WrittenTime::seconds)   ? second_ms
                          : high.detail == written(WrittenTime::minutes) ? minute_ms
                                                                         : hour_ms;
        if (low.value * unit > high.value) {
            if (!r.pass(low.begin, high.end, Fault::range_backward)) {
                return false;
            }
            low.value = static_cast<std::uint32_t>(high.value / unit);
        }
        low.detail = written(WrittenTime::bare);
    } else if (low.value > high.value) {
        if (!r.pass(low.begin, high.end, Fault::range_backward)) {
            return false;
        }
        std::swap(low.value, high.value);
        std::swap(low.detail, high.detail);
    }
    return append(at, r, first, low, from) && append(at, r, Kind::rest_to, high);
}

bool read_limit_value(char const*& at, Reading& r) {
    if (read_percent(at, r, Kind::limit_percent)) {
        return true;
    }
    Quantity q;
    if (!scan_quantity(at, r, q)) {
        return false;
    }
    auto const* dash = skip_blanks(q.end);
    if (q.is_time || *dash == '-') {
        if (!read_rest(at, r, Kind::limit_time, nullptr)) {
            return false;
        }
        if (r.nodes.back().kind == Kind::rest_to) {
            r.nodes.back().kind = Kind::limit_time_to;
        }
        return true;
    }
    if (q.is_bare() && q.is_whole()) {
        r.push(Kind::limit_number, q.begin, q.end, q.value / number_scale);
        at = q.end;
        return true;
    }
    return append(at, r, Kind::limit_distance, q);
}

bool read_number(char const*& at, Reading& r, Kind kind, std::uint32_t low, std::uint32_t high, Fault fault,
                 char const* from) {
    auto const* begin = skip_blanks(at);
    auto const [value, end] = scan_digits(begin);
    if (end == begin) {
        return false;
    }
    if (is_letter(*end) && !r.pass(begin, end + 1, Fault::clings)) {
        return false;
    }
    if ((value < low || value > high) && !r.pass(begin, end, fault, value)) {
        return false;
    }
    r.push(kind, from != nullptr ? from : begin, end,
           static_cast<std::uint32_t>(std::clamp<std::uint64_t>(value, low, high)));
    at = end;
    return true;
}

bool read_percent(char const*& at, Reading& r, Kind kind, char const* from) {
    auto const* begin = skip_blanks(at);
    auto const [value, end] = scan_digits(begin);
    if (end == begin || *end != '%') {
        return false;
    }
    if (is_letter(end[1]) && !r.pass(begin, end + 2, Fault::clings)) {
        return false;
    }
    if (value > largest_number && !r.pass(begin, end, Fault::number_large, value)) {
        return false;
    }
    r.push(kind, from != nullptr ? from : begin, end + 1,
           static_cast<std::uint32_t>(std::min(value, largest_number)));
    at = end + 1;
    return true;
}

bool read_ordinal(char const*& at, Reading& r, Kind kind) {
    auto const* begin = skip_blanks(at);
    auto const [value, end] = scan_digits(begin);
    if (end == begin || !is_letter(end[0]) || !is_letter(end[1]) || is_letter(end[2]) || is_digit(end[2])) {
        return false;
    }
    constexpr std::array<std::string_view, 4> endings{"st", "nd", "rd", "th"};
    char const letters[] = {lengthwise::detail::fold(end[0]), lengthwise::detail::fold(end[1])};
    if (std::ranges::find(endings, std::string_view{letters, 2}) == endings.end()) {
        return false;
    }
    if ((value < 1 || value > limits::repeat) && !r.pass(begin, end + 2, Fault::selector_number, value)) {
        return false;
    }
    r.push(kind, begin, end + 2,
           static_cast<std::uint32_t>(std::clamp<std::uint64_t>(value, 1, limits::repeat)));
    at = end + 2;
    return true;
}

bool read_descend_range(char const*& at, Reading& r) {
    auto const* begin = skip_blanks(at);
    auto const [low, low_end] = scan_digits(begin);
    auto const* dash = skip_blanks(low_end);
    if (low_end == begin || *dash != '-') {
        return false;
    }
    auto const* high_begin = skip_blanks(dash + 1);
    auto const [high, end] = scan_digits(high_begin);
    if (end == high_begin) {
        return false;
    }
    if (is_letter(*end)) {
        return r.refuse(high_begin, r.word(end).end, Fault::clings);
    }
    if (low != 1 && !r.pass(begin, end, Fault::descend_from, low)) {
        return false;
    }
    if ((high < 2 || high > limits::repeat) && !r.pass(begin, end, Fault::descend_to, high)) {
        return false;
    }
    auto& node = r.nodes.back();
    node.value = 1 | static_cast<std::uint32_t>(std::clamp<std::uint64_t>(high, 2, limits::repeat)) << 16;
    node.length = static_cast<std::uint16_t>(r.offset(end) - node.begin);
    at = end;
    return true;
}

bool read_lane_label(char const*& at, Reading& r) {
    auto const in_range = [&](char const* from, Digits lane) {
        return (lane.value >= 1 && lane.value <= limits::lanes) ||
               r.pass(from, lane.end, Fault::lane_range, lane.value);
    };
    auto const* begin = skip_blanks(at);
    auto first = scan_digits(begin);
    if (first.end == begin || !in_range(begin, first)) {
        return false;
    }
    auto last = first;
    auto const* dash = skip_blanks(first.end);
    if (*dash == '-') {
        auto const* from = skip_blanks(dash + 1);
        last = scan_digits(from);
        if (last.end == from || !in_range(from, last)) {
            return false;
        }
        if (last.value < first.value) {
            std::swap(first.value, last.value);
            if (!r.pass(begin, last.end, Fault::lane_backward)) {
                return false;
            }
        }
    }
    auto const* colon = last.end;
    if (!read_colon(colon)) {
        r.miss(colon, Thing::colon);
        return false;
    }
    auto const lane = [](std::uint64_t value) {
        return static_cast<std::uint32_t>(std::clamp<std::uint64_t>(value, 1, limits::lanes));
    };
    if (has_label(r, Kind::lane_label) && !r.pass(r.opened.begin, colon, Fault::label_twice)) {
        return false;
    }
    r.push(Kind::lane_label, r.opened.begin, colon, lane(first.value) | lane(last.value) << 16);
    at = colon;
    return true;
}

bool read_if_time_label(char const*& at, Reading& r) {
    auto const* colon = at;
    if (!read_colon(colon)) {
        return false;
    }
    if (has_label(r, Kind::if_time) && !r.pass(r.opened.begin, colon, Fault::label_twice)) {
        return false;
    }
    r.push(Kind::if_time, r.opened.begin, colon);
    at = colon;
    return true;
}

bool read_rule_name(char const*& at, Reading& r) {
    auto const& name = r.word(at);
    if (name.begin == name.end || clings_to_word(*name.end)) {
        return false;
    }
    at = name.end;
    r.push(Kind::rule_name, name.begin, name.end);
    return true;
}

} // namespace lengthwise::grammar
