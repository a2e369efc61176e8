#pragma once

#include "complaint.hpp"

#include <optional>
#include <string_view>

/// Whether a text's bytes are what the notation is written in: UTF-8, LF or CRLF,
/// a BOM at most at its start, no control characters but tab.
namespace lengthwise::grammar {

/// True for a text without fault and without very long lines, found as fast as
/// memory is read. False sends the lines through `complain_of_line`, one by one.
[[nodiscard]] bool is_clean(std::string_view text);

/// What is wrong with a file as a whole, so that reading its lines is no use: it is
/// too large or not UTF-8 at all.
[[nodiscard]] std::optional<Complaint> complain_of_file(std::string_view text);

/// What is wrong with one line's length or the first of its bytes that is no text.
[[nodiscard]] std::optional<Complaint> complain_of_line(char const* begin, char const* end);

/// Bytes of a BOM at the text's start: 3 or 0.
[[nodiscard]] std::size_t bom_bytes(std::string_view text);

} // namespace lengthwise::grammar
