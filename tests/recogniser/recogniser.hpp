#pragma once

#include <cstddef>
#include <optional>
#include <string_view>

/// A second reader of the notation, written by hand from grammar/notation.ebnf and
/// docs/notation.md alone, for tests to hold the parser against. It builds nothing and
/// explains nothing; it knows only where a text stops being one.
///
/// It judges what the parser judges, each line by itself and by its place: bytes, words
/// and their synonyms, what touches what, figures that can be in no plan (docs/notation.md,
/// sections 5, 7 and 16: a day that does not exist, 0 reps, 25 h, ranges that run backward,
/// `rpe 11`), which line stands where, parentheses and their depth.
///
/// It does not judge what takes more than one place to see, which is the resolver's: names
/// and rules, what is said twice, sums and kinds of parts and ladders, counts, selectors
/// that meet, units that a pool must have, `use` inside of parentheses for the depth.
namespace lengthwise::recogniser {

/// Lines are counted from 1.
struct BadLine {
    std::size_t line = 0;
    /// As good an answer: the line of the outermost parenthesis open on `line`, if there or further on in
    /// it a line begins with letters; else `line`. For a slip for a heading is read as that heading, which
    /// ends parentheses; how near a word must come to be one is not judged here.
    std::size_t or_line = 0;
};

/// The first line that is not written as the notation wants it; nothing if all are. A
/// parenthesis that is not closed makes its own line one.
[[nodiscard]] std::optional<BadLine> first_bad_line(std::string_view text);

} // namespace lengthwise::recogniser
