#pragma once

#include "units/date.hpp"
#include "units/duration.hpp"

#include <string>
#include <string_view>
#include <utility>

namespace lengthwise::report {

/// Content lines of a calendar (RFC 5545): CRLF, folded at 75 octets between characters.
class Ics {
  public:
    /// Name, with parameters, and value as they are.
    Ics& line(std::string_view name, std::string_view value);
    /// A value of type TEXT, escaped; a line feed in it is kept. Safe to print otherwise (report/width.hpp).
    Ics& text(std::string_view name, std::string_view value);

    [[nodiscard]] std::string take() { return std::exchange(lines_, {}); }

  private:
    std::string lines_;
};

/// "20270504"; "20270504T190000", at no particular place on earth; "PT45M".
[[nodiscard]] std::string ics_date(Date date);
[[nodiscard]] std::string ics_moment(Date date, TimeOfDay time);
[[nodiscard]] std::string ics_duration(Duration duration);

} // namespace lengthwise::report
