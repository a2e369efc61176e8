#include "tokens.hpp"

#include <algorithm>
#include <array>

namespace lengthwise::grammar {

namespace {

std::uint32_t value_of_two(char const* at) {
    return static_cast<std::uint32_t>((at[0] - '0') * 10 + (at[1] - '0'));
}

} // namespace

bool read_date(char const*& at, Reading& r, Kind kind, char const* from) {
    auto const* begin = skip_blanks(at);
    auto const year = scan_digits(begin);
    if (year.end == begin || (*year.end != '-' && *year.end != '.' && *year.end != '/')) {
        return false;
    }
    auto const month = scan_digits(year.end + 1);
    auto const well_formed = year.end - begin == 4 && *year.end == '-' && two_digits(year.end + 1) &&
                             *month.end == '-' && two_digits(month.end + 1) && !is_letter(month.end[3]);
    if (!well_formed) {
        auto const* end = month.end;
        while (is_digit(*end) || is_letter(*end) || *end == '-' || *end == '.' || *end == '/') {
            ++end;
        }
        return r.refuse(begin, end, Fault::date_form);
    }
    auto const* end = month.end + 3;
    if (year.value == 0 || month.value < 1 || month.value > 12) {
        return r.refuse(begin, end, year.value == 0 ? Fault::date_year : Fault::date_month, month.value);
    }
    auto const day_of_month = value_of_two(month.end + 1);
    auto const leap = year.value % 4 == 0 && (year.value % 100 != 0 || year.value % 400 == 0);
    constexpr std::array<std::uint32_t, 13> days{0, 31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31};
    auto const longest = days.at(month.value) + (month.value == 2 && leap ? 1U : 0U);
    if ((day_of_month < 1 || day_of_month > longest) && !r.pass(begin, end, Fault::date_day, longest)) {
        return false;
    }
    r.push(kind, from != nullptr ? from : begin, end,
           static_cast<std::uint32_t>(year.value * 10000 + month.value * 100) +
               std::clamp<std::uint32_t>(day_of_month, 1, longest));
    at = end;
    return true;
}

bool read_time_of_day(char const*& at, Reading& r) {
    auto const* begin = skip_blanks(at);
    auto const hours = scan_digits(begin);
    if (hours.end == begin || *hours.end != ':') {
        return false;
    }
    auto const minutes = scan_digits(hours.end + 1);
    auto const well_formed =
        hours.end - begin <= 2 && hours.value < 24 && two_digits(hours.end + 1) && minutes.value < 60;
    if (!well_formed || is_letter(*minutes.end) || *minutes.end == ':') {
        if (!r.pass(begin, minutes.end, Fault::clock_range)) {
            return false;
        }
    }
    r.push(Kind::time_of_day, begin, minutes.end,
           well_formed ? static_cast<std::uint32_t>(hours.value * 60 + minutes.value) : 0);
    at = minutes.end;
    return true;
}

} // namespace lengthwise::grammar
