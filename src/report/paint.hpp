#pragma once

#include <cstdint>
#include <string>
#include <string_view>

namespace lengthwise::report {

/// Colour repeats a word and never replaces one: red, yellow and blue are for
/// error, warning and note; bold is what a reader came for, dim what may be overlooked.
enum class Ink : std::uint8_t { plain, bold, dim, red, yellow, blue };

/// Colours text for a terminal, or leaves it as it is. Text is padded before it
/// is painted, so that columns stand in both cases.
class Paint {
  public:
    explicit Paint(bool colour = false) : colour_(colour) {}

    [[nodiscard]] bool colour() const { return colour_; }
    [[nodiscard]] std::string operator()(Ink ink, std::string_view text) const;

  private:
    bool colour_;
};

} // namespace lengthwise::report
