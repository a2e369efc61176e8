#include "support/unsafe_text.hpp"

#include <utf8proc.h>

namespace lengthwise::support {
namespace {

bool is_unsafe(utf8proc_int32_t c) {
    bool const control = (c < 0x20 && c != '\n') || (c >= 0x7F && c <= 0x9F);
    bool const direction = (c >= 0x202A && c <= 0x202E) || (c >= 0x2066 && c <= 0x2069) || c == 0x200E ||
                           c == 0x200F || c == 0x061C;
    return control || direction;
}

} // namespace

std::string unsafe_in(std::string_view text) {
    auto const* at = reinterpret_cast<utf8proc_uint8_t const*>(text.data());
    auto left = static_cast<utf8proc_ssize_t>(text.size());
    while (left > 0) {
        utf8proc_int32_t character = 0;
        auto const size = utf8proc_iterate(at, left, &character);
        auto const place = std::to_string(static_cast<utf8proc_ssize_t>(text.size()) - left);
        if (size < 0) {
            return "no UTF-8 at byte " + place;
        }
        if (is_unsafe(character)) {
            return "character " + std::to_string(character) + " at byte " + place;
        }
        at += size;
        left -= size;
    }
    return {};
}

} // namespace lengthwise::support
