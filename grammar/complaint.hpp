#pragma once

#include "productions.hpp"
#include "trace.hpp"
#include "words.hpp"

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

/// What is wrong with a line, in a coach's words.
namespace lengthwise::grammar {

/// A line that could not be read, and how far its reading came.
struct Scene {
    Form form = Form::item;
    char const* begin = nullptr; ///< its first word
    char const* end = nullptr;   ///< its LF or the text's end
    std::uint32_t depth = 0;     ///< open parentheses at its start
    Trace const& trace;
};

struct Complaint {
    std::string_view code;
    char const* from = nullptr;
    char const* to = nullptr;
    std::string message;
    std::string hint{};

    /// How to read on in the same line, once this is said: take the value at `from` as
    /// it is, or the word there for another. Neither: give the line up.
    bool pass = false;
    Word take_for = Word::none;
    /// A `)` without its `(`: one is said a section.
    bool stray = false;
    /// Bytes that are not UTF-8: one is said a file.
    bool foreign = false;
};

[[nodiscard]] Complaint complain(Scene const& scene);

/// The parts of `complain`, each in a file of its own.
/// A character that phones write for one of the notation's.
[[nodiscard]] std::optional<Complaint> complain_of_character(Scene const& scene);
/// A value that the notation does not have: the trace's refusal.
[[nodiscard]] Complaint complain_of_value(Scene const& scene);
/// What is often written and never read: `4 50`, `100 @ 1:30`, `1,500`.
[[nodiscard]] std::optional<Complaint> complain_of_habit(Scene const& scene);
/// What stands at the furthest place where something else was expected.
[[nodiscard]] Complaint complain_of_place(Scene const& scene);

/// A word that can begin a line, as near to the unknown one at `begin` as a slip.
[[nodiscard]] Word meant_opener(std::string_view written);

} // namespace lengthwise::grammar
