#pragma once

#include <array>
#include <string_view>

namespace lengthwise::cli {

/// The commands and their help, by what a coach wants.
struct Help {
    std::string_view command;
    std::string_view text;
};
[[nodiscard]] std::string_view general_help();
[[nodiscard]] std::string_view help_of(std::string_view command); ///< empty for what is no command

inline constexpr std::array<std::string_view, 10> commands{"tally", "deck", "chart", "export",  "check",
                                                           "tidy",  "pace", "cards", "compose", "explain"};

} // namespace lengthwise::cli
