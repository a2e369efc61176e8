#pragma once

#include "reading.hpp"

#include <cstdint>

/// The doorway into parse.cpp, where the productions are, for document.cpp, which
/// decides what a line is.
namespace lengthwise::grammar {

/// What a line can be, by its first token.
enum class Form : std::uint8_t {
    plan,
    head, ///< race, swimmer, before, set, include
    setting,
    week,
    session,
    section,
    pause,
    note,
    item,    ///< with its labels, or a further line of open parentheses
    unknown, ///< begins with nothing that begins a line; read as an item, to say so
};

/// Reads one line at `at` as `form`, its end included. On success `at` is behind
/// it; else the tree may hold pieces of it from its former size on.
[[nodiscard]] bool read_form(Form form, char const*& at, Reading& reading);

} // namespace lengthwise::grammar
