#include "recogniser/figures.hpp"

#include "recogniser/words.hpp"

#include <charconv>
#include <optional>

namespace lengthwise::recogniser {

namespace {

constexpr std::uint64_t day_ms = 24ULL * 3600 * 1000;

/// What digits say, or more than anything may be.
std::uint64_t read(std::string_view digits) {
    std::uint64_t result = 0;
    auto const end = digits.data() + digits.size();
    auto const [stop, fault] = std::from_chars(digits.data(), end, result);
    return fault == std::errc{} && stop == end ? result : UINT64_MAX;
}

/// Proper, and of a denominator that pools are measured in.
bool fraction_fits(std::string_view text) {
    auto const slash = text.find('/');
    auto const above = read(text.substr(0, slash));
    auto const below = read(text.substr(slash + 1));
    bool const known =
        below == 2 || below == 3 || below == 4 || below == 6 || below == 8 || below == 12 || below == 24;
    return known && above > 0 && above < below;
}

/// Two digits below sixty.
std::optional<std::uint64_t> sixty(std::string_view digits) {
    bool const fits = digits.size() == 2 && digits[0] < '6';
    return fits ? std::optional{read(digits)} : std::nullopt;
}

std::optional<std::uint64_t> thousandths(std::string_view digits) {
    std::string padded{digits};
    padded.resize(3, '0');
    return digits.size() <= 3 ? std::optional{read(padded)} : std::nullopt;
}

/// Of h:mm:ss, in milliseconds.
std::optional<std::uint64_t> long_clock(std::string_view text, std::size_t first, std::size_t second) {
    auto const hours = read(text.substr(0, first));
    auto const minutes = sixty(text.substr(first + 1, second - first - 1));
    auto const seconds = sixty(text.substr(second + 1));
    if (first == 0 || hours > 24 || !minutes || !seconds) {
        return std::nullopt;
    }
    return ((hours * 60 + *minutes) * 60 + *seconds) * 1000;
}

/// Of m:ss, m:ss.f to .fff, :ss and h:mm:ss, in milliseconds.
std::optional<std::uint64_t> clock(std::string_view text) {
    auto const first = text.find(':');
    auto const second = text.find(':', first + 1);
    if (second != std::string_view::npos) {
        return long_clock(text, first, second);
    }
    auto const point = text.find('.');
    auto const minutes = first == 0 ? 0 : read(text.substr(0, first));
    auto const seconds = sixty(text.substr(first + 1, point - first - 1));
    auto const rest = point == std::string_view::npos ? 0 : thousandths(text.substr(point + 1));
    if (minutes > 24 * 60 || !seconds || !rest) {
        return std::nullopt;
    }
    return (minutes * 60 + *seconds) * 1000 + *rest;
}

/// A figure in a unit of time, of at most a day, in milliseconds.
std::optional<std::uint64_t> in_unit(std::string_view figure, std::string_view unit) {
    auto const count = read(figure);
    if (count > greatest_number || !unit_of_time(unit)) {
        return std::nullopt;
    }
    auto const result = count * static_cast<std::uint64_t>(seconds_of(unit)) * 1000;
    return result <= day_ms ? std::optional{result} : std::nullopt;
}

std::optional<std::uint64_t> take_duration(Stream& in) {
    bool const is_clock = in.is(Sort::clock);
    if (!is_clock && !in.is(Sort::number)) {
        return std::nullopt;
    }
    auto const result = is_clock ? clock(in.peek().text) : in_unit(in.peek().text, in.word(1));
    bool const fits = result && *result <= day_ms;
    in.skip(!fits ? 0 : is_clock ? 1 : 2);
    return fits ? result : std::nullopt;
}

} // namespace

bool number(Stream& in, std::uint64_t low, std::uint64_t high) {
    bool const fits = in.is(Sort::number) && read(in.peek().text) >= low && read(in.peek().text) <= high;
    in.skip(fits ? 1 : 0);
    return fits;
}

bool percent(Stream& in) {
    auto const& text = in.peek().text;
    bool const fits =
        in.is(Sort::percent) && read(std::string_view{text}.substr(0, text.size() - 1)) <= greatest_number;
    in.skip(fits ? 1 : 0);
    return fits;
}

bool ordinal(Stream& in) {
    auto const& text = in.peek().text;
    bool const is_one = in.is(Sort::ordinal);
    auto const value = is_one ? read(std::string_view{text}.substr(0, text.size() - 2)) : 0;
    bool const fits = value >= 1 && value <= most_reps;
    in.skip(fits ? 1 : 0);
    return fits;
}

bool range(Stream& in, std::uint64_t low, std::uint64_t high) {
    if (!in.is(Sort::number)) {
        return false;
    }
    auto const from = read(in.peek().text);
    if (!number(in, low, high)) {
        return false;
    }
    return !in.take_sign('-') || number(in, from, high);
}

bool distance(Stream& in, Least least) {
    std::string const text = in.peek().text;
    bool const point = in.is(Sort::decimal);
    if (!point && !in.is(Sort::number)) {
        return false;
    }
    auto const dot = text.find('.');
    bool const nothing = text.find_first_not_of("0.") == std::string::npos;
    if (read(std::string_view{text}.substr(0, dot)) > greatest_number ||
        (point && text.size() - dot - 1 > 2)) {
        return false;
    }
    bool const parts = in.is(Sort::fraction, 1);
    if ((parts && (point || !fraction_fits(in.peek(1).text))) ||
        (nothing && !parts && least == Least::some)) {
        return false;
    }
    in.skip(parts ? 2 : 1);
    auto const unit = in.word();
    bool const small = unit_of_distance(unit) && !metres(unit) && unit[0] != 'y';
    if (parts && small) {
        return false;
    }
    in.skip(metres(unit) || (!point && unit_of_distance(unit)) ? 1 : 0);
    return true;
}

bool duration(Stream& in, Least least) {
    auto const found = take_duration(in);
    return found && (*found > 0 || least == Least::none);
}

bool figure_and_unit(Stream& in, std::uint64_t least_seconds) {
    if (!in.is(Sort::number)) {
        return false;
    }
    auto const found = take_duration(in);
    return found && *found >= least_seconds * 1000;
}

bool rest(Stream& in) {
    std::optional<std::uint64_t> low;
    if (in.is(Sort::number) && in.is_sign('-', 1)) {
        bool const figure = in.is(Sort::number, 2);
        low = figure ? in_unit(in.peek().text, in.word(3)) : std::nullopt;
        in.skip(2);
        auto const high = figure ? take_duration(in) : std::nullopt;
        return low && high && *low <= *high;
    }
    low = take_duration(in);
    if (!low || !in.take_sign('-')) {
        return low.has_value();
    }
    auto const high = take_duration(in);
    return high && *low <= *high;
}

bool amount(Stream& in) {
    bool const time = in.is(Sort::clock) || (in.is(Sort::number) && unit_of_time(in.word(1)));
    return time ? duration(in) : distance(in);
}

bool starts_amount(Stream const& in, std::size_t ahead) {
    return in.is(Sort::number, ahead) || in.is(Sort::decimal, ahead) || in.is(Sort::clock, ahead);
}

} // namespace lengthwise::recogniser
