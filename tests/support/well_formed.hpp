#pragma once

#include "grammar/tree.hpp"

#include <string>

namespace lengthwise::test {

/// What is wrong with a tree's shape, whatever its text: containers end behind their
/// children and before their parents do, nodes stand in text order inside the text,
/// each kind stands where tree.hpp says. Empty where all is well.
[[nodiscard]] std::string shape_fault(grammar::Tree const& tree);

} // namespace lengthwise::test
