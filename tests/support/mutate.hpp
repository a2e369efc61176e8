#pragma once

#include "bench/random.hpp"

#include <string>
#include <string_view>
#include <vector>

namespace lengthwise::test {

/// Spoils texts of the notation a little, so that most remain almost right: takes out,
/// doubles, swaps and replaces words, figures, signs, blanks and whole lines, or bytes.
class Mutator {
  public:
    explicit Mutator(std::uint64_t seed) : random_(seed) {}

    /// One to three changes.
    [[nodiscard]] std::string spoil(std::string_view text);

  private:
    void change_piece(std::vector<std::string>& pieces);
    void change_byte(std::string& text);
    [[nodiscard]] std::string other_piece(std::vector<std::string> const& pieces);

    bench::Random random_;
};

} // namespace lengthwise::test
