#pragma once

#include <cstddef>
#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

/// Text as a terminal shows it: measured in cells, and made safe to print.
namespace lengthwise::report {

/// A control character, one that turns or breaks a line without being seen, or none at all (U+FFFE).
[[nodiscard]] bool is_unsafe(std::int32_t character);

/// Text from a file, made safe for a terminal: control characters (C0, DEL, C1),
/// bidirectional controls and line separators become `<U+001B>`, bytes that are
/// not UTF-8 become `<0xFF>`. Everything else stays byte for byte. All that is
/// printed of a name, a note, a source line or a file name goes through here.
[[nodiscard]] std::string visible(std::string_view text);

/// Cells that UTF-8 text takes: wide characters two, combining ones none.
[[nodiscard]] std::size_t cells(std::string_view text);

/// How many bytes of the text fill at most `width` cells, combining characters included.
[[nodiscard]] std::size_t bytes_within(std::string_view text, std::size_t width);

/// Blanks behind or before the text up to `width` cells; longer text is unchanged.
[[nodiscard]] std::string pad_right(std::string_view text, std::size_t width);
[[nodiscard]] std::string pad_left(std::string_view text, std::size_t width);

/// At most `width` cells, cut between characters; a cut text ends in `…` (or `...`).
[[nodiscard]] std::string cut(std::string_view text, std::size_t width, bool ascii = false);

/// Folded at blanks into lines of at most `width` cells, each but the first indented
/// by `hang`; a word longer than a line is broken. Lines are joined by a line feed.
[[nodiscard]] std::string fold(std::string_view text, std::size_t width, std::size_t hang = 2);

/// Parts with `between` between them on lines of at most `width` cells; a line breaks
/// between parts, within one only where it is longer than a line. Empty parts are left out.
[[nodiscard]] std::string fold_parts(std::vector<std::string> const& parts, std::string_view between,
                                     std::size_t width, std::size_t hang = 2);

} // namespace lengthwise::report
