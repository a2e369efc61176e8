#pragma once

#include "cli/option_reader.hpp"
#include "cli/options.hpp"

#include <optional>
#include <string>
#include <vector>

/// The options of `cards`.
namespace lengthwise::cli {

void add(Reader& reader, Cards& cards);

[[nodiscard]] Options read_cards(std::vector<std::string> const& arguments);

} // namespace lengthwise::cli
