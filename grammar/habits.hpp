#pragma once

#include "complaint.hpp"
#include "lexeme.hpp"

#include <cstddef>
#include <cstdint>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

/// What is often written and never read. Each habit is a function that knows what it
/// looks like and what to type instead. Private to complaint_habit.cpp and its lists.
namespace lengthwise::grammar {

/// A line and the piece of it that could not be read.
struct Stuck {
    std::vector<Lexeme> line;
    std::size_t at = 0;
    std::uint32_t depth = 0; ///< open parentheses there

    /// The stuck piece, or one `offset` pieces behind it; an `end` beyond the line.
    [[nodiscard]] Lexeme const& piece(int offset = 0) const;
    /// What is written from one piece to another; nothing where that is no way.
    [[nodiscard]] std::string_view text(int first, int last) const;
    /// Whether a word from `low` to `high` stands before the stuck piece.
    [[nodiscard]] bool behind(Word low, Word high) const;
    /// Where the item before the stuck piece begins: behind the last `(`, `+` or label.
    [[nodiscard]] std::size_t item_begin() const;
};

/// An error at the stuck piece.
[[nodiscard]] Complaint at_piece(Stuck const& stuck, std::string_view code, std::string message,
                                 std::string hint);
/// `x` or the multiplication sign.
[[nodiscard]] bool is_x(Lexeme const& lexeme);

using Answer = std::optional<Complaint>;
using Habit = Answer (*)(Stuck const&);

/// Those of any line, those of items with rests and gear said the other way round, with numbers and signs,
/// with words and joints; each list is asked in its order.
[[nodiscard]] std::span<Habit const> habits_anywhere();
[[nodiscard]] std::span<Habit const> habits_of_rests();
[[nodiscard]] std::span<Habit const> habits_of_figures();
[[nodiscard]] std::span<Habit const> habits_of_joints();

} // namespace lengthwise::grammar
