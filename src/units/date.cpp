#include "units/date.hpp"

namespace lengthwise {
namespace {

constexpr bool is_digit(char c) {
    return c >= '0' && c <= '9';
}

/// The number that `text` spells in digits, nothing else; it is at most four long.
constexpr std::optional<unsigned> digits(std::string_view text) {
    unsigned value = 0;
    for (char const c : text) {
        if (!is_digit(c)) {
            return std::nullopt;
        }
        value = value * 10 + static_cast<unsigned>(c - '0');
    }
    return value;
}

} // namespace

std::optional<Date> parse_date(std::string_view iso) {
    if (iso.size() != 10 || iso[4] != '-' || iso[7] != '-') {
        return std::nullopt;
    }
    auto const year = digits(iso.substr(0, 4));
    auto const month = digits(iso.substr(5, 2));
    auto const day = digits(iso.substr(8, 2));
    if (!year || !month || !day || *year == 0) {
        return std::nullopt;
    }
    auto const date =
        std::chrono::year{static_cast<int>(*year)} / std::chrono::month{*month} / std::chrono::day{*day};
    return date.ok() ? std::optional<Date>{date} : std::nullopt;
}

bool within_calendar(Date date) {
    using namespace std::chrono;
    return date >= sys_days{year{1} / January / 1} && date <= sys_days{year{9999} / December / 31};
}

} // namespace lengthwise
