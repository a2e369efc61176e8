#pragma once

#include "cli/option_reader.hpp"
#include "cli/options.hpp"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

/// The options of `compose`: a wish, of which most has to be said.
namespace lengthwise::cli {

/// As it was typed: what has the pool's unit is read once the pool is known.
struct TypedCompose : Today {
    std::optional<std::string> resume;
    std::optional<std::string> after;
    std::optional<std::string> pool;
    std::optional<std::string> race;
    std::optional<std::string> on;
    std::optional<std::string> race_name; ///< its name
    std::optional<std::string> from;
    std::optional<std::string> days;
    std::optional<std::string> slot;
    std::optional<std::string> threshold;
    std::vector<std::string> limits;
    std::vector<std::string> words; ///< that belong to no option
    Compose compose;
};

void add(Reader& reader, TypedCompose& typed);

/// "--longest takes a distance, 200m, not "much"".
[[nodiscard]] Misuse refused(std::string_view option, std::string_view wants, std::string_view typed);

/// Reads them into a request whose pool is known, and is called `pool`.
[[nodiscard]] std::optional<Misuse> read_today(Today const& today, std::string_view pool,
                                               compose::Request& request);

[[nodiscard]] Options read_compose(std::vector<std::string> const& arguments);

} // namespace lengthwise::cli
