#pragma once

#include <array>
#include <string>
#include <string_view>

namespace lengthwise::cli {

struct Command {
    std::string_view name;
    std::string_view gist; ///< what a coach has it for, 22 cells at most
};

/// All commands, by what a coach wants: to begin, to mend, to see it, to take it along, to understand.
/// Help, man page and completions are made of it.
inline constexpr std::array commands{
    Command{"new", "a first plan"},
    Command{"compose", "a plan to race day"},
    Command{"check", "what to mend"},
    Command{"tidy", "the neat spelling"},
    Command{"tally", "metres, lengths, time"},
    Command{"deck", "for the pool side"},
    Command{"chart", "longest rep and race"},
    Command{"cards", "waterproof cards"},
    Command{"export", "for other programs"},
    Command{"pace", "threshold from swims"},
    Command{"explain", "any word or rule"},
};

[[nodiscard]] std::string general_help();
[[nodiscard]] std::string_view help_of(std::string_view command); ///< empty for what is no command

} // namespace lengthwise::cli
