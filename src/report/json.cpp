#include "report/json.hpp"

#include "report/width.hpp"

#include <utf8proc.h>

namespace lengthwise::report {
namespace {

constexpr std::size_t piece = 64U << 10;

/// What a terminal must not see is escaped, so that no text can speak to one.
bool needs_escape(utf8proc_int32_t c) {
    return is_unsafe(c) || c == '"' || c == '\\';
}

/// How many bytes from the first on are ASCII that stands for itself.
std::size_t plain_bytes(std::string_view text) {
    std::size_t bytes = 0;
    while (bytes < text.size() && static_cast<unsigned char>(text[bytes]) < 0x80 &&
           !needs_escape(text[bytes])) {
        ++bytes;
    }
    return bytes;
}

std::string escape(utf8proc_int32_t c) {
    constexpr std::string_view figures = "0123456789abcdef";
    switch (c) {
    case '"':
        return "\\\"";
    case '\\':
        return "\\\\";
    case '\t':
        return "\\t";
    default: {
        auto const number = static_cast<std::uint32_t>(c);
        std::string text{"\\u"};
        for (unsigned shift = 16; shift > 0; shift -= 4) { // all of them are below U+10000
            text += figures[number >> (shift - 4) & 0xFU];
        }
        return text;
    }
    }
}

} // namespace

void Json::value() {
    if (comma_) {
        text_ += ',';
    }
    comma_ = true;
    if (text_.size() >= piece) {
        flush();
    }
}

Json& Json::begin_object() {
    value();
    text_ += '{';
    comma_ = false;
    return *this;
}

Json& Json::end_object() {
    text_ += '}';
    comma_ = true;
    return *this;
}

Json& Json::begin_array() {
    value();
    text_ += '[';
    comma_ = false;
    return *this;
}

Json& Json::end_array() {
    text_ += ']';
    comma_ = true;
    return *this;
}

Json& Json::key(std::string_view name) {
    value();
    escaped(name);
    text_ += ':';
    comma_ = false;
    return *this;
}

Json& Json::string(std::string_view text) {
    value();
    escaped(text);
    return *this;
}

Json& Json::integer(std::int64_t number) {
    return this->number(std::to_string(number));
}

Json& Json::number(std::string_view digits) {
    value();
    text_ += digits;
    return *this;
}

Json& Json::boolean(bool truth) {
    return number(truth ? "true" : "false");
}

Json& Json::null() {
    return number("null");
}

void Json::end_line() {
    text_ += '\n';
    comma_ = false;
    flush();
}

void Json::flush() {
    if (!text_.empty()) {
        sink_(text_);
        text_.clear();
    }
}

void Json::escaped(std::string_view text) {
    text_ += '"';
    while (!text.empty()) {
        auto const plain = plain_bytes(text);
        text_.append(text.substr(0, plain));
        text.remove_prefix(plain);
        if (text.empty()) {
            break;
        }
        utf8proc_int32_t c = -1;
        auto const read = utf8proc_iterate(reinterpret_cast<utf8proc_uint8_t const*>(text.data()),
                                           static_cast<utf8proc_ssize_t>(text.size()), &c);
        auto const bytes = read > 0 ? static_cast<std::size_t>(read) : 1;
        if (read <= 0) {
            text_ += "\xEF\xBF\xBD";
        } else if (needs_escape(c)) {
            text_ += escape(c);
        } else {
            text_ += text.substr(0, bytes);
        }
        text.remove_prefix(bytes);
    }
    text_ += '"';
}

} // namespace lengthwise::report
