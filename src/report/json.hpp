#pragma once

#include <cstddef>
#include <cstdint>
#include <functional>
#include <string>
#include <string_view>
#include <utility>

namespace lengthwise::report {

/// Takes text piece by piece.
using TextSink = std::function<void(std::string_view)>;

/// Writes JSON as it comes, in the order it comes, on one line. Numbers are given as
/// text so that they stay exact. The caller balances begin and end.
class Json {
  public:
    explicit Json(TextSink sink) : sink_(std::move(sink)) {}
    Json(Json const&) = delete;
    Json& operator=(Json const&) = delete;
    ~Json() { flush(); }

    Json& begin_object();
    Json& end_object();
    Json& begin_array();
    Json& end_array();
    Json& key(std::string_view name);

    Json& string(std::string_view text); ///< bytes that are not UTF-8 become U+FFFD
    Json& integer(std::int64_t number);
    Json& number(std::string_view digits); ///< already spelled as JSON wants it
    Json& boolean(bool truth);
    Json& null();

    /// Ends the document with a line feed.
    void end_line();
    void flush();

  private:
    void value();
    void escaped(std::string_view text);

    TextSink sink_;
    std::string text_;
    bool comma_ = false; ///< something stands before at this depth
};

} // namespace lengthwise::report
