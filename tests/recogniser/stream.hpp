#pragma once

#include "recogniser/tokens.hpp"

#include <algorithm>

namespace lengthwise::recogniser {

/// Tokens, and where reading stands.
class Stream {
  public:
    explicit Stream(std::vector<Token> tokens) : tokens_(std::move(tokens)) {}

    /// The last token, a text_end, goes on for ever.
    [[nodiscard]] Token const& peek(std::size_t ahead = 0) const {
        return tokens_[std::min(at_ + ahead, tokens_.size() - 1)];
    }
    [[nodiscard]] bool is(Sort sort, std::size_t ahead = 0) const { return peek(ahead).sort == sort; }
    [[nodiscard]] bool is_word(std::string_view text, std::size_t ahead = 0) const {
        return is(Sort::word, ahead) && peek(ahead).text == text;
    }
    [[nodiscard]] bool is_sign(char sign, std::size_t ahead = 0) const {
        return is(Sort::sign, ahead) && peek(ahead).text[0] == sign;
    }
    /// The word there, or empty.
    [[nodiscard]] std::string_view word(std::size_t ahead = 0) const {
        return is(Sort::word, ahead) ? std::string_view{peek(ahead).text} : std::string_view{};
    }

    void skip(std::size_t count = 1) { at_ += count; }
    bool take(Sort sort) { return took(is(sort)); }
    bool take_word(std::string_view text) { return took(is_word(text)); }
    bool take_words(std::string_view first, std::string_view second) {
        return take_word(first) && take_word(second);
    }
    bool take_sign(char sign) { return took(is_sign(sign)); }

    int depth = 0; ///< of parentheses

  private:
    bool took(bool yes) {
        at_ += yes ? 1U : 0U;
        return yes;
    }

    std::vector<Token> tokens_;
    std::size_t at_ = 0;
};

} // namespace lengthwise::recogniser
