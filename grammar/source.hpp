#pragma once

#include "span.hpp"

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

namespace lengthwise {

/// A place in a file, counted from 1.
struct Place {
    std::uint32_t line = 1;
    std::uint32_t byte = 1;   ///< byte of `text`, counted from 1
    std::uint64_t offset = 0; ///< byte of the file, counted from 0
    std::string_view text;    ///< the whole line, without its end and without a BOM before it
};

/// One file's text under the name its findings show. Owns the bytes; every
/// string view of a tree or plan points into it, so it must outlive them.
class Source {
  public:
    /// `base` is the offset of its first byte in the bundle's space.
    Source(std::string name, std::string text, std::uint32_t base = 0);

    [[nodiscard]] std::string const& name() const { return name_; }
    [[nodiscard]] std::string_view text() const { return text_; }
    [[nodiscard]] std::uint32_t base() const { return base_; }
    [[nodiscard]] std::uint32_t end() const { return base_ + static_cast<std::uint32_t>(text_.size()); }
    [[nodiscard]] bool holds(std::uint32_t offset) const { return offset >= base_ && offset <= end(); }

    [[nodiscard]] std::string_view slice(Span span) const {
        return std::string_view{text_}.substr(span.begin - base_, span.size());
    }

    /// Line and byte column of an offset. Lines end in LF (a CR before it belongs
    /// to the line's end). O(log lines) after a first call that reads the text once.
    [[nodiscard]] Place locate(std::uint32_t offset) const;

  private:
    std::string name_;
    std::string text_;
    std::uint32_t base_;
    mutable std::vector<std::uint32_t> line_starts_; ///< built on the first locate
};

} // namespace lengthwise
