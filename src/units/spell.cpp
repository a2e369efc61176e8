#include "units/spell.hpp"

#include <array>
#include <string_view>

namespace lengthwise::spell {
namespace {

/// A signed quantity as wholes and a rest below `per`.
struct Parts {
    bool negative;
    std::uint64_t whole;
    std::uint64_t rest;
};

Parts split(std::int64_t n, std::int64_t per) {
    auto const size = n < 0 ? 0 - static_cast<std::uint64_t>(n) : static_cast<std::uint64_t>(n);
    auto const unit = static_cast<std::uint64_t>(per);
    return {n < 0, size / unit, size % unit};
}

std::string padded(std::uint64_t n, std::size_t width) {
    auto digits = std::to_string(n);
    return digits.size() < width ? std::string(width - digits.size(), '0') + digits : digits;
}

/// A rest below `per` as ".5", ".0333" or nothing: rounded half up to `places`,
/// without closing zeros. What rounds up to one is carried into `whole`.
std::string decimals(std::uint64_t rest, std::int64_t per, std::size_t places, std::uint64_t& whole) {
    std::uint64_t scale = 1;
    for (std::size_t i = 0; i < places; ++i) {
        scale *= 10;
    }
    auto const unit = static_cast<std::uint64_t>(per);
    auto const rounded = (2 * rest * scale + unit) / (2 * unit);
    whole += rounded / scale;
    auto digits = padded(rounded % scale, places);
    digits.erase(digits.find_last_not_of('0') + 1);
    return digits.empty() ? digits : "." + digits;
}

std::string decimal(std::int64_t n, std::int64_t per, std::size_t places) {
    auto parts = split(n, per);
    auto const tail = decimals(parts.rest, per, places, parts.whole);
    bool const nought = parts.whole == 0 && tail.empty();
    return (parts.negative && !nought ? "-" : "") + std::to_string(parts.whole) + tail;
}

struct Fraction {
    std::string_view sign;
    std::string_view ascii;
};
/// By sixths. A half is left out: 0.5 is as short and cannot be overlooked.
constexpr std::array<Fraction, 6> sixths{
    Fraction{}, {"⅙", "1/6"}, {"⅓", "1/3"}, {}, {"⅔", "2/3"}, {"⅚", "5/6"},
};

/// The sign of `rest`/`per` if its decimals would not end; else an empty one.
Fraction fraction(std::uint64_t rest, std::int64_t per) {
    auto const unit = static_cast<std::uint64_t>(per);
    return rest * 6 % unit == 0 ? sixths[rest * 6 / unit] : Fraction{};
}

/// A rest for people: all of it where two decimals hold it, as the notation writes them; else one decimal.
/// Four where one would show a whole number, as 900.04 is not 900.
std::string short_decimals(std::uint64_t rest, std::int64_t per, std::uint64_t& whole) {
    auto const unit = static_cast<std::uint64_t>(per);
    auto const tenths = (20 * rest + unit) / (2 * unit);
    bool const hidden = tenths == 0 || tenths == 10;
    return decimals(rest, per, rest * 100 % unit == 0 ? 2 : hidden ? 4 : 1, whole);
}

/// A duration as digits and the unit behind them; a clock ("1:30") has no unit.
struct Written {
    std::string digits;
    std::string_view unit;
};

constexpr std::int64_t second = 1000;
constexpr std::int64_t minute = 60 * second;
constexpr std::int64_t hour = 60 * minute;

Written largest_unit(std::int64_t ms) {
    if (ms == 0 || ms % minute != 0) {
        return {decimal(ms, second, 3), "s"};
    }
    return ms % hour == 0 ? Written{std::to_string(ms / hour), "h"}
                          : Written{std::to_string(ms / minute), "min"};
}

/// The notation has no parts of a second and no compounds but on the clock.
Written shortest(Duration duration) {
    auto const ms = duration.ms();
    bool const plain = ms % minute == 0 || (ms % second == 0 && ms > -minute && ms < minute);
    return plain ? largest_unit(ms) : Written{clock(duration), {}};
}

std::string joined(Written written, std::string_view gap) {
    return written.unit.empty() ? written.digits : written.digits.append(gap).append(written.unit);
}

std::string joined(Range<Duration> range, bool ascii, std::string_view gap) {
    auto low = shortest(range.low);
    auto const high = shortest(range.high);
    if (range.single()) {
        return joined(high, gap);
    }
    if (low.unit == high.unit) {
        low.unit = {};
    }
    return joined(low, gap) + (ascii ? "-" : "–") + joined(high, gap);
}

constexpr std::array<std::string_view, 7> weekdays{"Sun", "Mon", "Tue", "Wed", "Thu", "Fri", "Sat"};
constexpr std::array<std::string_view, 12> months{
    "January", "February", "March",     "April",   "May",      "June",
    "July",    "August",   "September", "October", "November", "December",
};

std::string_view weekday(Date date) {
    return weekdays[std::chrono::weekday{date}.c_encoding()];
}

std::string_view month(std::chrono::year_month_day date) {
    return months[static_cast<unsigned>(date.month()) - 1];
}

std::string number_of_day(std::chrono::year_month_day date) {
    return std::to_string(static_cast<unsigned>(date.day()));
}

int number_of_year(std::chrono::year_month_day date) {
    return static_cast<int>(date.year());
}

} // namespace

Figure figure(Distance distance, Unit unit, bool ascii) {
    auto const per = one(unit).units();
    auto parts = split(distance.units(), per);
    auto const sign = fraction(parts.rest, per);
    Figure result;
    if (sign.sign.empty()) {
        result.hang = short_decimals(parts.rest, per, parts.whole);
        result.whole = std::to_string(parts.whole);
    } else {
        result.hang = ascii ? " " + std::string{sign.ascii} : std::string{sign.sign};
        result.whole = parts.whole == 0 ? "" : std::to_string(parts.whole);
    }
    if (parts.negative && !(result.whole == "0" && result.hang.empty())) {
        result.whole.insert(0, "-");
    }
    return result;
}

std::string number(Distance distance, Unit unit, bool ascii) {
    auto const [whole, hang] = figure(distance, unit, ascii);
    bool const bare = hang.starts_with(' ') && (whole.empty() || whole == "-");
    return whole + (bare ? hang.substr(1) : hang);
}

std::string_view symbol(Unit unit) {
    return unit == Unit::yard ? "yd" : "m";
}

std::string distance(Distance distance, Unit unit, bool ascii) {
    return number(distance, unit, ascii).append(" ").append(symbol(unit));
}

std::string json_metres(Distance distance) {
    return decimal(distance.units(), Distance::per_metre, 4);
}

std::string json_seconds(Duration duration) {
    return decimal(duration.ms(), second, 3);
}

std::string clock(Duration duration) {
    auto [negative, minutes, rest] = split(duration.ms(), minute);
    auto seconds = rest / static_cast<std::uint64_t>(second);
    auto const tail = decimals(rest % static_cast<std::uint64_t>(second), second, 3, seconds);
    auto const before =
        minutes < 60 ? std::to_string(minutes) : std::to_string(minutes / 60) + ":" + padded(minutes % 60, 2);
    return (negative ? "-" : "") + before + ":" + padded(seconds, 2) + tail;
}

std::string duration(Duration duration) {
    return joined(shortest(duration), "");
}

std::string with_unit(Duration duration) {
    return joined(largest_unit(duration.ms()), "");
}

std::string range(Range<Duration> range, bool ascii) {
    return joined(range, ascii, "");
}

std::string spaced(Duration duration) {
    return joined(shortest(duration), " ");
}

std::string spaced(Range<Duration> range, bool ascii) {
    return joined(range, ascii, " ");
}

std::string time_of_day(TimeOfDay time) {
    return padded(time.minutes / 60U, 2) + ":" + padded(time.minutes % 60U, 2);
}

std::string iso(Date date) {
    std::chrono::year_month_day const ymd{date};
    auto const year = padded(static_cast<std::uint64_t>(number_of_year(ymd)), 4);
    return year + "-" + padded(static_cast<unsigned>(ymd.month()), 2) + "-" +
           padded(static_cast<unsigned>(ymd.day()), 2);
}

std::string day(Date date) {
    std::chrono::year_month_day const ymd{date};
    return std::string{weekday(date)} + " " + number_of_day(ymd) + " " + std::string{month(ymd)} + " " +
           std::to_string(number_of_year(ymd));
}

std::string short_day(Date date) {
    return std::string{weekday(date)} + " " + day_of_month(date);
}

std::string day_of_month(Date date) {
    std::chrono::year_month_day const ymd{date};
    return number_of_day(ymd) + " " + std::string{month(ymd).substr(0, 3)};
}

} // namespace lengthwise::spell
