#pragma once

#include "bench/random.hpp"

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

namespace lengthwise::test {

using bench::Random;

/// One of a few choices.
template <typename T>
[[nodiscard]] T pick(Random& random, std::vector<T> const& choices) {
    return choices[static_cast<std::size_t>(random.below(static_cast<int>(choices.size())))];
}

/// Figures and words with other ways to write the same thing.
struct Spelling {
    std::string tidy;
    std::vector<std::string> others{};
};

/// Writes notation, tidy or as people do: other spaces, indentation, cases, synonyms, line
/// ends, blank lines and comments. What is written is decided by others, from numbers of
/// their own, so that the same plan comes out either way.
class Pen {
  public:
    Pen(std::uint64_t seed, bool untidy) : random_(seed), untidy_(untidy) {}

    /// A new line, with a blank one before it if asked.
    void line(int level, bool blank_before = false);

    /// A keyword: in any case, or a synonym of it.
    void word(std::string_view tidy);
    void word(Spelling const& spelling);

    /// Text that has one spelling: strings, dates.
    void exact(std::string_view text);

    /// A sign that may have blanks around it: `-`, `=`; `blanks` where tidy text has them.
    void sign(std::string_view sign, bool blanks);

    void comma() { comma_ = true; }
    void free_comma();     ///< one that need not be there
    void colon();          ///< behind a label
    void times(int count); ///< "4 x"

    // A group whose items stand on lines of their own if it is `spread`.
    void open(bool spread, int level);
    void next_item(bool spread, int level, bool blank_before);
    void close(bool spread, int level);

    /// Comments written so far are numbered from 1: "#: 1", "#: 2".
    [[nodiscard]] int comments() const { return comments_; }

    [[nodiscard]] std::string finish();

  private:
    void blank();
    [[nodiscard]] bool oddly(int percent) { return untidy_ && random_.chance(percent); }
    void comment();
    [[nodiscard]] std::string in_any_case(std::string_view word);

    Random random_;
    bool untidy_;
    std::string text_;
    int comments_ = 0;
    bool fresh_ = true;  ///< no blank before the next word
    bool comma_ = false; ///< a comma before the next word
};

} // namespace lengthwise::test
