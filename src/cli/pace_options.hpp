#pragma once

#include "cli/option_reader.hpp"
#include "cli/options.hpp"
#include "cli/swims.hpp"

#include <optional>
#include <string>
#include <vector>

/// The options of `pace`.
namespace lengthwise::cli {

/// As it was typed: swims and distances are read once the pool is known.
struct TypedPace {
    std::vector<std::string> swims;
    Course course;
    std::optional<std::string> predict;
    Pace pace;
};

void add(Reader& reader, TypedPace& typed);

[[nodiscard]] Options read_pace(std::vector<std::string> const& arguments);

} // namespace lengthwise::cli
