#pragma once

#include <cstdint>
#include <string>
#include <string_view>

namespace lengthwise::bench {

/// JSON written piece by piece, without blanks. Every value is followed by a comma,
/// which the closing bracket takes back. Text must need no escapes.
class JsonText {
  public:
    void open(char bracket) { text_ += bracket; }
    void close(char bracket) {
        take_comma();
        text_ += bracket;
        text_ += ',';
    }
    void key(std::string_view name) {
        quoted(name);
        text_ += ':';
    }
    void open(std::string_view name, char bracket) {
        key(name);
        open(bracket);
    }
    void value(std::string_view text) {
        quoted(text);
        text_ += ',';
    }
    void value(std::int64_t number) {
        text_ += std::to_string(number);
        text_ += ',';
    }
    template <typename T>
    void field(std::string_view name, T const& it) {
        key(name);
        value(it);
    }

    void flag(std::string_view name) {
        key(name);
        text_ += "true,";
    }

    void take_comma() {
        if (!text_.empty() && text_.back() == ',') {
            text_.pop_back();
        }
    }
    [[nodiscard]] std::string& text() { return text_; }

  private:
    void quoted(std::string_view text) {
        text_ += '"';
        text_ += text;
        text_ += '"';
    }

    std::string text_;
};

} // namespace lengthwise::bench
