#include "quantity.hpp"

#include <algorithm>
#include <array>

namespace lengthwise::grammar {

namespace {

/// Tenths to thousandths behind the seconds of a clock.
std::uint32_t scan_fraction_of_second(char const*& at) {
    if (*at != '.' || !is_digit(at[1])) {
        return 0;
    }
    std::uint32_t value = 0;
    std::uint32_t scale = 100;
    for (++at; is_digit(*at) && scale > 0; ++at, scale /= 10) {
        value += static_cast<std::uint32_t>(*at - '0') * scale;
    }
    return value;
}

/// The end of a run of digits, colons and points.
char const* end_of_clock(char const* at) {
    while (is_digit(*at) || ((*at == ':' || *at == '.') && is_digit(at[1]))) {
        ++at;
    }
    return at;
}

/// `1:30`, `:50`, `1:02:03`, `0:52.5`; `colon` is the first one.
bool scan_clock(Reading& r, Quantity& q, std::uint64_t first, char const* colon) {
    auto const* const all = end_of_clock(q.begin);
    std::array<std::uint64_t, 3> parts{first, 0, 0};
    std::size_t count = 1;
    auto const* at = colon;
    for (; *at == ':' && is_digit(at[1]) && count < parts.size(); ++count) {
        auto const [value, end] = scan_digits(at + 1);
        if (!two_digits(at + 1) && !r.pass(q.begin, all, Fault::time_digits)) {
            return false;
        }
        if (value >= 60 && !r.pass(q.begin, all, Fault::time_seconds, value)) {
            return false;
        }
        parts.at(count) = std::min<std::uint64_t>(value, 59);
        at = end;
    }
    auto const is_long = count == 3;
    if (is_long && colon == q.begin && !r.pass(q.begin, all, Fault::time_digits)) { // :30:30
        return false;
    }
    std::uint64_t ms = is_long ? 0 : scan_fraction_of_second(at);
    q.end = at;
    if (at != all) { // a third colon, a fourth decimal, a point behind h:mm:ss
        return r.refuse(q.begin, all, Fault::time_decimal);
    }
    if (is_letter(*at)) {
        return refuse_clinging(r, q, r.word(at));
    }
    auto const high = std::min<std::uint64_t>(parts[0], 10'000);
    ms += is_long ? high * hour_ms + parts[1] * minute_ms + parts[2] * second_ms
                  : high * minute_ms + parts[1] * second_ms;
    return finish_time(r, q, ms, is_long ? WrittenTime::long_clock : WrittenTime::clock);
}

/// `33 1/3`: `numerator` stands behind a blank, a slash and a digit touch its end.
bool scan_fraction(Reading& r, Quantity& q, char const* numerator, Digits above) {
    auto const [denominator, end] = scan_digits(above.end + 1);
    constexpr std::array<std::uint64_t, 7> known{2, 3, 4, 6, 8, 12, 24};
    auto const is_known = std::ranges::find(known, denominator) != known.end();
    if (!is_known && !r.pass(numerator, end, Fault::fraction_denominator, denominator)) {
        return false;
    }
    if ((above.value == 0 || above.value >= denominator) &&
        !r.pass(numerator, end, Fault::fraction_improper)) {
        return false;
    }
    if (is_known && above.value < denominator) {
        q.value += static_cast<std::uint32_t>(above.value * number_scale / denominator);
    }
    q.end = end;
    auto const whole = q.value;
    if (!scan_unit(r, q, 0)) {
        return false;
    }
    if ((q.is_time || q.detail == written(WrittenUnit::lengths)) &&
        !r.pass(numerator, q.end, Fault::fraction_unit)) {
        return false;
    }
    q.value = q.is_time ? 0 : whole;
    return true;
}

/// `12.5`, `33.33m`; `point` stands behind the whole part.
bool scan_decimal(Reading& r, Quantity& q, char const* point) {
    auto const [decimals, end] = scan_digits(point + 1);
    auto const places = end - (point + 1);
    q.end = end;
    if (places > 2 && !r.pass(q.begin, end, Fault::decimal_places)) {
        return false;
    }
    auto const hundredths = places == 1 ? decimals * 10 : std::min<std::uint64_t>(decimals, 99);
    auto const value = q.value + static_cast<std::uint32_t>(hundredths * number_scale / 100);
    if (*end == '.' && is_digit(end[1])) {
        return r.refuse(q.begin, end + 2, Fault::number_decimal);
    }
    if (!scan_unit(r, q, 0)) {
        return false;
    }
    if (q.is_time) {
        return r.refuse(q.begin, q.end, Fault::time_decimal);
    }
    if ((q.detail == written(WrittenUnit::yards) || q.detail == written(WrittenUnit::lengths)) &&
        !r.pass(q.begin, q.end, Fault::decimal_unit)) {
        return false;
    }
    q.value = value;
    q.detail |= decimal_flag;
    return true;
}

} // namespace

bool scan_rare_quantity(Reading& r, Quantity& q, Figure const& figure) {
    if (*figure.end == ':' && is_digit(figure.end[1])) {
        return scan_clock(r, q, figure.value, figure.end);
    }
    if (figure.begin == figure.end) {
        return false;
    }
    if (figure.value > largest_number && !r.pass(figure.begin, figure.end, Fault::number_large)) {
        return false;
    }
    auto const value = figure.value > largest_number ? 1 : figure.value;
    q.value = static_cast<std::uint32_t>(value) * number_scale;
    if (*figure.end == '.' && is_digit(figure.end[1])) {
        return scan_decimal(r, q, figure.end);
    }
    auto const& next = r.word(figure.end);
    if (next.begin != figure.end && is_digit(*next.begin)) {
        auto const above = scan_digits(next.begin);
        if (*above.end == '/' && is_digit(above.end[1])) {
            return scan_fraction(r, q, next.begin, above);
        }
    }
    return scan_unit(r, q, value);
}

bool refuse_clinging(Reading& r, Quantity const& q, Ahead const& letters) {
    return r.refuse(q.begin, letters.end, Fault::clings);
}

bool long_time(Reading& r, Quantity const& q, std::uint64_t ms) {
    return r.pass(q.begin, q.end, Fault::time_long, ms);
}

} // namespace lengthwise::grammar
