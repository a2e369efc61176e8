#include "codes.hpp"
#include "complaint_value.hpp"
#include "scan.hpp"

#include <algorithm>
#include <array>
#include <fmt/format.h>

namespace lengthwise::grammar {

namespace {

bool is_whole_number(std::string_view text) {
    return !text.empty() && std::ranges::all_of(text, is_digit);
}

std::uint64_t number_of(std::string_view text) {
    return scan_digits(text.data()).value;
}

/// The unit behind a figure; Word::none where there is none.
Word unit_of(std::string_view text) {
    auto const letters = text.find_first_not_of("0123456789.: \t");
    return letters == std::string_view::npos ? Word::none : find_word(text.substr(letters));
}

/// What was most likely meant by a number that lacks its unit.
std::string with_unit(Value const& v) {
    auto const number = v.figure;
    auto const keyword = spelling(v.keyword());
    switch (v.keyword()) {
    case Word::for_:
        return fmt::format("for {}{}", number, v.form == Form::session ? "min" : "s");
    case Word::pause:
        return fmt::format("pause {}{}", number, number < 10 ? "min" : "s");
    case Word::on:
    case Word::off:
        return fmt::format("on {}", as_clock(number));
    case Word::hold:
        return fmt::format("hold {}", as_clock(number));
    case Word::at:
        return number >= 30 && number <= 100 ? fmt::format("at {}%", number)
                                             : fmt::format("at {} per 100", as_clock(number));
    case Word::threshold:
    case Word::about:
        return fmt::format("{} {}", keyword, number < 10 ? fmt::format("{}:00", number) : as_clock(number));
    case Word::rest:
    case Word::plus:
    case Word::minus:
        return fmt::format("{} {}s", keyword, number);
    default:
        return v.before.is(',') ? as_clock(number) : fmt::format("{}s", number);
    }
}

/// A clock with 60 or more behind a colon, carried over: 1:60 is 2:00.
std::string carried(std::string_view text) {
    std::uint64_t seconds = 0;
    for (auto const* at = text.data(); at < text.data() + text.size(); ++at) {
        auto const part = scan_digits(at);
        seconds = seconds * 60 + std::min<std::uint64_t>(part.value, 100'000);
        at = part.end;
    }
    return std::ranges::count(text, ':') == 2
               ? fmt::format("{}:{:02}:{:02}", seconds / 3600, seconds / 60 % 60, seconds % 60)
               : fmt::format("{}:{:02}", seconds / 60, seconds % 60);
}

/// `1:30` behind `for`: a slot is meant in hours and minutes, a break in minutes
/// and seconds.
std::string clock_with_unit(Value const& v) {
    auto const seconds = v.figure / 1000;
    if (std::ranges::count(v.text, ':') == 2) {
        return fmt::format("for {}min", seconds / 60);
    }
    if (v.form == Form::session) {
        return fmt::format("for {}min", seconds);
    }
    return seconds % 60 == 0 ? fmt::format("for {}min", seconds / 60) : fmt::format("for {}s", seconds);
}

/// The seconds of `1.5min` as a clock, if that is what stands there.
std::string decimal_time(std::string_view text) {
    auto const point = text.find('.');
    auto const whole = number_of(text);
    auto const tenths = scan_digits(text.data() + point + 1);
    auto const unit = unit_of(text);
    auto const places = tenths.end - (text.data() + point + 1);
    if (places != 1 || whole > 1000) {
        return "1:30 or 90s";
    }
    switch (unit) {
    case Word::seconds:
        return fmt::format("0:{:02}.{}", whole, tenths.value);
    case Word::minutes:
        return fmt::format("{}:{:02}", whole, tenths.value * 6);
    default:
        return fmt::format("{}min", whole * 60 + tenths.value * 6);
    }
}

void describe_range(Complaint& c, Value const& v) {
    auto const trimmed = [](std::string_view text) {
        auto const first = text.find_first_not_of(" \t");
        auto const last = text.find_last_not_of(" \t");
        return first == std::string_view::npos ? std::string_view{} : text.substr(first, last - first + 1);
    };
    auto const dash = v.text.find('-');
    auto const low = trimmed(v.text.substr(0, dash));
    auto const high = trimmed(v.text.substr(dash + 1));
    if (v.fault == Fault::range_clock) {
        c.message = fmt::format("{}-{} is half a number, half a clock", low, high);
        c.hint = fmt::format("try: {}-{}", as_clock(number_of(low)), high);
    } else if (v.fault == Fault::range_no_unit) {
        c.message = is_whole_number(high) ? fmt::format("{}-{} has no unit at its high end", low, high)
                                          : fmt::format("{}-{} is no range of times", low, high);
        c.hint = fmt::format("try: {}-{}s", number_of(low), number_of(high));
    } else if (is_whole_number(low)) {
        auto const digits = static_cast<std::size_t>(scan_digits(high.data()).end - high.data());
        c.message = fmt::format("{}-{} runs backward", low, high);
        c.hint = fmt::format("try: {}-{}{}", high.substr(0, digits), low, high.substr(digits));
    } else {
        c.message = fmt::format("{}-{} runs backward", low, high);
        c.hint = fmt::format("try: {}-{}", high, low);
    }
}

void describe_date(Complaint& c, Value const& v) {
    constexpr std::array<std::string_view, 13> months{
        "",     "January", "February",  "March",   "April",    "May",     "June",
        "July", "August",  "September", "October", "November", "December"};
    c.code = code::date;
    c.hint = "dates are year-month-day, all in digits: 2027-06-13";
    if (v.fault == Fault::date_form) {
        c.message = fmt::format("{} is not written as dates are", v.text);
    } else if (v.fault == Fault::date_year) {
        c.message = "there is no year 0000";
    } else if (v.fault == Fault::date_month) {
        c.message = fmt::format("there is no month {}", v.figure);
    } else {
        auto const year = scan_digits(v.text.data());
        auto const month = scan_digits(year.end + 1).value;
        c.message = v.text.ends_with("-00") ? "there is no day 00"
                    : month == 2            ? fmt::format("February {} has {} days", year.value, v.figure)
                                            : fmt::format("{} has {} days", months.at(month), v.figure);
        c.hint.clear();
    }
}

} // namespace

std::string as_clock(std::uint64_t number) {
    auto const by_eye = number >= 100 && number % 100 < 60;
    return by_eye ? fmt::format("{}:{:02}", number / 100, number % 100)
                  : fmt::format("{}:{:02}", number / 60, number % 60);
}

void describe_time(Complaint& c, Value const& v) {
    c.code = code::time;
    switch (v.fault) {
    case Fault::time_no_unit:
        c.message = fmt::format("{} has no unit", v.text);
        c.hint = fmt::format("try: {}", with_unit(v));
        break;
    case Fault::time_zero:
        c.message = fmt::format("{} is no time at all", v.text);
        break;
    case Fault::time_seconds:
        c.message = fmt::format("{} has {} behind a colon, the most is 59", v.text, v.figure);
        c.hint = fmt::format("try: {}", carried(v.text));
        break;
    case Fault::time_digits:
        if (v.text.front() == ':' && v.text.size() == std::string_view{":mm:ss"}.size()) {
            c.message = fmt::format("{} has no hours before its first colon", v.text);
            c.hint = fmt::format("try: 0{}", v.text);
        } else {
            c.message = fmt::format("{}: two digits stand behind a colon", v.text);
            c.hint = "times are 1:30, 0:05 or 1:02:03";
        }
        break;
    case Fault::time_decimal:
        if (unit_of(v.text) != Word::none) {
            c.message = fmt::format("{} is a time with a point", v.text);
            c.hint = fmt::format("try: {}", decimal_time(v.text));
        } else {
            c.message = fmt::format("{} is no time", v.text);
            c.hint = "a point stands behind m:ss, with up to three digits: 0:52.5";
        }
        break;
    case Fault::time_distance: {
        auto const number = number_of(v.text);
        c.message = fmt::format("{} is a distance, here stands a time", v.text);
        c.hint = unit_of(v.text) == Word::metres && number <= 60
                     ? fmt::format("m is metres, try: {}min", number)
                     : "times are 15s, 2min or 1:30";
        break;
    }
    case Fault::time_unit_wanted:
        c.message = fmt::format("{} is a clock; \"for\" takes a number and its unit", v.text);
        c.hint = fmt::format("try: {}", clock_with_unit(v));
        break;
    case Fault::slot_short:
        c.message = fmt::format("a slot of {}, the least is 1min", v.text);
        c.hint = "try: for 45min";
        break;
    case Fault::clock_range:
        c.message = fmt::format("{} is no time of day", v.text);
        c.hint = "the clock runs from 00:00 to 23:59";
        break;
    case Fault::range_backward:
    case Fault::range_clock:
    case Fault::range_no_unit:
        describe_range(c, v);
        break;
    default:
        describe_date(c, v);
        break;
    }
}

} // namespace lengthwise::grammar
