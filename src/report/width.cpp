#include "report/width.hpp"

#include <utf8proc.h>

#include <algorithm>
#include <cstdint>

namespace lengthwise::report {
namespace {

/// The first character of a text, which is not empty; `value` is below 0 where the bytes
/// are no UTF-8, and then one byte is taken.
struct Character {
    std::int32_t value = -1;
    std::size_t bytes = 1;
};

Character first_of(std::string_view text) {
    utf8proc_int32_t value = -1;
    auto const bytes = utf8proc_iterate(reinterpret_cast<utf8proc_uint8_t const*>(text.data()),
                                        static_cast<utf8proc_ssize_t>(text.size()), &value);
    return bytes > 0 ? Character{value, static_cast<std::size_t>(bytes)} : Character{};
}

std::string hex(std::uint32_t number, std::size_t digits) {
    constexpr std::string_view figures = "0123456789ABCDEF";
    std::string text;
    for (std::size_t i = 0; i < digits; ++i) {
        text.insert(text.begin(), figures[number >> (4 * i) & 0xFU]);
    }
    return text;
}

std::size_t cells_of(Character c) {
    return c.value < 0 ? 1 : static_cast<std::size_t>(utf8proc_charwidth(c.value));
}

} // namespace

bool is_unsafe(std::int32_t c) {
    bool const control = c < 0x20 || (c >= 0x7F && c <= 0x9F);
    bool const bidirectional = c == 0x061C || c == 0x200E || c == 0x200F || (c >= 0x202A && c <= 0x202E) ||
                               (c >= 0x2066 && c <= 0x2069);
    bool const line_break = c == 0x2028 || c == 0x2029;
    bool const no_character = c == 0xFEFF || c == 0xFFFE || c == 0xFFFF; // not even in XML
    return control || bidirectional || line_break || no_character;
}

std::size_t bytes_within(std::string_view text, std::size_t width) {
    std::size_t bytes = 0;
    for (std::size_t used = 0; bytes < text.size();) {
        auto const c = first_of(text.substr(bytes));
        used += cells_of(c);
        if (used > width) {
            break;
        }
        bytes += c.bytes;
    }
    return bytes;
}

namespace {

/// Where to break a text that is longer than its line: at the last blank that fits,
/// else within the word, after at least one character.
std::size_t break_at(std::string_view text, std::size_t width) {
    auto const fits = bytes_within(text, width);
    if (fits == text.size()) {
        return fits;
    }
    auto const blank = text.substr(0, fits + 1).rfind(' ');
    if (blank != std::string_view::npos && blank > 0) {
        return blank;
    }
    return fits > 0 ? fits : first_of(text).bytes;
}

} // namespace

std::string visible(std::string_view text) {
    std::string safe;
    safe.reserve(text.size());
    while (!text.empty()) {
        auto const c = first_of(text);
        if (c.value < 0) {
            safe.append("<0x").append(hex(static_cast<unsigned char>(text.front()), 2)).append(">");
        } else if (is_unsafe(c.value)) {
            safe.append("<U+").append(hex(static_cast<std::uint32_t>(c.value), 4)).append(">");
        } else {
            safe.append(text.substr(0, c.bytes));
        }
        text.remove_prefix(c.bytes);
    }
    return safe;
}

std::size_t cells(std::string_view text) {
    auto const printable = [](char c) { return c >= 0x20 && c < 0x7F; };
    if (std::all_of(text.begin(), text.end(), printable)) {
        return text.size();
    }
    std::size_t width = 0;
    while (!text.empty()) {
        auto const c = first_of(text);
        width += cells_of(c);
        text.remove_prefix(c.bytes);
    }
    return width;
}

std::string pad_right(std::string_view text, std::size_t width) {
    auto const used = cells(text);
    return std::string{text} + std::string(used < width ? width - used : 0, ' ');
}

std::string pad_left(std::string_view text, std::size_t width) {
    auto const used = cells(text);
    return std::string(used < width ? width - used : 0, ' ').append(text);
}

std::string cut(std::string_view text, std::size_t width, bool ascii) {
    if (cells(text) <= width) {
        return std::string{text};
    }
    std::string_view const dots = ascii ? "..." : "…";
    if (cells(dots) > width) {
        return std::string{text.substr(0, bytes_within(text, width))};
    }
    auto const kept = text.substr(0, bytes_within(text, width - cells(dots)));
    return std::string{kept.substr(0, kept.find_last_not_of(' ') + 1)}.append(dots);
}

std::string fold(std::string_view text, std::size_t width, std::size_t hang) {
    std::string folded;
    std::size_t indent = 0;
    while (true) {
        auto const room = width > indent ? width - indent : 1;
        auto const line = break_at(text, room);
        auto const words = text.substr(0, line);
        folded.append(words.substr(0, words.find_last_not_of(' ') + 1));
        text.remove_prefix(line);
        text.remove_prefix(text.empty() || text.front() != ' ' ? 0 : 1);
        if (text.empty()) {
            return folded;
        }
        indent = hang;
        folded.append("\n").append(indent, ' ');
    }
}

std::string fold_parts(std::vector<std::string> const& parts, std::string_view between, std::size_t width,
                       std::size_t hang) {
    // A separator that ends a line keeps what can be seen of it.
    auto const end = between.substr(0, between.find_last_not_of(' ') + 1);
    auto const room = width - std::min(width, cells(end));
    std::string folded;
    std::size_t used = 0; // cells of the last line
    for (auto const& part : parts) {
        if (part.empty()) {
            continue;
        }
        auto const limit = &part == &parts.back() ? width : room;
        if (used > 0 && used + cells(between) + cells(part) > limit) {
            folded.append(end).append("\n").append(hang, ' ');
            used = hang;
        } else if (used > 0) {
            folded.append(between);
            used += cells(between);
        }
        auto const text = fold(part, limit - std::min(used, limit), hang);
        folded.append(text);
        auto const last = text.rfind('\n');
        used = last == std::string::npos ? used + cells(text) : cells(text.substr(last + 1));
    }
    return folded;
}

} // namespace lengthwise::report
