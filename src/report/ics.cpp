#include "report/ics.hpp"

#include "report/width.hpp"
#include "units/spell.hpp"

#include <fmt/core.h>

namespace lengthwise::report {
namespace {

constexpr std::size_t octets = 75; // RFC 5545, section 3.1, line end left out

/// RFC 5545, section 3.3.11.
std::string escaped(std::string_view text) {
    std::string safe;
    for (char const c : text) {
        if (c == '\n') {
            safe += "\\n";
            continue;
        }
        if (c == '\\' || c == ';' || c == ',') {
            safe += '\\';
        }
        safe += c;
    }
    return safe;
}

/// As many bytes as fit, cut before a character and never within one.
std::size_t bytes_that_fit(std::string_view text, std::size_t room) {
    if (text.size() <= room) {
        return text.size();
    }
    auto const goes_on = [&](std::size_t at) {
        return (static_cast<unsigned char>(text[at]) & 0xC0U) == 0x80U;
    };
    while (room > 1 && goes_on(room)) {
        --room;
    }
    return room;
}

} // namespace

Ics& Ics::line(std::string_view name, std::string_view value) {
    auto const whole = fmt::format("{}:{}", name, value);
    std::string_view rest = whole;
    for (auto room = octets; !rest.empty(); room = octets - 1) { // the blank counts
        auto const bytes = bytes_that_fit(rest, room);
        lines_.append(room < octets ? " " : "").append(rest.substr(0, bytes)).append("\r\n");
        rest.remove_prefix(bytes);
    }
    return *this;
}

Ics& Ics::text(std::string_view name, std::string_view value) {
    std::string safe;
    while (true) {
        auto const end = value.find('\n');
        safe += visible(value.substr(0, end));
        if (end == std::string_view::npos) {
            return line(name, escaped(safe));
        }
        safe += '\n';
        value.remove_prefix(end + 1);
    }
}

std::string ics_date(Date date) {
    std::string digits;
    for (char const c : spell::iso(date)) {
        digits += c == '-' ? std::string{} : std::string{c};
    }
    return digits;
}

std::string ics_moment(Date date, TimeOfDay time) {
    return fmt::format("{}T{:02}{:02}00", ics_date(date), time.minutes / 60, time.minutes % 60);
}

std::string ics_duration(Duration duration) {
    auto const seconds = (duration.ms() + 999) / 1000;
    return seconds % 60 == 0 ? fmt::format("PT{}M", seconds / 60) : fmt::format("PT{}S", seconds);
}

} // namespace lengthwise::report
