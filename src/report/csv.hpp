#pragma once

#include <string>
#include <string_view>
#include <utility>

namespace lengthwise::report {

/// Rows of comma-separated values (RFC 4180: CRLF, quotes doubled). Figures stand bare, texts in quotes,
/// and what is not known is empty.
class Csv {
  public:
    /// Text from a file, made safe to print, and so that no spreadsheet takes it, or a part of it where
    /// another separator is set, for a formula: a `'` stands before the signs `= + - @` and their wide
    /// forms at the beginning, and behind a comma, semicolon or quote.
    Csv& text(std::string_view text);
    /// Digits as they are; also a word of ours, or nothing.
    Csv& figure(std::string_view digits);
    Csv& empty() { return figure({}); }
    void end_row();

    [[nodiscard]] std::string take() { return std::exchange(rows_, {}); }

  private:
    void comma();

    std::string rows_;
    bool first_ = true; ///< in its row
};

} // namespace lengthwise::report
