#include "report/csv.hpp"

#include "report/width.hpp"

#include <algorithm>
#include <array>

namespace lengthwise::report {
namespace {

/// What a spreadsheet may take for the beginning of a formula. Source: OWASP, "CSV Injection". Tabs and
/// line ends, named there too, are spelled out by `visible`.
bool begins_formula(std::string_view text) {
    constexpr std::array<std::string_view, 8> signs{"=", "+", "-", "@", "＝", "＋", "－", "＠"};
    return std::ranges::any_of(signs, [text](auto sign) { return text.starts_with(sign); });
}

} // namespace

Csv& Csv::text(std::string_view text) {
    comma();
    rows_ += '"';
    auto const safe = visible(text);
    bool at_start = true; // of a cell, here or in the eyes of a program with another separator
    for (std::size_t i = 0; i < safe.size(); ++i) {
        char const c = safe[i];
        if (at_start && begins_formula(std::string_view{safe}.substr(i))) {
            rows_ += '\'';
        }
        at_start = c == ',' || c == ';' || c == '"' || (at_start && c == ' ');
        rows_.append(c == '"' ? 2 : 1, c);
    }
    rows_ += '"';
    return *this;
}

Csv& Csv::figure(std::string_view digits) {
    comma();
    rows_ += digits;
    return *this;
}

void Csv::end_row() {
    rows_ += "\r\n";
    first_ = true;
}

void Csv::comma() {
    if (!first_) {
        rows_ += ',';
    }
    first_ = false;
}

} // namespace lengthwise::report
